import type { Complaint } from "../resolve/complaints.ts";
import { nearest } from "../text/nearest.ts";
import { quote } from "../text/quote.ts";
import { plausible, type Role } from "../units/plausibility.ts";
import { type Quantity, type Si, si } from "../units/quantity.ts";
import { readQuantity } from "../units/read-quantity.ts";
import type { UnitSystem } from "../units/unit-system.ts";
import type { Pair } from "./pair.ts";

type Raw = number | string;

/** Kinds of part that other parts name. */
export type NamedKind = "material" | "series" | "profile" | "screw";

/** Reads the values of one stock file in SI and gathers what is wrong with them. A value that cannot be read comes back as NaN. */
export interface StockReader {
  readonly complaints: Complaint[];
  /** Greater than zero. */
  size<Q extends Quantity>(raw: Raw, quantity: Q, pointer: string, role?: Role): Si<Q>;
  /** Zero or greater. */
  amount<Q extends Quantity>(raw: Raw, quantity: Q, pointer: string, role?: Role): Si<Q>;
  /** A length of any sign, m. */
  offset(raw: Raw, pointer: string): Si<"length">;
  /** Two lengths of any sign, m. */
  pair(raw: readonly [Raw, Raw], pointer: string): Pair;
  /** Two lengths of zero or more, the second no smaller than the first, m. */
  range(raw: readonly [Raw, Raw], pointer: string): readonly [Si<"length">, Si<"length">];
  refuse(code: string, pointer: string, found: string, expected: string, mend?: string): void;
  /** The part that `make` gives, or undefined when it refused something. */
  sound<T>(make: () => T): T | undefined;
  /** Refuses a name that no part has, unless parts of the kind were refused themselves: then the name may be theirs. */
  expectPart(name: string, known: ReadonlyMap<string, unknown>, kind: NamedKind, pointer: string): void;
}

/** One slip in a unit makes every number doubtful: more of one role than this are not told. */
const DOUBTS_PER_ROLE = 5;
/** Looking for a near name costs a comparison with every part: more wrong names than this get no suggestion. */
const SUGGESTIONS = 50;

/** `refused` holds the kinds of which some file's part was refused; all readers of one run share it. */
export function stockReader(system: UnitSystem, refused: ReadonlySet<NamedKind>): StockReader {
  const complaints: Complaint[] = [];
  const doubts = new Map<Role, number>();
  let errors = 0;
  let suggestions = 0;
  const refuse: StockReader["refuse"] = (code, pointer, found, expected, mend) => {
    errors++;
    complaints.push({ code, weight: "error", pointer, found, expected, ...(mend === undefined ? {} : { mend }) });
  };
  const doubt = (value: number, role: Role, pointer: string): void => {
    const reason = plausible(value, role, system);
    const before = doubts.get(role) ?? 0;
    if (reason === undefined || before >= DOUBTS_PER_ROLE) return;
    doubts.set(role, before + 1);
    complaints.push({ code: "doubtful-value", weight: "warning", pointer, ...reason });
  };
  const offset = <Q extends Quantity>(raw: Raw, quantity: Q, pointer: string): Si<Q> => {
    const reading = readQuantity(raw, quantity, system);
    if ("si" in reading) return reading.si;
    refuse("wrong-quantity", pointer, reading.found, reading.expected, reading.mend);
    return si(Number.NaN, quantity);
  };
  const size: StockReader["size"] = (raw, quantity, pointer, role) => {
    const value = offset(raw, quantity, pointer);
    if (value <= 0) refuse("not-positive", pointer, JSON.stringify(raw), "more than 0");
    else if (role !== undefined && !Number.isNaN(value)) doubt(value, role, pointer);
    return value;
  };
  const amount: StockReader["amount"] = (raw, quantity, pointer, role) => {
    const value = offset(raw, quantity, pointer);
    if (value < 0) refuse("negative", pointer, JSON.stringify(raw), "0 or more");
    else if (role !== undefined && value > 0) doubt(value, role, pointer);
    return value;
  };
  return {
    complaints,
    size,
    amount,
    offset: (raw, pointer) => offset(raw, "length", pointer),
    pair: (raw, pointer) => [offset(raw[0], "length", `${pointer}/0`), offset(raw[1], "length", `${pointer}/1`)],
    range(raw, pointer) {
      const low = amount(raw[0], "length", `${pointer}/0`);
      const high = amount(raw[1], "length", `${pointer}/1`);
      if (high < low) refuse("upside-down", pointer, "the greater value first", "the lesser value first");
      return [low, high];
    },
    refuse,
    sound(make) {
      const before = errors;
      const made = make();
      return errors === before ? made : undefined;
    },
    expectPart(name, known, kind, pointer) {
      if (known.has(name) || refused.has(kind)) return;
      const near = suggestions++ < SUGGESTIONS ? nearest(name, known.keys()) : undefined;
      const mend = near === undefined ? undefined : `did you mean "${near}"?`;
      refuse("unknown-stock", pointer, `${kind} "${quote(name)}"`, `a ${kind} of the stock`, mend);
    },
  };
}

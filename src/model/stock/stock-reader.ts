import type { Place, Problem } from "../problem.ts";
import { nearest } from "../text/nearest.ts";
import { quote } from "../text/quote.ts";
import { type Quantity, type Si, si } from "../units/quantity.ts";
import { readQuantity } from "../units/read-quantity.ts";
import type { UnitSystem } from "../units/unit-system.ts";
import type { Pair } from "./stock.ts";

type Raw = number | string;

/** Reads the values of one stock file in SI and gathers what is wrong with them. A value that cannot be read comes back as NaN. */
export interface StockReader {
  /** Greater than zero. */
  size<Q extends Quantity>(raw: Raw, quantity: Q, pointer: string): Si<Q>;
  /** Zero or greater. */
  amount<Q extends Quantity>(raw: Raw, quantity: Q, pointer: string): Si<Q>;
  /** Two lengths of any sign, m. */
  pair(raw: readonly [Raw, Raw], pointer: string): Pair;
  /** Two lengths, the second no smaller than the first, m. */
  range(raw: readonly [Raw, Raw], pointer: string): readonly [Si<"length">, Si<"length">];
  refuse(code: string, pointer: string, found: string, expected: string, mend?: string): void;
  /** The part that `make` gives, or undefined when it told a problem. */
  sound<T>(make: () => T): T | undefined;
  /** Tells when no part has this name. */
  expectPart(name: string, known: ReadonlyMap<string, unknown>, kind: string, pointer: string): void;
}

export function stockReader(system: UnitSystem, place: (pointer: string) => Place, problems: Problem[]): StockReader {
  const refuse: StockReader["refuse"] = (code, pointer, found, expected, mend) => {
    problems.push({
      code,
      weight: "error",
      place: place(pointer),
      found,
      expected,
      ...(mend === undefined ? {} : { mend }),
    });
  };
  const read = <Q extends Quantity>(
    raw: Raw,
    quantity: Q,
    pointer: string,
    fits?: (value: number) => string | undefined,
  ): Si<Q> => {
    const reading = readQuantity(raw, quantity, system);
    if (!("si" in reading)) {
      refuse("unreadable-quantity", pointer, reading.found, reading.expected, reading.mend);
      return si(Number.NaN, quantity);
    }
    const expected = fits?.(reading.si);
    if (expected !== undefined) refuse("value-out-of-range", pointer, String(raw), expected);
    return reading.si;
  };
  return {
    size: (raw, quantity, pointer) => read(raw, quantity, pointer, (v) => (v > 0 ? undefined : "more than zero")),
    amount: (raw, quantity, pointer) => read(raw, quantity, pointer, (v) => (v >= 0 ? undefined : "zero or more")),
    pair: (raw, pointer) => [read(raw[0], "length", `${pointer}/0`), read(raw[1], "length", `${pointer}/1`)],
    range(raw, pointer) {
      const low = read(raw[0], "length", `${pointer}/0`, (v) => (v >= 0 ? undefined : "zero or more"));
      const high = read(raw[1], "length", `${pointer}/1`, (v) =>
        v < low ? "no less than the first value" : undefined,
      );
      return [low, high];
    },
    refuse,
    sound(make) {
      const before = problems.length;
      const made = make();
      return problems.length === before ? made : undefined;
    },
    expectPart(name, known, kind, pointer) {
      if (known.has(name)) return;
      const near = nearest(name, known.keys());
      refuse(
        "unknown-part",
        pointer,
        `"${quote(name)}"`,
        `the name of a ${kind} in stock`,
        near === undefined ? undefined : `write "${near}"`,
      );
    },
  };
}

import { nearest } from "../text/nearest.ts";
import { quote } from "../text/quote.ts";
import { quantitiesWith, toSi, UNITS, unitOf } from "./factors.ts";
import { formatQuantity } from "./format-quantity.ts";
import type { Quantity, Si } from "./quantity.ts";
import { QUANTITY_WORDS } from "./quantity-words.ts";
import { bareUnit, type UnitSystem } from "./unit-system.ts";

/** Why a value could not be read; the mend is what could stand in the file instead. */
export interface Unreadable {
  readonly found: string;
  readonly expected: string;
  readonly mend?: string;
}

export type Reading<Q extends Quantity> = { readonly si: Si<Q> } | Unreadable;

/** Longer text is no quantity. */
const TEXT_LENGTH = 64;
const DECIMAL = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*)$/;
/** Trade spelling of inches: 3/8, 1 1/2, 1-1/2. */
const FRACTION = /^([+-]?)(?:(\d+)(?:\s+|-))?(\d+)\/(\d+)\s*(.*)$/;
const SLOPE = /^([+-]?\d+(?:\.\d+)?)\s*:\s*(\d+(?:\.\d+)?)$/;
const DECIMAL_COMMA = /^([+-]?\d+),(\d+)(?!\d|,)\s*(.*)$/;

/** Signs for feet and inches are refused: in a JSON string they cannot be told from a slip of the pen. */
const MARKS: ReadonlyMap<string, string> = new Map([
  ["'", "ft"],
  ["′", "ft"],
  ['"', "in"],
  ["″", "in"],
  ["''", "in"],
]);
const MASS_UNITS: ReadonlySet<string> = new Set(["kg", "g", "t"]);

interface Written {
  readonly number: number;
  readonly digits: string;
  readonly unit: string;
}

function split(text: string): Written | undefined {
  const fraction = FRACTION.exec(text);
  if (fraction !== null) {
    const [, sign = "", whole = "0", over = "", under = "", unit = ""] = fraction;
    const size = Number(whole) + Number(over) / Number(under);
    return { number: sign === "-" ? -size : size, digits: text.slice(0, text.length - unit.length).trimEnd(), unit };
  }
  const decimal = DECIMAL.exec(text);
  if (decimal === null) return undefined;
  const [, digits = "", unit = ""] = decimal;
  return { number: Number(digits), digits, unit };
}

function expectedText(quantity: Quantity, system: UnitSystem): string {
  const word = QUANTITY_WORDS[quantity];
  const bare = bareUnit(quantity, system);
  if (bare === "") return quantity === "count" ? word : `${word}: a number, or text like "0.3", "30 %" or "1:100"`;
  const units = UNITS[quantity].map((unit) => unit.name).join(", ");
  return `${word}: a number in ${bare}, or text with a number and one of ${units}`;
}

/** "lb" where only pounds of force make sense, "kg" for a force: what the author must have meant. */
function mendMass(written: Written, quantity: Quantity, system: UnitSystem): string | undefined {
  const asForce = written.unit.replace(/\blbs?\b/g, "lbf");
  const unit = asForce === written.unit ? undefined : unitOf(quantity, asForce);
  if (unit !== undefined) return `write "${written.digits} ${unit.name}"`;
  const mass = unitOf("mass", written.unit);
  const weight = unitOf("force", "kgf");
  if (quantity !== "force" || mass === undefined || weight === undefined || !MASS_UNITS.has(mass.name))
    return undefined;
  return `write its weight: "${formatQuantity(toSi(toSi(written.number, mass), weight), "force", system)}"`;
}

function unknownUnit(written: Written, text: string, quantity: Quantity, system: UnitSystem): Unreadable {
  const expected = expectedText(quantity, system);
  const bare = bareUnit(quantity, system);
  const elsewhere = quantitiesWith(written.unit);
  if (written.unit === "") {
    return {
      found: `"${quote(text)}" without a unit`,
      expected,
      mend: `write ${written.number}, or "${written.digits} ${bare}"`,
    };
  }
  if (elsewhere.length > 0) {
    const words = elsewhere.map((other) => QUANTITY_WORDS[other]).join(" or ");
    const mend = mendMass(written, quantity, system);
    return { found: `"${quote(text)}", which is ${words}`, expected, ...(mend === undefined ? {} : { mend }) };
  }
  const names = UNITS[quantity].map((unit) => unit.name).filter((name) => name !== "");
  const others = UNITS[quantity].flatMap((unit) => unit.also);
  const meant = MARKS.get(written.unit) ?? nearest(written.unit, names) ?? nearest(written.unit, others);
  const known = meant === undefined ? undefined : unitOf(quantity, meant);
  const mend = known === undefined ? mendMass(written, quantity, system) : `write "${written.digits} ${known.name}"`;
  const found = `the unit ${quote(written.unit)} in "${quote(text)}"`;
  return { found, expected, ...(mend === undefined ? {} : { mend }) };
}

function checked<Q extends Quantity>(value: number, shown: string, quantity: Q, system: UnitSystem): Reading<Q> {
  const refuse = (expected: string): Unreadable => ({ found: quote(shown), expected });
  if (!Number.isFinite(value)) return refuse("a finite number");
  if (quantity === "temperature" && value < 0) return refuse("a temperature above absolute zero, -273.15 °C");
  if (quantity === "count" && !(Number.isSafeInteger(value) && value >= 0))
    return refuse(expectedText(quantity, system));
  return { si: (value === 0 ? 0 : value) as Si<Q> };
}

/**
 * A value as it stands in a file, in SI (m, N, kg, s, rad, Pa, K). A bare number is in the system's unit for the quantity; text carries
 * its own unit: "30 in", "12 N·m" (also N.m, Nm), "1 1/2 in", "30 %", a slope "1:100". Never throws.
 */
export function readQuantity<Q extends Quantity>(raw: number | string, quantity: Q, system: UnitSystem): Reading<Q> {
  if (typeof raw === "number") {
    const unit = unitOf(quantity, bareUnit(quantity, system));
    return checked(unit === undefined ? Number.NaN : toSi(raw, unit), String(raw), quantity, system);
  }
  const text = raw.trim();
  if (text.length > TEXT_LENGTH) return { found: `"${quote(text)}"`, expected: expectedText(quantity, system) };
  const slope = quantity === "ratio" || quantity === "angle" ? SLOPE.exec(text) : null;
  if (slope !== null) {
    const rise = Number(slope[1]) / Number(slope[2]);
    // Over nought it would be upright as an angle, and no number at all as a ratio.
    if (!Number.isFinite(rise)) return checked(rise, `"${text}"`, quantity, system);
    return checked(quantity === "angle" ? Math.atan(rise) : rise, `"${text}"`, quantity, system);
  }
  const comma = DECIMAL_COMMA.exec(text);
  if (comma !== null) {
    const mend = `write "${[`${comma[1]}.${comma[2]}`, comma[3]].filter(Boolean).join(" ")}"`;
    return { found: `a decimal comma in "${quote(text)}"`, expected: expectedText(quantity, system), mend };
  }
  const written = split(text);
  if (written === undefined) return { found: `"${quote(text)}"`, expected: expectedText(quantity, system) };
  if (!Number.isFinite(written.number)) {
    // A fraction over nought is no number at all.
    const beyond = text.includes("/") ? "" : ", which is beyond every number";
    return { found: `"${quote(text)}"${beyond}`, expected: expectedText(quantity, system) };
  }
  const unit = unitOf(quantity, written.unit);
  if (unit === undefined) return unknownUnit(written, text, quantity, system);
  return checked(toSi(written.number, unit), `"${text}"`, quantity, system);
}

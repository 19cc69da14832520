import { toSi, unitOf } from "./factors.ts";
import { formatQuantity } from "./format-quantity.ts";
import type { Quantity } from "./quantity.ts";
import { QUANTITY_WORDS } from "./quantity-words.ts";
import type { UnitSystem } from "./unit-system.ts";

/** What a number stands for; each role has a range that frames of slotted bars stay within. */
export type Role =
  | "coordinate"
  | "bar length"
  | "section size"
  | "sheet thickness"
  | "panel size"
  | "screw length"
  | "load force"
  | "push force"
  | "line load"
  | "pressure"
  | "mass"
  | "torque"
  | "load moment"
  | "part moment capacity"
  | "part force capacity"
  | "temperature"
  | "frequency";

interface Range {
  readonly quantity: Quantity;
  /** Smallest and largest size that is believed, SI. */
  readonly low: number;
  readonly high: number;
}

/**
 * Ranges from common practice: extrusions come in 6 m lengths and rarely 12 m; 20 to 160 mm sections; sheets from 0.5 mm steel to 40 mm
 * board; a 40-series bench carries some kN; screws M4 to M16 take 1 to 200 N·m. They say what is believed, not what is safe.
 */
const RANGES: Readonly<Record<Role, Range>> = {
  coordinate: { quantity: "length", low: 0, high: 30 },
  "bar length": { quantity: "length", low: 0.005, high: 12 },
  "section size": { quantity: "length", low: 0.01, high: 0.35 },
  "sheet thickness": { quantity: "length", low: 0.0005, high: 0.06 },
  "panel size": { quantity: "length", low: 0.02, high: 6 },
  "screw length": { quantity: "length", low: 0.004, high: 0.4 },
  "load force": { quantity: "force", low: 5, high: 100e3 },
  "push force": { quantity: "force", low: 20, high: 5e3 },
  "line load": { quantity: "lineLoad", low: 5, high: 100e3 },
  pressure: { quantity: "pressure", low: 20, high: 50e3 },
  mass: { quantity: "mass", low: 0.02, high: 10e3 },
  torque: { quantity: "moment", low: 0.3, high: 250 },
  "load moment": { quantity: "moment", low: 0.1, high: 20e3 },
  "part moment capacity": { quantity: "moment", low: 0.5, high: 5e3 },
  "part force capacity": { quantity: "force", low: 50, high: 200e3 },
  temperature: { quantity: "temperature", low: 223.15, high: 423.15 },
  frequency: { quantity: "frequency", low: 0.2, high: 500 },
};

interface MixUp {
  /** What the number was most likely meant in, and what it was read as. */
  readonly meant: string;
  readonly read: string;
  /** Meant value = read value × factor. */
  readonly factor: number;
}

const WEIGHT_AS_MASS: MixUp = { meant: "N", read: "kg", factor: 1 / 9.80665 };

/** Pairs of units that are taken for each other, either way round. */
const CONFUSED: Readonly<Partial<Record<Quantity, readonly (readonly [string, string])[]>>> = {
  length: [
    ["in", "mm"],
    ["m", "mm"],
    ["cm", "mm"],
    ["ft", "in"],
  ],
  force: [
    ["kN", "N"],
    ["kgf", "N"],
    ["lbf", "N"],
    ["kip", "lbf"],
  ],
  lineLoad: [
    ["N/mm", "N/m"],
    ["lbf/in", "N/mm"],
    ["lbf/in", "lbf/ft"],
  ],
  pressure: [
    ["kPa", "Pa"],
    ["MPa", "kPa"],
    ["psi", "kPa"],
    ["psi", "psf"],
  ],
  mass: [
    ["kg", "g"],
    ["t", "kg"],
    ["lb", "kg"],
  ],
  moment: [
    ["N·m", "N·mm"],
    ["kN·m", "N·m"],
    ["lbf·in", "N·m"],
    ["lbf·ft", "N·m"],
    ["lbf·ft", "lbf·in"],
  ],
  frequency: [["Hz", "1/min"]],
};

function mixUpsOf(quantity: Quantity): readonly MixUp[] {
  const all: MixUp[] = [];
  for (const [one, other] of CONFUSED[quantity] ?? []) {
    const [a, b] = [unitOf(quantity, one), unitOf(quantity, other)];
    if (a === undefined || b === undefined) continue;
    const factor = toSi(1, a) / toSi(1, b);
    all.push({ meant: one, read: other, factor }, { meant: other, read: one, factor: 1 / factor });
  }
  if (quantity === "mass") all.push(WEIGHT_AS_MASS);
  return all;
}

export interface Doubt {
  readonly found: string;
  readonly expected: string;
  readonly mend?: string;
}

/** Decimals behind those that a tiny value has in SI units: three digits of it in any unit. */
const TINY_DECIMALS = 6;

/** Units of bare numbers; a mix-up is likelier with them. */
const OWN_UNITS: Readonly<Record<UnitSystem, ReadonlySet<string>>> = {
  "mm-N-kg": new Set(["mm", "N", "N·m", "kPa", "N/mm", "kg", "Hz"]),
  "in-lbf-lb": new Set(["in", "lbf", "lbf·in", "psi", "lbf/in", "lb", "Hz"]),
};

function within(size: number, { low, high }: Range): boolean {
  return size >= low && size <= high;
}

/** The mix-up that brings the value nearest to the middle of the range; units of the file's system go first. */
function mixUp(size: number, range: Range, system: UnitSystem): MixUp | undefined {
  const fits = mixUpsOf(range.quantity).filter((one) => within(size * one.factor, range));
  const own = fits.filter((one) => OWN_UNITS[system].has(one.read) || OWN_UNITS[system].has(one.meant));
  const middle = Math.log(Math.sqrt(range.low * range.high));
  const distance = (one: MixUp): number => Math.abs(Math.log(size * one.factor) - middle);
  let best: MixUp | undefined;
  for (const one of own.length > 0 ? own : fits) if (best === undefined || distance(one) < distance(best)) best = one;
  return best;
}

/**
 * Doubt about a value in SI that no frame of slotted bars is likely to have in this role, with the mix-up of units that would explain it;
 * undefined when the value is believable. Zero is nobody's mix-up, and the sign is not looked at (except of a temperature).
 */
export function plausible(si: number, role: Role, system: UnitSystem): Doubt | undefined {
  const range = RANGES[role];
  const size = range.quantity === "temperature" ? si : Math.abs(si);
  if (size === 0 || within(size, range)) return undefined;
  const print = (value: number): string => {
    const text = formatQuantity(value, range.quantity, system);
    // What is doubtful for being tiny is not printed as nothing.
    return /[1-9]/.test(text) ? text : formatQuantity(value, range.quantity, system, TINY_DECIMALS - Math.log10(size));
  };
  const found = `${role} ${print(si)}`;
  const expected =
    range.low === 0
      ? `${QUANTITY_WORDS[range.quantity]} up to ${print(range.high)}`
      : `${QUANTITY_WORDS[range.quantity]} from ${print(range.low)} to ${print(range.high)}`;
  const likely = mixUp(size, range, system);
  if (likely === undefined) return { found, expected };
  return {
    found,
    expected,
    mend: `perhaps ${likely.meant} and ${likely.read} were mixed up: then it is ${print(si * likely.factor)}`,
  };
}

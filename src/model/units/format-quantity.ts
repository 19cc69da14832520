import { fromSi, unitOf } from "./factors.ts";
import type { Quantity } from "./quantity.ts";
import type { UnitSystem } from "./unit-system.ts";

/** How a quantity is printed: in which unit, and either to so many decimals or to so many significant digits. */
interface Style {
  readonly unit: string;
  readonly decimals?: number;
  readonly significant?: number;
  /** The style holds from this size on, in the SI unit; a later style takes over where its own begins. */
  readonly from?: number;
}

const SIGNIFICANT = 3;
/** Digits behind the point that are ever printed: enough to tell the smallest sensible values of any quantity apart. */
const MOST_DECIMALS = 30;
/** Behind this decimal place three significant digits of a tiny value are noise of the calculation. */
const NOISE_DECIMALS = 6;
/** Values this near to each other, relative, are one value: the comparison of the limits forgives as much. */
const SAME = 1e-9;
/** From here on a number is printed in powers of ten. */
const POWER_FORM = 1e15;

/** Stresses from 10,000 psi on are printed in ksi; in Pa. */
const TEN_KSI = 68_947_572;

const three = (unit: string, from = 0): Style => ({ unit, significant: SIGNIFICANT, from });

const STYLES: Readonly<Record<UnitSystem, Readonly<Record<Quantity, readonly Style[]>>>> = {
  "mm-N-kg": {
    length: [{ unit: "mm", decimals: 1 }],
    area: [{ unit: "mm²", decimals: 0 }],
    sectionModulus: [three("cm³")],
    secondMoment: [three("cm⁴")],
    angle: [{ unit: "°", decimals: 2 }],
    force: [three("N"), three("kN", 1e3)],
    moment: [three("N·m"), three("kN·m", 1e3)],
    stress: [three("MPa"), three("GPa", 1e9)],
    pressure: [three("kPa"), three("MPa", 1e6)],
    lineLoad: [three("N/mm")],
    mass: [three("g"), three("kg", 0.1)],
    lineMass: [three("kg/m")],
    massDensity: [three("kg/m³")],
    frequency: [three("Hz")],
    velocity: [three("m/s")],
    temperature: [{ unit: "°C", decimals: 1 }],
    stiffness: [three("N/mm"), three("kN/mm", 1e6)],
    rotationalStiffness: [three("N·m/rad"), three("kN·m/rad", 1e3)],
    ratio: [three("")],
    count: [{ unit: "", decimals: 0 }],
  },
  "in-lbf-lb": {
    length: [{ unit: "in", decimals: 3 }],
    area: [{ unit: "in²", decimals: 2 }],
    sectionModulus: [three("in³")],
    secondMoment: [three("in⁴")],
    angle: [{ unit: "°", decimals: 2 }],
    force: [three("lbf")],
    moment: [three("lbf·in")],
    stress: [three("psi"), three("ksi", TEN_KSI)],
    pressure: [three("psi")],
    lineLoad: [three("lbf/in")],
    mass: [three("lb")],
    lineMass: [three("lb/ft")],
    massDensity: [three("lb/in³")],
    frequency: [three("Hz")],
    velocity: [three("ft/s")],
    temperature: [{ unit: "°F", decimals: 1 }],
    stiffness: [three("lbf/in")],
    rotationalStiffness: [three("lbf·in/rad")],
    ratio: [three("")],
    count: [{ unit: "", decimals: 0 }],
  },
};

function styleFor(size: number, quantity: Quantity, system: UnitSystem): Style {
  const styles = STYLES[system][quantity];
  let chosen: Style = styles[0] ?? { unit: "", significant: SIGNIFICANT };
  for (const style of styles) if (size >= (style.from ?? 0)) chosen = style;
  return chosen;
}

function inUnit(si: number, quantity: Quantity, style: Style): number {
  const unit = unitOf(quantity, style.unit);
  return unit === undefined ? si : fromSi(si, unit);
}

/** Decimals that show so many significant digits; digits before the point are never cut. */
function naturalDecimals(value: number, style: Style): number {
  if (style.significant === undefined) return style.decimals ?? 0;
  const size = Math.abs(value);
  if (size === 0) return 0;
  const wanted = style.significant - 1 - Math.floor(Math.log10(size));
  return Math.min(Math.max(wanted, 0), NOISE_DECIMALS);
}

function trimmed(text: string): string {
  const short = text.includes(".") ? text.replace(/0+$/, "").replace(/\.$/, "") : text;
  return short === "-0" ? "0" : short;
}

/** Digits with a point, whatever the locale; no grouping, no trailing zeros, never "-0". */
export function formatNumber(value: number, decimals: number): string {
  if (Number.isNaN(value)) return "no number";
  if (!Number.isFinite(value)) return value > 0 ? "unbounded" : "-unbounded";
  if (Math.abs(value) >= POWER_FORM) return value.toExponential(SIGNIFICANT - 1).replace("e+", "e");
  return trimmed(value.toFixed(Math.min(decimals, MOST_DECIMALS)));
}

function withUnit(text: string, unit: string): string {
  if (unit === "") return text;
  return unit === "°" ? `${text}°` : `${text} ${unit}`;
}

/**
 * A value in SI, printed as the trade writes it in the unit system: lengths to 0.1 mm or 0.001 in, forces and the like to three significant
 * digits. `decimals` sets the digits behind the point instead; trailing zeros are dropped all the same.
 */
export function formatQuantity(si: number, quantity: Quantity, system: UnitSystem, decimals?: number): string {
  const style = styleFor(Math.abs(si), quantity, system);
  const value = inUnit(si, quantity, style);
  return withUnit(formatNumber(value, decimals ?? naturalDecimals(value, style)), style.unit);
}

/** The share that printed values give is this near to the true one, and one beyond so many times is printed as no number, nor its reverse. */
const SHARE_OFF = 0.01;
const COUNTLESS = 100;

/** Whether one printed value over the other is about what the values themselves give: beside them stands the share. */
function sharesAgree(a: number, b: number, first: string, second: string): boolean {
  const share = Math.abs(a / b);
  if (!(share < COUNTLESS && share > 1 / COUNTLESS)) return true;
  const [x, y] = [first, second].map((text) => Math.abs(Number(text)));
  return x !== undefined && y !== undefined && Math.abs(x / y / share - 1) <= SHARE_OFF;
}

/**
 * A measured value and its limit in one unit, with as many digits as it takes to tell them apart and to give the share of one in the
 * other to 1 %; values that differ by no more than 1e-9 of their size print alike.
 */
export function formatPair(
  measured: number,
  limit: number,
  quantity: Quantity,
  system: UnitSystem,
): { readonly measured: string; readonly limit: string } {
  const size = Math.max(Math.abs(measured), Math.abs(limit));
  const style = styleFor(size, quantity, system);
  const a = inUnit(measured, quantity, style);
  const b = inUnit(limit, quantity, style);
  const same = measured === limit || !(Math.abs(measured - limit) > SAME * size);
  let first = formatNumber(a, naturalDecimals(a, style));
  let second = formatNumber(b, naturalDecimals(b, style));
  const start = Math.min(naturalDecimals(a, style), naturalDecimals(b, style));
  const told = (): boolean => same || (first !== second && sharesAgree(a, b, first, second));
  for (let decimals = start; !told() && decimals <= MOST_DECIMALS; decimals++) {
    first = formatNumber(a, decimals);
    second = formatNumber(b, decimals);
  }
  return { measured: withUnit(first, style.unit), limit: withUnit(second, style.unit) };
}

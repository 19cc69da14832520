import type { Quantity } from "./quantity.ts";

/**
 * One unit: SI value = written value × factor / over + offset. The two integers-as-decimals keep 38.1 mm, 1.5 in and 3.81 cm the same
 * double, which a single factor such as 0.001 would not.
 */
export interface Unit {
  /** As it is printed. */
  readonly name: string;
  /** Other spellings that are read; middle dots, blanks and powers need no listing, see `spelling`. */
  readonly also: readonly string[];
  readonly factor: number;
  readonly over: number;
  readonly offset: number;
}

// Exact by definition: the international yard and pound agreement of 1959 and the CGPM; NIST SP 811 (2008), appendix B, lists them
// with factors in bold type.
const INCH_TENTHS = 254; // mm/10, a whole number so that products of it stay exact
const INCH = INCH_TENTHS / 1e4; // m
const FOOT = 12 * INCH;
const POUND = 0.45359237; // kg
const STANDARD_GRAVITY = 9.80665; // m/s², 3rd CGPM 1901
const POUND_FORCE = POUND * STANDARD_GRAVITY; // 4.4482216152605 N
const PSI = POUND_FORCE / (INCH * INCH); // 6894.757293168… Pa
const DEGREE = Math.PI / 180;
const ZERO_CELSIUS = 273.15; // K
const ZERO_FAHRENHEIT = ZERO_CELSIUS - (32 * 5) / 9; // K
const MINUTE = 60; // s

function unit(name: string, factor: number, also: readonly string[] = [], offset = 0): Unit {
  return { name, also, factor, over: 1, offset };
}

/** A unit that is an SI unit times a factor, divided by a whole number. */
function part(name: string, over: number, factor = 1, also: readonly string[] = []): Unit {
  return { name, also, factor, over, offset: 0 };
}

/** The written value in SI. */
export function toSi(written: number, { factor, over, offset }: Unit): number {
  return (written * factor) / over + offset;
}

/** An SI value as it is written in the unit. */
export function fromSi(si: number, { factor, over, offset }: Unit): number {
  return ((si - offset) * over) / factor;
}

/** Every unit that is read, per quantity; the first few are the ones a message offers first. */
export const UNITS: Readonly<Record<Quantity, readonly Unit[]>> = {
  length: [
    part("mm", 1e3, 1, ["millimetre", "millimetres", "millimeter", "millimeters"]),
    part("in", 1e4, INCH_TENTHS, ["inch", "inches"]),
    unit("m", 1, ["metre", "metres", "meter", "meters"]),
    part("cm", 1e2),
    part("µm", 1e6, 1, ["um", "μm"]),
    part("ft", 1e4, 12 * INCH_TENTHS, ["foot", "feet"]),
  ],
  area: [
    part("mm²", 1e6),
    part("cm²", 1e4),
    unit("m²", 1),
    part("in²", 1e8, INCH_TENTHS ** 2, ["sq in"]),
    part("ft²", 1e8, (12 * INCH_TENTHS) ** 2, ["sq ft"]),
  ],
  sectionModulus: [part("mm³", 1e9), part("cm³", 1e6), unit("m³", 1), part("in³", 1e12, INCH_TENTHS ** 3)],
  secondMoment: [part("mm⁴", 1e12), part("cm⁴", 1e8), unit("m⁴", 1), part("in⁴", 1e16, INCH_TENTHS ** 4)],
  angle: [part("°", 180, Math.PI, ["deg", "degree", "degrees"]), unit("rad", 1), part("mrad", 1e3)],
  force: [
    unit("N", 1, ["newton", "newtons"]),
    unit("kN", 1e3),
    unit("lbf", POUND_FORCE),
    unit("kgf", STANDARD_GRAVITY),
    unit("kip", 1e3 * POUND_FORCE, ["kips"]),
    unit("daN", 10),
  ],
  moment: [
    unit("N·m", 1),
    part("N·mm", 1e3),
    part("N·cm", 1e2),
    unit("kN·m", 1e3),
    unit("lbf·in", POUND_FORCE * INCH, ["in·lbf"]),
    unit("lbf·ft", POUND_FORCE * FOOT, ["ft·lbf"]),
  ],
  stress: pressures(),
  pressure: pressures(),
  lineLoad: [
    unit("N/mm", 1e3),
    unit("N/m", 1),
    unit("kN/m", 1e3),
    unit("lbf/in", POUND_FORCE / INCH),
    unit("lbf/ft", POUND_FORCE / FOOT),
  ],
  mass: [unit("kg", 1), part("g", 1e3), unit("t", 1e3), unit("lb", POUND, ["lbs", "lbm"]), part("oz", 16, POUND)],
  lineMass: [unit("kg/m", 1), part("g/m", 1e3), unit("lb/ft", POUND / FOOT), unit("lb/in", POUND / INCH)],
  massDensity: [
    unit("kg/m³", 1),
    unit("g/cm³", 1e3),
    unit("lb/in³", POUND / INCH ** 3),
    unit("lb/ft³", POUND / FOOT ** 3),
  ],
  frequency: [unit("Hz", 1), unit("kHz", 1e3), unit("1/s", 1), part("1/min", MINUTE, 1, ["rpm"])],
  velocity: [
    unit("m/s", 1),
    part("mm/s", 1e3),
    part("m/min", MINUTE),
    part("km/h", 3.6),
    unit("ft/s", FOOT),
    unit("in/s", INCH),
  ],
  temperature: [
    unit("°C", 1, ["C", "degC"], ZERO_CELSIUS),
    unit("K", 1),
    { name: "°F", also: ["F", "degF"], factor: 5, over: 9, offset: ZERO_FAHRENHEIT },
  ],
  stiffness: [
    unit("N/mm", 1e3),
    unit("N/m", 1),
    unit("kN/mm", 1e6),
    unit("kN/m", 1e3),
    unit("lbf/in", POUND_FORCE / INCH),
  ],
  rotationalStiffness: [
    unit("N·m/rad", 1),
    unit("kN·m/rad", 1e3),
    unit("N·m/°", 1 / DEGREE, ["N·m/deg"]),
    unit("lbf·in/rad", POUND_FORCE * INCH),
    unit("lbf·in/°", (POUND_FORCE * INCH) / DEGREE, ["lbf·in/deg"]),
  ],
  ratio: [unit("", 1), part("%", 1e2), part("‰", 1e3)],
  count: [unit("", 1)],
};

function pressures(): readonly Unit[] {
  return [
    unit("kPa", 1e3, ["kN/m²"]),
    unit("MPa", 1e6, ["N/mm²"]),
    unit("Pa", 1, ["N/m²"]),
    unit("GPa", 1e9),
    unit("bar", 1e5),
    unit("psi", PSI, ["lbf/in²"]),
    unit("ksi", 1e3 * PSI),
    unit("psf", POUND_FORCE / FOOT ** 2, ["lbf/ft²"]),
  ];
}

const POWERS: Readonly<Record<string, string>> = { "²": "2", "³": "3", "⁴": "4" };

/** A unit as it is compared: "N m", "N.m", "N*m", "N-m" and "Nm" are one, and so are "mm2", "mm^2" and "mm²". Capitals count. */
export function spelling(name: string): string {
  return name
    .replace(/[\s.·⋅∙*^-]/g, "")
    .replace(/[²³⁴]/g, (power) => POWERS[power] ?? power)
    .replace(/^º/, "°");
}

function indexed(units: readonly Unit[]): ReadonlyMap<string, Unit> {
  const index = new Map<string, Unit>();
  for (const one of units) for (const name of [one.name, ...one.also]) index.set(spelling(name), one);
  return index;
}

const INDEX: ReadonlyMap<Quantity, ReadonlyMap<string, Unit>> = new Map(
  (Object.keys(UNITS) as Quantity[]).map((quantity) => [quantity, indexed(UNITS[quantity])]),
);

/** The unit of a quantity by any of its spellings. */
export function unitOf(quantity: Quantity, name: string): Unit | undefined {
  return INDEX.get(quantity)?.get(spelling(name));
}

/** Quantities that know a unit by this name. */
export function quantitiesWith(name: string): readonly Quantity[] {
  const known: Quantity[] = [];
  for (const [quantity, index] of INDEX) if (index.has(spelling(name))) known.push(quantity);
  return known;
}

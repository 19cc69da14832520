import type { UnitSystem } from "../../model/units/unit-system.ts";

/** What the built-in stock offers for one slot size, in the units of the frame: mm, or in. */
export interface Series {
  readonly units: UnitSystem;
  /** Names of its single profiles, the standard weight first. */
  readonly profiles: readonly string[];
  /** Width of a single profile. */
  readonly pitch: number;
  /** As connectors of this pitch are named: inside-bracket-40. */
  readonly size: string;
  readonly endFastener: string;
  readonly foot: string;
  /** With a stem for the tapped core, braked with "-braked" behind it; and its height from the floor to the bar. None where a cart is too heavy for it. */
  readonly caster?: { readonly part: string; readonly height: number };
  /** Height the feet are set to. */
  readonly raise: number;
  /** Share of the usual greatest height and depth up to which its brackets keep a free-standing frame from swaying. */
  readonly firm: number;
  /** Between the two leaves of a hinge. */
  readonly hingeGap: number;
  /** For guards, with the gasket that holds it in the slot. */
  readonly clear: string;
  readonly gasket: string;
  readonly board: string;
  readonly boardThickness: number;
  /** Area of a board that two people lift: 33 kg by ISO 11228-1, with a little to spare. */
  readonly boardArea: number;
}

const METRIC = { units: "mm-N-kg", board: "plywood-18", boardThickness: 18, boardArea: 2.5e6 } as const;
const INCH = { units: "in-lbf-lb", board: "plywood-0.75in", boardThickness: 0.75, boardArea: 3800 } as const;

export const SERIES: readonly Series[] = [
  {
    ...METRIC,
    profiles: ["40x40-8"],
    pitch: 40,
    size: "40",
    endFastener: "end-fastener-8",
    foot: "foot-40-M8",
    caster: { part: "caster-75-M8", height: 100 },
    raise: 40,
    firm: 1,
    hingeGap: 4,
    clear: "polycarbonate-5",
    gasket: "strip-8",
  },
  {
    ...METRIC,
    profiles: ["30x30-6"],
    pitch: 30,
    size: "30",
    endFastener: "end-fastener-6",
    foot: "foot-30-M6",
    caster: { part: "caster-75-M6", height: 100 },
    raise: 30,
    firm: 1,
    hingeGap: 3,
    clear: "polycarbonate-4",
    gasket: "strip-6",
  },
  {
    ...METRIC,
    profiles: ["45x45-10"],
    pitch: 45,
    size: "45",
    endFastener: "end-fastener-10",
    foot: "foot-45-M10",
    caster: { part: "caster-75-M10", height: 100 },
    raise: 45,
    firm: 1,
    hingeGap: 4.5,
    clear: "polycarbonate-6",
    gasket: "strip-10",
  },
  {
    ...INCH,
    profiles: ["1.5x1.5-5/16"],
    pitch: 1.5,
    size: "1.5",
    endFastener: "end-fastener-5/16",
    foot: "foot-1.5-5/16-18",
    caster: { part: "caster-3-5/16-18", height: 4 },
    raise: 1.5,
    firm: 1,
    hingeGap: 0.15,
    clear: "polycarbonate-0.22in",
    gasket: "strip-5/16",
  },
  {
    ...INCH,
    profiles: ["1x1-1/4"],
    pitch: 1,
    size: "1",
    endFastener: "end-fastener-1/4",
    foot: "foot-1-1/4-20",
    raise: 1,
    firm: 0.6,
    hingeGap: 0.1,
    clear: "polycarbonate-0.118in",
    gasket: "strip-1/4",
  },
];

/** The profiles to choose from, the usual one first. */
export function profilesFor(units: UnitSystem): readonly string[] {
  return SERIES.filter((series) => series.units === units).flatMap((series) => series.profiles);
}

export function seriesOf(profile: string): Series | undefined {
  return SERIES.find((series) => series.profiles.includes(profile));
}

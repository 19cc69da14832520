import type { Zone } from "../model/frame.ts";
import { defineFact } from "./fact.ts";
import { clearWidth, type Opening, openingsOf, rowOf } from "./guard-openings.ts";
import { type Guarding, type GuardSide, guardSides, type Hazard } from "./guard-sides.ts";
import type { OpeningRow } from "./reach-distances.ts";
import { OUT_OF_REACH, overDistanceWithin } from "./reach-over.ts";

/** How one side of a guard keeps people from a zone. */
export interface SideReach {
  readonly name: string;
  readonly plane: GuardSide;
  /** The opening that comes nearest to letting someone reach the zone, with the thickest rod that passes it, m, and the row of the standard it falls under; undefined where the side is closed. */
  readonly through: (Opening & { readonly clear: number; readonly row: OpeningRow }) | undefined;
  /** Over the top of the side, where nothing lies over the zone; `needed` undefined: too low to guard at all. */
  readonly over: { readonly guard: number; readonly distance: number; readonly needed: number | undefined } | undefined;
}

export interface ZoneReach {
  readonly zone: Zone;
  readonly sides: readonly SideReach[];
  /** Sides on which nothing stands. */
  readonly open: readonly string[];
}

const AXES = ["x", "y", "z"] as const;

/** "-x side", or "top". */
export const sideName = ({ axis, sign }: { readonly axis: 0 | 1 | 2; readonly sign: 1 | -1 }): string =>
  axis === 2 ? "top" : `${sign > 0 ? "+" : "-"}${AXES[axis]} side`;

/** The opening whose distance falls furthest short of what is needed, in proportion. */
function worstOf(openings: readonly Opening[]): Opening | undefined {
  const short = ({ needed, distance, body }: Opening): number =>
    body ? Number.MAX_VALUE : needed / Math.max(distance, 1e-9);
  return openings.reduce<Opening | undefined>((a, b) => (!a || short(b) > short(a) ? b : a), undefined);
}

function overOf(side: GuardSide, { zone, roofed }: Guarding<Hazard>, floor: number): SideReach["over"] {
  if (roofed || side.axis === 2) return undefined;
  const guard = side.high[1] - floor;
  const face = side.sign > 0 ? zone.high[side.axis] : zone.low[side.axis];
  const needed = overDistanceWithin(zone.risk, zone.low[2] - floor, zone.high[2] - floor, guard);
  return { guard, distance: Math.abs(side.at - face), needed };
}

/** How each side of a guard keeps people from what is behind it. */
export function sidesReach(guarding: Guarding<Hazard>, floor: number): readonly SideReach[] {
  return guarding.sides.map((side) => {
    const worst = worstOf(openingsOf(side, guarding.zone));
    const clear = worst ? clearWidth(worst, side) : 0;
    return {
      name: sideName(side),
      plane: side,
      through: worst && { ...worst, clear, row: rowOf(worst, clear) },
      over: overOf(side, guarding, floor),
    };
  });
}

/** Openings above the height that nobody reaches from the floor are nobody's way in. */
const reachable = (zone: Zone, floor: number): boolean => zone.low[2] - floor < OUT_OF_REACH[zone.risk];

/** For every zone and side: how near an arm, a leg or a body comes through the guard, under it and over it. */
export const guardReach = defineFact<readonly ZoneReach[], { guardSides: typeof guardSides }>({
  id: "guard-reach",
  needs: { guardSides },
  compute({ guardSides: all }, frame) {
    const floor = frame.floor.z;
    return all.map((guarding): ZoneReach => {
      const { zone } = guarding;
      if (!reachable(zone, floor)) return { zone, sides: [], open: [] };
      return { zone, sides: sidesReach(guarding, floor), open: guarding.open.map(sideName) };
    });
  },
});

import { boundsOf, boundsOverlap } from "../geometry/bounds.ts";
import { fallUntilMet } from "../geometry/fall.ts";
import { prismFromBox } from "../geometry/prism.ts";
import { along, perpendicularPair, type Vec3 } from "../geometry/vector.ts";
import { type Body, bodies } from "./bodies.ts";
import type { EndState } from "./ends.ts";
import { defineFact } from "./fact.ts";
import { guardParts } from "./guard-parts.ts";
import { sidesReach } from "./guard-reach.ts";
import { guardingOf, type Hazard } from "./guard-sides.ts";
import { obstacles } from "./obstacles.ts";
import { LOWEST_GUARD } from "./reach-over.ts";

/** Where people meet a cut end. */
export type Meeting = "eyes" | "legs" | "hands";

export interface EndReach {
  /** Whether panels and bars keep hands from an end, doors and all that swings with them taken as open. */
  keptOff(end: EndState): boolean;
  /** What runs into it: eyes or legs, where it sticks out at their height; else hands that reach for it. */
  meets(end: EndState): Meeting;
}

/** Heights over the floor, m: up to the knee, and from the eyes of small people to the crown of tall ones (ISO 7250-1, from memory). */
const KNEE = 0.6;
const EYES = [1.3, 2] as const;
/** An end with more than this free before it sticks out into the way, m: what a body needs (ISO 13854, Table 1). */
const BODY = 0.5;
/** Ends that look more up or down than this do not stick out into anyone's way: 45°. */
const STEEP = Math.SQRT1_2;
/** Half the width of the lane before an end that is looked along, m: a thumb. */
const LANE = 0.01;
/** Parts that graze the lane are not in it, m. */
const GRAZING = 1e-4;

/** How far sawn metal is felt before and beside its face, m: a face seen edge on has a breadth, too. */
const BURR = 0.0005;

/** The box round the cut face, as something to keep hands from; undefined where nothing is left of the bar. */
function hazardOf(body: Body, { ref }: EndState): Hazard | undefined {
  const cut = body.sides.find(({ side }) => `${body.bar.ref.id}/${side}` === ref.id);
  if (!cut) return undefined;
  const { min, max } = boundsOf(cut.face.vertices);
  const by = (at: Vec3, off: number): Vec3 => [at[0] + off, at[1] + off, at[2] + off];
  return { low: by(min, -BURR), high: by(max, BURR), risk: "low" };
}

/** How people come to cut ends, by the reach of arms and legs through and over what stands round them (ISO 13857). */
export const endReach = defineFact<
  EndReach,
  { bodies: typeof bodies; guardParts: typeof guardParts; obstacles: typeof obstacles }
>({
  id: "end-reach",
  needs: { bodies, guardParts, obstacles },
  compute({ bodies: all, guardParts: parts, obstacles: things }, frame) {
    const swinging = new Set(frame.doors.flatMap((door) => [...door.bars, ...door.panels]));
    const standing = parts.filter(({ of }) => !swinging.has(of.id));
    const floor = frame.floor.z;
    const kept = new Map<string, boolean>();
    const free = ({ at, normal, bar }: EndState): boolean => {
      const [u, v] = perpendicularPair(normal);
      const tip = prismFromBox({ centre: along(at, normal, LANE), axes: [normal, u, v], half: [LANE, LANE, LANE] });
      const lane = boundsOf([...tip.vertices, along(at, normal, BODY)]);
      return !things.some(
        ({ of, prism, bounds }) =>
          of.id !== bar.id &&
          boundsOverlap(lane, bounds, LANE) &&
          fallUntilMet(tip, prism, normal, BODY, GRAZING) !== undefined,
      );
    };
    return {
      keptOff(end) {
        const known = kept.get(end.ref.id);
        if (known !== undefined) return known;
        const body = all.get(end.bar.id);
        const hazard = body && hazardOf(body, end);
        const guarding = hazard && guardingOf(hazard, standing, floor);
        const off =
          guarding !== undefined &&
          guarding.open.length === 0 &&
          sidesReach(guarding, floor).every(
            ({ through, over }) =>
              (!through || (!through.body && through.distance >= through.needed)) &&
              (!over || (over.guard >= LOWEST_GUARD && over.needed !== undefined && over.distance >= over.needed)),
          );
        kept.set(end.ref.id, off);
        return off;
      },
      meets(end) {
        const height = end.height;
        if (Math.abs(end.normal[2]) > STEEP || !free(end)) return "hands";
        if (height <= KNEE) return "legs";
        return height >= EYES[0] && height <= EYES[1] ? "eyes" : "hands";
      },
    };
  },
});

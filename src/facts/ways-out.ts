import { type Bounds3, boundsOf, boundsOverlap } from "../geometry/bounds.ts";
import { fallUntilMet } from "../geometry/fall.ts";
import { extentAlong, type Prism, prismFromBox, shifted } from "../geometry/prism.ts";
import { prismPenetration } from "../geometry/prism-penetration.ts";
import { add, distance, dot, scale, type Vec3 } from "../geometry/vector.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { hindrances } from "./hindrances.ts";
import { panelBoxes } from "./panel-boxes.ts";

/** First a little one way, then straight out another; numbers of the ways. */
export interface TwoLegs {
  readonly first: number;
  readonly out: number;
}

/** What parts meet when they are moved out of the frame, the whole way. */
export interface WaysOut {
  readonly ways: readonly Vec3[];
  /** Parts of the whole frame that a part meets on its straight way out. */
  meets(part: string, way: number): ReadonlySet<string>;
  /** Whether a part runs into the floor that way before it is out. */
  grounds(part: string, way: number): boolean;
  /** How far parts reach along a unit vector, m. */
  reach(parts: readonly string[], way: Vec3): number;
  /** A way out in two legs, the first one of those that are given, past the other parts and, where it stands, the floor. */
  inTwoLegs(
    parts: readonly string[],
    firsts: readonly number[],
    others: readonly string[],
    standing: boolean,
  ): TwoLegs | undefined;
}

/** Parts that pass each other no deeper than this do not meet, m: they slide along each other. */
const GRAZE = 0.001;
/** Ways whose cosine is less than this turn off. */
const TURNS = 0.9;

interface Solid {
  readonly id: string;
  readonly prism: Prism;
  readonly bounds: Bounds3;
}

const solidOf = (id: string, prism: Prism): Solid => ({ id, prism, bounds: boundsOf(prism.vertices) });

/** What a solid covers on its way. */
const swept = ({ min, max }: Bounds3, by: Vec3): Bounds3 => boundsOf([min, max, add(min, by), add(max, by)]);

/**
 * Straight ways out of the frame for every bar, as its whole section, and every panel: moved past all parts, or past some, until it is clear of
 * the frame. Convex bodies moved without turning, so that it is exact (see `fallUntilMet`). Connectors and feet are left out: they can go on later.
 */
export const waysOut = defineFact<
  WaysOut,
  { bodies: typeof bodies; panels: typeof panelBoxes; hindrances: typeof hindrances }
>({
  id: "ways-out",
  needs: { bodies, panels: panelBoxes, hindrances },
  compute({ bodies: all, panels, hindrances: { ways } }, frame) {
    const solids = new Map<string, Solid>();
    for (const [id, { prism }] of all) if (prism) solids.set(id, solidOf(id, prism));
    for (const [id, { box }] of panels) if (box) solids.set(id, solidOf(id, prismFromBox(box)));
    const ends = [...solids.values()].flatMap(({ bounds }) => [bounds.min, bounds.max]);
    const whole = ends.length > 0 ? boundsOf(ends) : undefined;
    const span = whole ? distance(whole.min, whole.max) : 0;
    const met = new Map<string, ReadonlySet<string>>();
    /** Which of some solids another meets as it goes one way out of the frame, and how far it goes before, m. */
    function* meeting<T extends Solid>(one: Solid, way: Vec3, others: Iterable<T>): Generator<readonly [T, number]> {
      const path = swept(one.bounds, scale(way, span));
      for (const other of others) {
        if (!boundsOverlap(path, other.bounds)) continue;
        const far = fallUntilMet(one.prism, other.prism, way, span, GRAZE);
        if (far !== undefined) yield [other, far];
      }
    }
    const until = (one: Solid, way: Vec3, others: Iterable<Solid>): number => {
      let least = span;
      for (const [, far] of meeting(one, way, others)) least = Math.min(least, far);
      return least;
    };
    const toFloor = ({ bounds }: Solid, way: Vec3): number =>
      way[2] < 0 ? Math.max(0, (bounds.min[2] - frame.floor.z) / -way[2]) : Number.POSITIVE_INFINITY;
    const grounds = (one: Solid, way: Vec3): boolean => toFloor(one, way) < span - GRAZE && way[2] < -GRAZE / span;
    return {
      ways,
      meets(part, way) {
        const key = `${way} ${part}`;
        const known = met.get(key);
        if (known) return known;
        const found = new Set<string>();
        const [one, along] = [solids.get(part), ways[way]];
        if (one && along) for (const [{ id }] of meeting(one, along, solids.values())) if (id !== part) found.add(id);
        met.set(key, found);
        return found;
      },
      grounds(part, way) {
        const [one, along] = [solids.get(part), ways[way]];
        if (!along) return false;
        // Of what has no known shape nobody knows how far it reaches down.
        return one ? grounds(one, along) : along[2] < 0;
      },
      reach: (parts, way) =>
        Math.max(...parts.flatMap((part) => solids.get(part)?.prism.vertices ?? []).map((vertex) => dot(vertex, way))),
      inTwoLegs(parts, firsts, others, standing) {
        const own = parts.flatMap((part) => solids.get(part) ?? []);
        const around = others.flatMap((part) => solids.get(part) ?? []);
        if (own.length === 0) return undefined;
        for (const first of firsts) {
          const way = ways[first];
          if (!way) continue;
          const far = Math.min(
            ...own.map((one) => Math.min(until(one, way, around), standing ? toFloor(one, way) : span)),
          );
          const reaches = own.map(({ prism }) => extentAlong(prism, way));
          const size = Math.max(...reaches.map(([, high]) => high)) - Math.min(...reaches.map(([low]) => low));
          for (const move of [far, far / 2, size].filter((length) => length > GRAZE && length <= far)) {
            const moved = own.map(({ id, prism }) => solidOf(id, shifted(prism, scale(way, move))));
            const stuck = moved.some((one) =>
              around.some(
                (other) =>
                  boundsOverlap(one.bounds, other.bounds) && prismPenetration(one.prism, other.prism).depth > GRAZE,
              ),
            );
            if (stuck) continue;
            const out = ways.findIndex(
              (second) =>
                Math.abs(dot(way, second)) < TURNS &&
                moved.every((one) => !(standing && grounds(one, second)) && until(one, second, around) >= span),
            );
            if (out >= 0) return { first, out };
          }
        }
        return undefined;
      },
    };
  },
});

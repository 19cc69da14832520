import { scale, type Vec3 } from "../../geometry/vector.ts";
import type { WaysOut } from "../ways-out.ts";

/** How something is moved: straight, in two legs, or straight for a little only. */
export interface Path {
  /** Unit vectors, one after the other. */
  readonly legs: readonly Vec3[];
  /** Parts that stand in its straight way: it is turned past them, nobody has looked how. */
  readonly past: readonly string[];
}

/** How well something comes off. What comes first is looked for among all pieces before what comes later. */
export type Manner = "straight" | "in two legs" | "lying" | "past others";

export const MANNERS: readonly Manner[] = ["straight", "in two legs", "lying", "past others"];

/** The way of a path walked back. */
export const walkedBack = ({ legs, past }: Path): Path => ({
  legs: [...legs].reverse().map((leg) => scale(leg, -1)),
  past,
});

/**
 * How parts come off in this manner, out of what is there, by one of the ways that a small move leaves them; undefined where they do not. What stands has
 * the floor in its way; it may be laid on a side, so that it has not.
 */
export function pathOf(
  parts: readonly string[],
  free: readonly number[],
  manner: Manner,
  there: ReadonlySet<string>,
  standing: boolean,
  room: WaysOut,
): Path | undefined {
  const own = new Set(parts);
  const straight = (way: number | undefined, past: readonly string[] = []): Path | undefined => {
    const leg = way === undefined ? undefined : room.ways[way];
    return leg && { legs: [leg], past };
  };
  const metOn = (way: number): readonly string[] => {
    const met = new Set(parts.flatMap((part) => [...room.meets(part, way)]));
    return [...met].filter((part) => there.has(part) && !own.has(part));
  };
  const onFloor = (way: number): boolean => standing && parts.some((part) => room.grounds(part, way));
  switch (manner) {
    case "straight":
      return straight(free.find((way) => !onFloor(way) && metOn(way).length === 0));
    case "in two legs": {
      const others = [...there].filter((part) => !own.has(part));
      const found = room.inTwoLegs(parts, free, others, standing);
      return found && { legs: [found.first, found.out].flatMap((way) => straight(way)?.legs ?? []), past: [] };
    }
    case "lying":
      return standing ? straight(free.find((way) => metOn(way).length === 0)) : undefined;
    case "past others": {
      const ways = free.map((way) => ({ way, met: metOn(way) }));
      const best = ways.reduce<(typeof ways)[number] | undefined>(
        (least, one) => (least && least.met.length <= one.met.length ? least : one),
        undefined,
      );
      return straight(best?.way, best?.met);
    }
  }
}

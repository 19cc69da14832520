import { cross, length, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { directionWords, sameLine } from "./axis-words.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { type Foothold, footing } from "./footing.ts";
import type { LooseMotion } from "./loose-motion.ts";
import { response } from "./response.ts";
import { type Structure, structure } from "./structure.ts";

/** Bars that nothing stops from moving, alone or together. */
export interface LoosePart {
  /** In the order of the file. */
  readonly bars: readonly string[];
  /** How they move, in words: "turn about y at rail.to". One for each independent motion. */
  readonly ways: readonly string[];
  /** Which mechanism each way is of. */
  readonly mechanisms: readonly number[];
}

/** A joint or foot lies on an axis when it is no farther from it than this, m: the size of a joint. */
const ON_AXIS = 0.03;
/** Moving groups of one mechanism that are described before the rest is only counted. */
const DESCRIBED = 3;

function fromAxis(motion: LooseMotion, point: Vec3): number {
  return length(cross(subtract(point, motion.point), motion.direction));
}

/** What a turn hinges on: the joint between moving and resting bars, or the feet, that lie on its axis. */
function hingesOn(motion: LooseMotion, known: Structure, feet: readonly Foothold[]): readonly Ref[] {
  const moving = new Set(motion.bars);
  const joints = known.links.filter(
    (link) => moving.has(link.bar) !== moving.has(link.onto) && fromAxis(motion, link.at) < ON_AXIS,
  );
  const refs: Ref[] = joints.map((link) => link.joint);
  for (const foot of feet) {
    const bar = known.nodes[foot.node]?.bar;
    if (bar !== undefined && moving.has(bar) && fromAxis(motion, foot.at) < ON_AXIS) refs.push(foot.ref);
  }
  return [...new Map(refs.map((r) => [r.id, r])).values()];
}

function axisWords(motion: LooseMotion, along: Vec3 | undefined): string {
  return along && sameLine(motion.direction, along) ? "its own length" : directionWords(motion.direction);
}

/**
 * What the solver's mechanisms come to on the floor: one part for each set of bars that moves, however many ways it can.
 * Declared freedoms (hinges, unlocked pivots, casters that roll, resting feet) are held in the solver and are none of these.
 */
export const looseParts = defineFact<
  readonly LoosePart[],
  {
    response: typeof response;
    structure: typeof structure;
    bodies: typeof bodies;
    footing: typeof footing;
  }
>({
  id: "loose-parts",
  needs: { response, structure, bodies, footing },
  compute({ response: found, structure: known, bodies: all, footing: feet }, frame) {
    if (found.kind !== "loose") return [];
    const order = new Map(frame.bars.map((bar, i) => [bar.ref.id, i]));
    const byMechanism = new Map<number, LooseMotion[]>();
    for (const motion of found.motions) {
      const own = byMechanism.get(motion.mechanism);
      if (own) own.push(motion);
      else byMechanism.set(motion.mechanism, [motion]);
    }
    const words = (motion: LooseMotion): string => {
      const [lead = ""] = motion.bars;
      const many = motion.bars.length > 1;
      const who = many ? `${lead} and ${motion.bars.length - 1} more` : lead;
      if (motion.kind === "slide")
        return `${who} ${many ? "slide" : "slides"} along ${directionWords(motion.direction)}`;
      const at = hingesOn(motion, known, feet).map((r) => r.id);
      const shown = at.slice(0, DESCRIBED).join(" and ");
      const along = many ? undefined : all.get(lead)?.axes.x;
      return `${who} ${many ? "turn" : "turns"} about ${axisWords(motion, along)}${shown === "" ? "" : ` at ${shown}`}`;
    };
    const parts = new Map<string, { bars: string[]; ways: string[]; mechanisms: number[] }>();
    for (const [mechanism, motions] of byMechanism) {
      const bars = [...new Set(motions.flatMap((motion) => motion.bars))].sort(
        (a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0),
      );
      const told = [...motions].sort((a, b) => a.bars.length - b.bars.length).slice(0, DESCRIBED);
      const rest = motions.length - told.length;
      const way = `${told.map(words).join(", ")}${rest > 0 ? ` and ${rest} more parts follow` : ""}`;
      const key = bars.join(" ");
      const part = parts.get(key);
      if (part) {
        part.ways.push(way);
        part.mechanisms.push(mechanism);
      } else parts.set(key, { bars, ways: [way], mechanisms: [mechanism] });
    }
    return [...parts.values()];
  },
});

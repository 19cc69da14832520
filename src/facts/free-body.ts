import { add, along, cross, length, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { LoadCase } from "../mechanics/model.ts";
import type { Solution } from "../mechanics/statics/solve.ts";
import type { SolvedState } from "../mechanics/statics/state.ts";
import type { Foothold } from "./footing.ts";
import type { Structure } from "./structure.ts";

/** A force [N] and a moment [N·m], global components; the moment is about the point that the force is said to act at. */
export interface Wrench {
  readonly at: Vec3;
  readonly force: Vec3;
  readonly moment: Vec3;
}

const ORIGIN: Vec3 = [0, 0, 0];

/** What the floor puts on the frame at one foothold: the push under it, and what springs hold there. */
export function reactionAt(solution: Solution, state: SolvedState, foot: Foothold): Wrench {
  const { springs = [], contacts = [] } = solution.frame.model;
  const here = (part: { readonly from: number; readonly at?: Vec3 }): boolean =>
    part.from === foot.node && part.at !== undefined && length(subtract(part.at, foot.at)) < 1e-9;
  let [force, moment] = [ORIGIN, ORIGIN];
  for (const [i, spring] of springs.entries()) {
    if (spring.to !== "ground" || !here(spring)) continue;
    for (const [k, axis] of [spring.axes.x, spring.axes.y, spring.axes.z].entries()) {
      force = along(force, axis, state.springs[6 * i + k] ?? 0);
      moment = along(moment, axis, state.springs[6 * i + 3 + k] ?? 0);
    }
  }
  for (const [i, contact] of contacts.entries()) {
    const result = state.contacts[i];
    if (contact.to !== "ground" || !result || !here(contact)) continue;
    force = add(along(force, contact.normal, result.push), result.sideways);
  }
  return { at: foot.at, force, moment };
}

/** Sum of forces and of their moments about the origin, beside the sums of their sizes, by which a rest is judged. */
export interface Sum {
  readonly force: Vec3;
  readonly moment: Vec3;
  readonly forces: number;
  readonly moments: number;
}

export function sumOf(wrenches: Iterable<Wrench>): Sum {
  let [force, moment, forces, moments] = [ORIGIN, ORIGIN, 0, 0];
  for (const { at, force: f, moment: m } of wrenches) {
    const turning = add(m, cross(at, f));
    force = add(force, f);
    moment = add(moment, turning);
    forces += length(f);
    moments += length(m) + length(at) * length(f);
  }
  return { force, moment, forces, moments };
}

/**
 * The loads of a combination as forces at points of the drawn bars. A line load counts at the third points of its stretch, each
 * with what the linear density puts there: force and moment of the whole stretch are exact.
 */
export function* appliedLoads(
  structure: Structure,
  cases: readonly LoadCase[],
  factors: readonly number[],
): Generator<Wrench> {
  for (const [c, { members = [], nodes = [] }] of cases.entries()) {
    const factor = factors[c] ?? 0;
    if (factor === 0) continue;
    for (const { node, force = ORIGIN, moment = ORIGIN, at } of nodes)
      yield {
        at: at ?? structure.nodes[node]?.at ?? ORIGIN,
        force: scale(force, factor),
        moment: scale(moment, factor),
      };
    for (const load of members) {
      const piece = structure.pieces[load.member];
      const [from, to] = [structure.nodes[piece?.from ?? -1]?.at, structure.nodes[piece?.to ?? -1]?.at];
      if (!from || !to || load.kind === "strain") continue;
      const run = subtract(to, from);
      const point = (station: number): Vec3 => add(along(from, run, station / length(run)), load.arm ?? ORIGIN);
      if (load.kind === "point") {
        const { force = ORIGIN, moment = ORIGIN } = load;
        yield { at: point(load.along), force: scale(force, factor), moment: scale(moment, factor) };
        continue;
      }
      const [first, last] = load.force ?? [ORIGIN, ORIGIN];
      const [turnFirst, turnLast] = load.moment ?? [ORIGIN, ORIGIN];
      const stretch = load.end - load.start;
      // Half a stretch times its end value, a third of the way from that end: a linear density is two triangles.
      const half = (factor * stretch) / 2;
      yield { at: point(load.start + stretch / 3), force: scale(first, half), moment: scale(turnFirst, half) };
      yield { at: point(load.end - stretch / 3), force: scale(last, half), moment: scale(turnLast, half) };
    }
  }
}

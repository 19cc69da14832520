import type { Vec3 } from "../../geometry/vector.ts";
import { add, cross, dot, scale } from "../../geometry/vector.ts";
import type { FrameModel, LoadCase, Triad } from "../model.ts";
import { ORIGIN } from "../triad.ts";
import type { MemberLoads } from "./compile.ts";
import { atNode, POINT, SIX, VARYING } from "./compile.ts";

/** Resultant of applied loads about the origin, with the sums of absolute values that a rounding error scales with. */
export interface Resultant {
  readonly force: Vec3;
  readonly moment: Vec3;
  readonly forceScale: number;
  readonly momentScale: number;
}

const outOf = (axes: Triad, v: Float64Array, at: number): Vec3 =>
  add(add(scale(axes.x, v[at] as number), scale(axes.y, v[at + 1] as number)), scale(axes.z, v[at + 2] as number));

/** Length of a vector; Math.hypot guards against overflow that loads do not reach, at ten times the cost. */
const size = (v: Vec3): number => Math.sqrt(dot(v, v));

/** Sums the loads as given, by closed formulas of their own (not by the fixed-end forces), so that it can check the solution. */
export function resultant(model: FrameModel, loadCase: LoadCase, onMembers: MemberLoads): Resultant {
  let [force, moment, forceScale, momentScale]: [Vec3, Vec3, number, number] = [ORIGIN, ORIGIN, 0, 0];
  const put = (f: Vec3, m: Vec3, at: Vec3): void => {
    const turning = add(m, cross(at, f));
    force = add(force, f);
    moment = add(moment, turning);
    forceScale += size(f);
    momentScale += size(m) + size(at) * size(f);
  };
  for (const load of loadCase.nodes ?? []) put(...atNode(model, load), model.nodes[load.node] ?? ORIGIN);
  const { loaded, first: firstOf, kind, place, start: starts, end: ends, values } = onMembers;
  for (const m of loaded) {
    const member = model.members[m];
    if (!member) continue;
    const start = add(model.nodes[member.from] ?? ORIGIN, member.fromOffset ?? ORIGIN);
    for (let i = firstOf[m] as number; i < (firstOf[m + 1] as number); i++) {
      const [a, b, at] = [starts[i] as number, ends[i] as number, place[i] as number];
      const end = kind[i] === VARYING ? at + SIX : at;
      const [first, last] = [outOf(member.axes, values, at), outOf(member.axes, values, end)];
      const [turnFirst, turnLast] = [outOf(member.axes, values, at + 3), outOf(member.axes, values, end + 3)];
      if (kind[i] === POINT) {
        put(first, turnFirst, add(start, scale(member.axes.x, a)));
        continue;
      }
      const span = b - a;
      const total = scale(add(first, last), span / 2);
      const firstMoment = scale(add(scale(first, 2 * a + b), scale(last, a + 2 * b)), span / 6); // ∫ x q dx
      const lever = dot(total, total) > 0 ? dot(firstMoment, total) / dot(total, total) : 0;
      const rest = add(firstMoment, scale(total, -lever)); // what no single line of action carries
      const turning = add(scale(add(turnFirst, turnLast), span / 2), cross(member.axes.x, rest));
      put(total, turning, add(start, scale(member.axes.x, lever)));
    }
  }
  return { force, moment, forceScale, momentScale };
}

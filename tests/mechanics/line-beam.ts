import { prepareFrame } from "../../src/mechanics/frame.ts";
import type { Hold, LoadCase, Member, MemberLoad, Six, Triad } from "../../src/mechanics/model.ts";
import { memberDeflections, memberForces, solvedState } from "../../src/mechanics/results.ts";
import type { Solution } from "../../src/mechanics/statics/solve.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";

export const GLOBAL: Triad = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };

export type End = "free" | "pinned" | "fixed" | { readonly turnSpring: number };

/** Free in the plane x-y as the name says; motion out of the plane and twist are held. */
export function planeHolds(end: End, alongHeld: boolean): Six<Hold> {
  const along: Hold = alongHeld ? "fixed" : "free";
  if (end === "free") return [along, "free", "fixed", "fixed", "fixed", "free"];
  const turn: Hold = end === "fixed" ? "fixed" : end === "pinned" ? "free" : end.turnSpring;
  return [along, "fixed", "fixed", "fixed", "fixed", turn];
}

export interface LineBeam {
  readonly EI: number;
  /** Station and support of every node along x. */
  readonly nodes: readonly (readonly [x: number, end: End])[];
  readonly GAy?: number;
  readonly massPerLength?: number;
}

const STIFF_AGAINST_STRETCH = 1e5;

/** A beam along x, bent in the plane x-y (y up), any consistent units. */
export function lineBeamModel({ EI, nodes, GAy = Infinity, massPerLength = 0 }: LineBeam) {
  // Stretching has no part in these beams: its stiffness lies far above that of bending.
  const length = (nodes[nodes.length - 1]?.[0] ?? 1) - (nodes[0]?.[0] ?? 0);
  const EA = (STIFF_AGAINST_STRETCH * EI) / length ** 2;
  const members: Member[] = nodes.slice(1).map((_, i) => ({
    from: i,
    to: i + 1,
    axes: GLOBAL,
    EA,
    EIy: EI,
    EIz: EI,
    GJ: EI,
    GAy,
    GAz: Infinity,
    massPerLength,
  }));
  return {
    nodes: nodes.map(([x]) => [x, 0, 0] as const),
    members,
    supports: nodes.map(([, end], node) => ({ node, holds: planeHolds(end, node === 0) })),
  };
}

export function solveLine(beam: LineBeam, load: LoadCase): Solution {
  return solveFrame(prepareFrame(lineBeamModel(beam)), [load], [[1]]);
}

/** Downward uniform load on one member, or linearly varying from w to wEnd. */
export function down(member: number, length: number, w: number, wEnd = w): MemberLoad {
  return {
    kind: "line",
    member,
    start: 0,
    end: length,
    force: [
      [0, -w, 0],
      [0, -wEnd, 0],
    ],
  };
}

export const pointDown = (member: number, along: number, P: number): MemberLoad => ({
  kind: "point",
  member,
  along,
  force: [0, -P, 0],
});

export const bending = (s: Solution, member = 0) => memberForces(s, 0, member).Mz;
export const lateral = (s: Solution, member = 0) => memberDeflections(s, 0, member).y;
export const reaction = (s: Solution, node: number, component = 1): number =>
  solvedState(s, 0).reactions[6 * node + component] as number;
export const displacement = (s: Solution, node: number, component: number): number =>
  solvedState(s, 0).displacements[6 * node + component] as number;

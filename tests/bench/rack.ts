/** The frames and cases the benches of the mechanics share, and what is read off them. */
import { sag } from "../../src/mechanics/member/sag.ts";
import type { Combination, FrameModel, LoadCase, Member, MemberLoad, Vec3 } from "../../src/mechanics/model.ts";
import { extrema } from "../../src/mechanics/piecewise.ts";
import { memberDeflections, memberForces } from "../../src/mechanics/results.ts";
import type { Solution } from "../../src/mechanics/statics/solve.ts";
import { axesAlong, memberLength, SECTION } from "../mechanics/random-frame.ts";

const FIXED = ["fixed", "fixed", "fixed", "fixed", "fixed", "fixed"] as const;

/** A shelf of nx × ny × nz cells: posts and rails along both axes. */
export function rack(nx: number, ny: number, nz: number): FrameModel {
  const id = (i: number, j: number, k: number): number => (k * (ny + 1) + j) * (nx + 1) + i;
  const nodes: Vec3[] = [];
  const pairs: (readonly [number, number])[] = [];
  for (let k = 0; k <= nz; k++) {
    for (let j = 0; j <= ny; j++) {
      for (let i = 0; i <= nx; i++) {
        nodes.push([0.6 * i, 0.5 * j, 0.45 * k]);
        if (k < nz) pairs.push([id(i, j, k), id(i, j, k + 1)]);
        if (k > 0 && i < nx) pairs.push([id(i, j, k), id(i + 1, j, k)]);
        if (k > 0 && j < ny) pairs.push([id(i, j, k), id(i, j + 1, k)]);
      }
    }
  }
  const members = pairs.map(([from, to]): Member => {
    return { from, to, axes: axesAlong(nodes[from] ?? [0, 0, 0], nodes[to] ?? [0, 0, 0], 0), ...SECTION };
  });
  const feet = Array.from({ length: (nx + 1) * (ny + 1) }, (_, node) => ({ node, holds: FIXED }));
  return { nodes, members, supports: feet };
}

/** Cases of uniform loads in changing directions on every member, and a push. */
export function loadCases(model: FrameModel, count: number): LoadCase[] {
  const top = model.nodes.length - 1;
  return Array.from({ length: count }, (_, c): LoadCase => {
    const q: Vec3 = [5 * Math.sin(c), 5 * Math.cos(c), -40 - c];
    // One pair for all: what loads take in memory is not what is timed.
    const force = [q, q] as const;
    const members = model.members.map((_, member): MemberLoad => {
      return { kind: "line", member, start: 0, end: memberLength(model, member), force };
    });
    return { nodes: [{ node: top, force: [150, 20 * c, 0] }], members };
  });
}

/** What a checker reads off every bar, one bar after the other as rules do: extremes of six internal forces, and the sag against its chord. */
export function barResults(s: Solution): number {
  let worst = 0;
  for (let m = 0; m < s.frame.model.members.length; m++) {
    for (let c = 0; c < s.combinations.length; c++) {
      const f = memberForces(s, c, m);
      for (const part of [f.N, f.Vy, f.Vz, f.T, f.My, f.Mz]) worst = Math.max(worst, extrema(part).max.value);
      const d = memberDeflections(s, c, m, f);
      worst = Math.max(worst, sag(d, 0, s.frame.parts.table.length[m] as number).value);
    }
  }
  return worst;
}

/** Every case by itself. */
export const unit = (count: number): Combination[] =>
  Array.from({ length: count }, (_, i) => Array.from({ length: count }, (_, j) => (i === j ? 1 : 0)));

/** A beam of one member with closed forms to meet: L in m, EI in N·m², GA in N. */
import { expect } from "vitest";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import type { FrameModel, Hold, LoadCase, Member, MemberLoad, Six } from "../../src/mechanics/model.ts";
import type { Solution } from "../../src/mechanics/statics/solve.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { GLOBAL } from "./line-beam.ts";

/** Closed forms are met to this fraction: ten times what doubles lose on a beam of one member. */
export const RELATIVE = 1e-11;
export function near(actual: number, expected: number, allowed = RELATIVE): void {
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(
    allowed * Math.abs(expected),
  );
}

export const [L, EI, GA] = [1.3, 11_000, 9e6];
export const MEMBER: Member = {
  from: 0,
  to: 1,
  axes: GLOBAL,
  EA: 70e6,
  EIy: 16_000,
  EIz: EI,
  GJ: 950,
  GAy: Infinity,
  GAz: Infinity,
  massPerLength: 3,
};
export const FIXED: Six<Hold> = ["fixed", "fixed", "fixed", "fixed", "fixed", "fixed"];
export const FREE: Six<Hold> = ["free", "free", "free", "free", "free", "free"];
export const PINNED: Six<Hold> = ["fixed", "fixed", "fixed", "fixed", "free", "free"];

/** The beam along x, held so at its ends, solved under one load. */
export function beam(left: Six<Hold>, right: Six<Hold>, load: LoadCase, more: Partial<Member> = {}): Solution {
  const model: FrameModel = {
    nodes: [
      [0, 0, 0],
      [L, 0, 0],
    ],
    members: [{ ...MEMBER, ...more }],
    supports: [
      { node: 0, holds: left },
      { node: 1, holds: right },
    ],
  };
  return solveFrame(prepareFrame(model), [load], [[1]]);
}

export const on = (...members: MemberLoad[]): LoadCase => ({ members });
/** N/m down y, all along. */
export const uniform = (w: number): MemberLoad => ({
  kind: "line",
  member: 0,
  start: 0,
  end: L,
  force: [
    [0, -w, 0],
    [0, -w, 0],
  ],
});

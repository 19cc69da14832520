import { prepareFrame } from "../../../src/mechanics/frame.ts";
import type { FrameModel, Hold, Member, Six, Triad } from "../../../src/mechanics/model.ts";
import { valueAt } from "../../../src/mechanics/piecewise.ts";
import { memberForces, solvedState } from "../../../src/mechanics/results.ts";
import { solveFrame } from "../../../src/mechanics/statics/solve.ts";
import { GLOBAL } from "../line-beam.ts";
import type { Runner } from "../reference-run.ts";

const UP: Triad = { x: [0, 1, 0], y: [-1, 0, 0], z: [0, 0, 1] };

/** Axial strain is left out of the printed formulas: EA this many times EI/h² stands for none. */
const INEXTENSIBLE = 1e6;

export interface Portal {
  readonly h: number;
  readonly b: number;
  readonly column: number;
  readonly beam: number;
  readonly feet: "pinned" | "fixed";
  readonly braced?: boolean;
}

/** A plane portal in x-y: nodes foot, top, top, foot; members column, beam, column. Any consistent units. */
export function portalModel({ h, b, column, beam, feet, braced = false }: Portal): FrameModel {
  const member = (from: number, to: number, axes: Triad, EI: number): Member => ({
    from,
    to,
    axes,
    EA: (INEXTENSIBLE * EI) / (h * h),
    EIy: EI,
    EIz: EI,
    GJ: EI,
    GAy: Infinity,
    GAz: Infinity,
    massPerLength: 0,
  });
  const foot: Six<Hold> = ["fixed", "fixed", "fixed", "fixed", "fixed", feet === "fixed" ? "fixed" : "free"];
  const plane: Six<Hold> = ["free", "free", "fixed", "fixed", "fixed", "free"];
  const held: Six<Hold> = ["fixed", "free", "fixed", "fixed", "fixed", "free"];
  return {
    nodes: [
      [0, 0, 0],
      [0, h, 0],
      [b, h, 0],
      [b, 0, 0],
    ],
    members: [member(0, 1, UP, column), member(1, 2, GLOBAL, beam), member(3, 2, UP, column)],
    supports: [
      { node: 0, holds: foot },
      { node: 1, holds: braced ? held : plane },
      { node: 2, holds: plane },
      { node: 3, holds: foot },
    ],
  };
}

const sway = (get: (name: string) => number, feet: Portal["feet"]) => {
  const [column, beam] = [get("E") * get("Ic"), get("E") * get("Ib")];
  const frame = prepareFrame(portalModel({ h: get("h"), b: get("b"), column, beam, feet }));
  const half = get("H") / 2;
  const nodes = [1, 2].map((node) => ({ node, force: [half, 0, 0] as const }));
  const solution = solveFrame(frame, [{ nodes }], [[1]]);
  const { displacements, reactions } = solvedState(solution, 0);
  const moment = memberForces(solution, 0, 0).Mz;
  return {
    sway: displacements[6] as number,
    M_base: Math.abs(valueAt(moment, 0)),
    M_top: Math.abs(valueAt(moment, get("h"))),
    R_v: Math.abs(reactions[1] as number),
  };
};

export const portalRunners: Readonly<Record<string, Runner>> = {
  "beams.portal.fixed-sway": (_, get) => sway(get, "fixed"),
  "beams.portal.pinned-sway": (_, get) => sway(get, "pinned"),
};

import { prepareFrame } from "../../../src/mechanics/frame.ts";
import type { FrameModel, MemberLoad } from "../../../src/mechanics/model.ts";
import { solvedState } from "../../../src/mechanics/results.ts";
import { solveFrame } from "../../../src/mechanics/statics/solve.ts";
import { loadReference } from "../../references/load-reference.ts";
import { GLOBAL } from "../line-beam.ts";
import type { Runner } from "../reference-run.ts";
import { runFamily } from "../reference-run.ts";

const FIXED = ["fixed", "fixed", "fixed", "fixed", "fixed", "fixed"] as const;

/** A bar along x that only its torsional stiffness matters for. */
function bar(GJ: number, L: number, farHeld: boolean): FrameModel {
  const member = {
    from: 0,
    to: 1,
    axes: GLOBAL,
    EA: GJ,
    EIy: GJ,
    EIz: GJ,
    GJ,
    GAy: Infinity,
    GAz: Infinity,
    massPerLength: 0,
  };
  const ends = farHeld ? [0, 1] : [0];
  return {
    nodes: [
      [0, 0, 0],
      [L, 0, 0],
    ],
    members: [member],
    supports: ends.map((node) => ({ node, holds: FIXED })),
  };
}

const twist: Runner = (_, get) => {
  const model = bar(get("G") * get("J"), get("L"), false);
  const s = solveFrame(prepareFrame(model), [{ nodes: [{ node: 1, moment: [get("T"), 0, 0] }] }], [[1]]);
  return solvedState(s, 0).displacements[9] as number;
};

const runners: Record<string, Runner> = {
  "torsion-and-sections.use.twist": twist,
  "torsion-and-sections.use.twist-box": twist,
  "torsion-and-sections.use.two-torques": (_, get) => {
    const torque = (T: string, a: string): MemberLoad => ({
      kind: "point",
      member: 0,
      along: get(a),
      moment: [get(T), 0, 0],
    });
    const load = { members: [torque("T1", "a1"), torque("T2", "a2")] };
    const { reactions } = solvedState(solveFrame(prepareFrame(bar(1000, get("L"), true)), [load], [[1]]), 0);
    return { left: -(reactions[3] as number), right: -(reactions[9] as number) };
  },
};

const SECTION_CHECK = /^torsion-and-sections\.(J|beta|sec)\.|^torsion-and-sections\.use\.von-mises$/;
const elsewhere = Object.fromEntries(
  loadReference("torsion-and-sections")
    .checks.filter(({ id }) => SECTION_CHECK.test(id))
    .map(({ id }) => [id, "a property or a stress of the cross-section, which the mechanics is given"]),
);
runFamily("torsion-and-sections", runners, elsewhere);

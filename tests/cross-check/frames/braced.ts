import type { FrameModel, Spring, Vec3 } from "../../../src/mechanics/model.ts";
import { axesAlong } from "../../mechanics/random-frame.ts";
import { bar, type CheckedFrame, CLAMPED, SQUARE, weighing } from "./checked-frame.ts";

const nodes: Vec3[] = [
  [0, 0, 0],
  [0, 0, 0.5],
  [0, 0, 1],
  [0.6, 0, 1],
  [1.2, 0, 1],
  [1.2, 0, 0],
  // Ends of a brace that lies beside the plane of the frame.
  [0.02, -0.04, 0.5],
  [0.6, -0.04, 0.98],
];
const brace = bar(nodes, 6, 7);
const [along, , across] = [brace.axes.x, brace.axes.y, brace.axes.z];

/** A joint of the brace, its axes along the brace: stiff along it, soft in turning. */
function joint(from: number, to: number): Spring {
  const [x, y, z] = nodes[from] ?? [0, 0, 0];
  const stiffness = [3e6, 8e6, 2e6, 900, 400, 1500] as const;
  return { from, to, at: [x, y + 0.02, z], axes: axesAlong([0, 0, 0], along, 0), stiffness };
}

export const bracedPortal: FrameModel = {
  nodes,
  members: [bar(nodes, 0, 1), bar(nodes, 1, 2), bar(nodes, 2, 3), bar(nodes, 3, 4), bar(nodes, 5, 4, SQUARE), brace],
  springs: [joint(6, 1), joint(7, 3)],
  supports: [
    { node: 0, holds: CLAMPED },
    // A foot that yields: springs to the ground.
    { node: 5, holds: [2e6, 2e6, 5e6, 3e3, 2e3, 1e3] },
  ],
};

export const braced: readonly CheckedFrame[] = [
  {
    id: "braced.beside",
    title: "a portal with a skew brace beside its plane, springs along the brace, a yielding foot",
    model: bracedPortal,
    load: {
      nodes: [
        { node: 2, force: [400, 30, 0] },
        { node: 3, moment: [0, 0, across[2] * 20] },
      ],
      members: weighing(bracedPortal, [2, 3], 300),
    },
    analysis: { kind: "statics" },
  },
];

import type { FrameModel, Vec3 } from "../../../src/mechanics/model.ts";
import { bar, type CheckedFrame, IN_PLANE, PINNED_IN_PLANE, TALL, weighing } from "./checked-frame.ts";

const [SPAN, HEIGHT] = [1.4, 0.9];
const nodes: readonly Vec3[] = [
  [0, 0, 0],
  [0, 0, HEIGHT],
  [SPAN / 2, 0, HEIGHT],
  [SPAN, 0, HEIGHT],
  [SPAN, 0, 0],
];
/** Two square posts, a tall rail in two halves, pinned feet, held in its plane. */
export const portal: FrameModel = {
  nodes,
  members: [bar(nodes, 0, 1), bar(nodes, 1, 2, TALL), bar(nodes, 2, 3, TALL), bar(nodes, 4, 3)],
  supports: [
    { node: 0, holds: PINNED_IN_PLANE },
    { node: 4, holds: PINNED_IN_PLANE },
    ...[1, 2, 3].map((node) => ({ node, holds: IN_PLANE })),
  ],
};

export const portals: readonly CheckedFrame[] = [
  {
    id: "portal.pinned",
    title: "a pinned portal pushed sideways under a loaded rail",
    model: portal,
    load: {
      nodes: [
        { node: 1, force: [150, 0, 0] },
        { node: 2, force: [0, 0, -400], moment: [0, 35, 0] },
      ],
      members: weighing(portal, [1, 2], 500),
    },
    analysis: { kind: "statics" },
  },
  {
    id: "portal.frequency",
    title: "natural frequencies of the pinned portal with a rail that carries 25 kg/m",
    model: {
      ...portal,
      members: portal.members.map((own, m) => (m === 1 || m === 2 ? { ...own, massPerLength: 25 } : own)),
    },
    load: {},
    analysis: { kind: "frequency", count: 3 },
  },
];

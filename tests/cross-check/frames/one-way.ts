import type { Contact, FrameModel, Vec3 } from "../../../src/mechanics/model.ts";
import { GROUND } from "../../../src/mechanics/model.ts";
import { bar, type CheckedFrame, GLOBAL, IN_PLANE, JOINT, STIFF, weighing } from "./checked-frame.ts";

/** How stiff a seat is, N/m: ten times the beams it carries, and soft enough that seven printed digits give its push. */
const SEAT = 1e6;
const UP: Vec3 = [0, 0, 1];
const floor = (from: number, gap: number): Contact => ({ from, to: GROUND, normal: UP, gap, stiffness: SEAT });

const stations: readonly Vec3[] = [0, 0.4, 0.8, 1.2, 1.6, 2].map((x): Vec3 => [x, 0, 0]);
/** Supports at 0, 0.8, 1.6 m; the middle one lies `low` lower; an end that hangs over. */
function beam(low: number): FrameModel {
  return {
    nodes: stations,
    members: stations.slice(1).map((_, i) => bar(stations, i, i + 1)),
    supports: stations.map((_, node) => ({
      node,
      holds: node === 0 ? ([STIFF, "fixed", "free", "fixed", "free", "fixed"] as const) : IN_PLANE,
    })),
    contacts: [floor(0, 0), floor(2, low), floor(4, 0)],
  };
}

const corners: readonly Vec3[] = [
  [0, 0, 0],
  [0.9, 0, 0],
  [0.9, 0.6, 0],
  [0, 0.6, 0],
];
const LOW_FOOT = 1.5e-3;
/** A deck of four rails on springs at the tops of four posts, standing on feet that push only, one of them short. */
function cart(): FrameModel {
  const top = corners.map(([x, y]): Vec3 => [x, y, 0.5]);
  const ends = corners.flatMap((_, i): Vec3[] => {
    const [p, q] = [top[i] ?? UP, top[(i + 1) % 4] ?? UP];
    const size = Math.hypot(q[0] - p[0], q[1] - p[1]);
    const [dx, dy] = [(0.02 * (q[0] - p[0])) / size, (0.02 * (q[1] - p[1])) / size];
    return [
      [p[0] + dx, p[1] + dy, 0.5],
      [q[0] - dx, q[1] - dy, 0.5],
    ];
  });
  const nodes = [...corners, ...top, ...ends];
  const rails = [0, 1, 2, 3].map((i) => bar(nodes, 8 + 2 * i, 9 + 2 * i));
  return {
    nodes,
    members: [...[0, 1, 2, 3].map((i) => bar(nodes, i, i + 4)), ...rails],
    springs: [0, 1, 2, 3].flatMap((i) => [
      { from: 8 + 2 * i, to: 4 + i, axes: GLOBAL, stiffness: JOINT },
      { from: 9 + 2 * i, to: 4 + ((i + 1) % 4), axes: GLOBAL, stiffness: JOINT },
    ]),
    supports: [
      { node: 0, holds: [STIFF, STIFF, "free", "free", "free", "free"] },
      { node: 1, holds: ["free", STIFF, "free", "free", "free", "free"] },
    ],
    contacts: [floor(0, 0), floor(1, 0), floor(2, LOW_FOOT), floor(3, 0)],
  };
}

const [low, reached, level] = [beam(8e-3), beam(2e-3), beam(0)];
const standing = cart();

export const oneWay: readonly CheckedFrame[] = [
  {
    id: "seats.open",
    title: "a beam over three seats whose middle one lies too low to be reached",
    model: low,
    load: { members: weighing(low, [0, 1, 2, 3], 400) },
    analysis: { kind: "statics" },
  },
  {
    id: "seats.reached",
    title: "the same beam over a middle seat 2 mm low, which is reached",
    model: reached,
    load: { members: weighing(reached, [0, 1, 2, 3], 400) },
    analysis: { kind: "statics" },
  },
  {
    id: "seats.lifting",
    title: "a beam over three level seats that a load on its overhang lifts off the middle one",
    model: level,
    load: { nodes: [{ node: 5, force: [0, 0, -300] }], members: weighing(level, [0, 1, 2, 3], 100) },
    analysis: { kind: "statics" },
  },
  {
    id: "cart.uneven",
    title: "a cart on four feet that push only, one short by 1.5 mm, under a load out of the middle",
    model: standing,
    load: {
      nodes: [
        { node: 8, force: [0, 0, -300] },
        { node: 14, force: [0, 0, -350] },
        { node: 5, force: [0, 0, -400] },
      ],
      members: weighing(standing, [4, 5, 6, 7], 200),
    },
    analysis: { kind: "statics" },
  },
  {
    id: "cart.corner",
    title: "the same cart with a heavy load over the short foot, which then bears",
    model: standing,
    load: { nodes: [{ node: 6, force: [0, 0, -900] }], members: weighing(standing, [4, 5, 6, 7], 400) },
    analysis: { kind: "statics" },
  },
];

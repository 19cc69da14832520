import type { FrameModel, Member, Six, Spring, Vec3 } from "../../../src/mechanics/model.ts";
import { bar, type CheckedFrame, GLOBAL, JOINT, PINNED, SQUARE, TALL, weighing } from "./checked-frame.ts";

const [LENGTH, DEPTH, HEIGHT, SHELF] = [1.5, 0.75, 0.86, 0.2];
/** From the axis of a post to its face. */
const HALF = 0.02;
const corners: readonly (readonly [number, number])[] = [
  [0, 0],
  [LENGTH, 0],
  [LENGTH, DEPTH],
  [0, DEPTH],
];

interface Bench {
  readonly model: FrameModel;
  /** Members of the top, one a side. */
  readonly top: readonly number[];
  /** Node at the top of the first post. */
  readonly corner: number;
}

/**
 * Four posts on pinned feet, four rails at two heights that end at the faces of the posts: rigidly (arms to the axis of
 * the post), or with a spring of this stiffness in a face node of their own.
 */
export function bench(rail: Omit<Member, "from" | "to" | "axes">, joint?: Six<number>): Bench {
  const nodes: Vec3[] = [0, SHELF, HEIGHT].flatMap((z) => corners.map(([x, y]): Vec3 => [x, y, z]));
  const members: Member[] = [];
  const springs: Spring[] = [];
  const top: number[] = [];
  for (let i = 0; i < 4; i++) members.push(bar(nodes, i, i + 4), bar(nodes, i + 4, i + 8));
  for (const level of [4, 8]) {
    for (let i = 0; i < 4; i++) {
      const [a, b] = [level + i, level + ((i + 1) % 4)];
      const [p, q] = [nodes[a] ?? [0, 0, 0], nodes[b] ?? [0, 0, 0]];
      const size = Math.hypot(q[0] - p[0], q[1] - p[1]);
      const arm: Vec3 = [(HALF * (q[0] - p[0])) / size, (HALF * (q[1] - p[1])) / size, 0];
      const back: Vec3 = [-arm[0], -arm[1], 0];
      if (level === 8) top.push(members.length);
      if (joint === undefined) {
        members.push(bar(nodes, a, b, rail, { fromOffset: arm, toOffset: back }));
        continue;
      }
      const from = nodes.push([p[0] + arm[0], p[1] + arm[1], p[2]]) - 1;
      const to = nodes.push([q[0] + back[0], q[1] + back[1], q[2]]) - 1;
      members.push(bar(nodes, from, to, rail));
      // The bracket sits below the axis of the rail.
      for (const [end, post] of [[from, a] as const, [to, b] as const]) {
        const [x, y, z] = nodes[end] ?? [0, 0, 0];
        springs.push({ from: end, to: post, at: [x, y, z - HALF], axes: GLOBAL, stiffness: joint });
      }
    }
  }
  const supports = [0, 1, 2, 3].map((node) => ({ node, holds: PINNED }));
  return { model: { nodes, members, springs, supports }, top, corner: 8 };
}

function checked(id: string, title: string, { model, top, corner }: Bench): CheckedFrame {
  const push = { node: corner, force: [180, 120, 0] as const };
  return {
    id,
    title,
    model,
    load: { nodes: [push], members: weighing(model, top, 600) },
    analysis: { kind: "statics" },
  };
}

export const benches: readonly CheckedFrame[] = [
  checked("bench.rigid", "a bench whose rails end rigidly at the faces of its posts (rigid arms)", bench(SQUARE)),
  checked("bench.springs", "the same bench with six springs in every rail end, below the axis", bench(SQUARE, JOINT)),
  checked("bench.tall-rails", "the rigid bench with rails of 40 by 80 mm", bench(TALL)),
];

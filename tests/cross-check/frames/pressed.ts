import type { FrameModel, NodeLoad, Vec3 } from "../../../src/mechanics/model.ts";
import { bench } from "./benches.ts";
import { bracedPortal } from "./braced.ts";
import { bar, type CheckedFrame, JOINT, SQUARE, TALL, weighing } from "./checked-frame.ts";
import { portal } from "./portals.ts";

/** CalculiX looks for factors above 1, so the loads are well below the first. */
const down = (node: number, force: number): NodeLoad => ({ node, force: [0, 0, -force] });

const ends: readonly Vec3[] = [
  [0, 0, 0],
  [0, 0, 2],
];
const post: FrameModel = {
  nodes: ends,
  members: [bar(ends, 0, 1, TALL)],
  supports: [{ node: 0, holds: ["fixed", "fixed", "fixed", "fixed", "fixed", "fixed"] }],
};
const rigid = bench(SQUARE);
const sprung = bench(SQUARE, JOINT);
/** The tops of the posts of a bench, unequally pressed. */
const onPosts = (corner: number): NodeLoad[] => [900, 1500, 2000, 1200].map((force, i) => down(corner + i, force));

export const pressed: readonly CheckedFrame[] = [
  {
    id: "buckling.post",
    title: "a post clamped at its foot, pressed at its top and by its own weight",
    model: post,
    load: { nodes: [down(1, 1000)], members: weighing(post, [0], 400) },
    analysis: { kind: "buckling", count: 3 },
  },
  {
    id: "buckling.portal",
    title: "the pinned portal, its posts pressed unequally, free to sway",
    model: portal,
    load: { nodes: [down(1, 800), down(3, 2000)] },
    analysis: { kind: "buckling", count: 2 },
  },
  {
    id: "buckling.bench",
    title: "the rigid bench, its posts pressed unequally",
    model: rigid.model,
    load: { nodes: onPosts(rigid.corner) },
    analysis: { kind: "buckling", count: 3 },
  },
  {
    id: "buckling.bench-springs",
    title: "the bench on springs, its posts pressed unequally",
    model: sprung.model,
    load: { nodes: onPosts(sprung.corner) },
    analysis: { kind: "buckling", count: 3 },
  },
  {
    id: "buckling.braced",
    title: "the portal with a skew brace, its posts pressed",
    model: bracedPortal,
    load: { nodes: [down(2, 1000), down(4, 3000)] },
    analysis: { kind: "buckling", count: 2 },
  },
  {
    id: "buckling.bench-laden",
    title: "the bench on springs, its rails laden besides",
    model: sprung.model,
    load: { nodes: onPosts(sprung.corner), members: weighing(sprung.model, sprung.top, 600) },
    analysis: { kind: "buckling", count: 3 },
    bends: true,
  },
  {
    id: "buckling.braced-pushed",
    title: "the portal with a skew brace, pushed until its posts bend as hard as they can",
    model: bracedPortal,
    load: { nodes: [{ node: 2, force: [-4000, 0, 0] }] },
    analysis: { kind: "buckling", count: 2 },
    bends: true,
  },
];

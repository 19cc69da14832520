import { describe, expect, test } from "vitest";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import type { FrameModel, Hold, Member, Six, Vec3 } from "../../src/mechanics/model.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { axesAlong, randomFrame, SECTION } from "./random-frame.ts";

const FIXED: Six<Hold> = ["fixed", "fixed", "fixed", "fixed", "fixed", "fixed"];
const AXES = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] } as const;
const HINGE_ALL: Six<boolean> = [false, false, false, true, true, true];

function bar(nodes: readonly Vec3[], from: number, to: number, more: Partial<Member> = {}): Member {
  return { from, to, axes: axesAlong(nodes[from] ?? [0, 0, 0], nodes[to] ?? [0, 0, 0], 0), ...SECTION, ...more };
}

function expectVector(actual: Vec3, expected: Vec3): void {
  actual.forEach((c, i) => {
    expect(c).toBeCloseTo(expected[i] ?? Number.NaN, 8);
  });
}

test("a sound frame has none, however soft", () => {
  expect(prepareFrame(randomFrame(3, 6)).mechanisms).toEqual([]);
});

test("a slender chain of 400 bars is soft, not a mechanism", () => {
  const nodes: Vec3[] = Array.from({ length: 401 }, (_, i) => [0, 0, 0.3 * i]);
  const members = nodes.slice(1).map((_, i) => bar(nodes, i, i + 1));
  expect(prepareFrame({ nodes, members, supports: [{ node: 0, holds: FIXED }] }).mechanisms).toEqual([]);
});

test("a rail between two turning points rolls about the line through them", () => {
  // The rail's own axis is at z = 0.5; the fasteners sit 20 mm above it.
  const nodes: Vec3[] = [
    [0, 0, 0.5],
    [1, 0, 0.5],
  ];
  const turning: Six<number> = [1e7, 1e7, 1e7, 0, 1e4, 1e4];
  const model: FrameModel = {
    nodes,
    members: [bar(nodes, 0, 1)],
    springs: [0, 1].map((from) => ({
      from,
      to: "ground",
      axes: { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] },
      stiffness: turning,
      at: [from, 0, 0.52],
    })),
  };
  const { mechanisms } = prepareFrame(model);
  expect(mechanisms).toHaveLength(1);
  const [body] = mechanisms[0]?.bodies ?? [];
  expect(mechanisms[0]?.bodies).toHaveLength(1);
  expect(body?.members).toEqual([0]);
  expect(body?.nodes).toEqual([0, 1]);
  if (body?.motion.kind !== "turns") throw new Error("the rail should turn");
  expectVector(body.motion.axis, [1, 0, 0]);
  expect(body.motion.through[1]).toBeCloseTo(0, 8);
  expect(body.motion.through[2]).toBeCloseTo(0.52, 8);
  expect(body.motion.pitch).toBe(0);
});

test("a hinged portal sways: posts turn about their feet, the beam slides", () => {
  const nodes: Vec3[] = [
    [0, 0, 0],
    [0, 0, 0.9],
    [1.2, 0, 0.9],
    [1.2, 0, 0],
  ];
  const hinge: Six<boolean> = [false, false, false, false, true, false];
  const y = { axes: { x: [0, 0, 1], y: [0, 1, 0], z: [-1, 0, 0] } } as const;
  const beam = { axes: { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] } } as const;
  const members = [
    bar(nodes, 0, 1, { ...y, toReleases: hinge }),
    bar(nodes, 1, 2, beam),
    bar(nodes, 3, 2, { ...y, toReleases: hinge }),
  ];
  const foot: Six<Hold> = ["fixed", "fixed", "fixed", "fixed", "free", "fixed"];
  const top: Six<Hold> = ["free", "fixed", "free", "fixed", "free", "fixed"];
  const supports = [
    { node: 0, holds: foot },
    { node: 3, holds: foot },
    { node: 1, holds: top },
    { node: 2, holds: top },
  ];
  const { mechanisms } = prepareFrame({ nodes, members, supports });
  expect(mechanisms).toHaveLength(1);
  const bodies = mechanisms[0]?.bodies ?? [];
  const of = (member: number) => bodies.find(({ members: own }) => own.includes(member))?.motion;
  const [left, middle, right] = [of(0), of(1), of(2)];
  if (left?.kind !== "turns" || middle?.kind !== "slides" || right?.kind !== "turns") throw new Error("wrong motions");
  expectVector(left.axis, [0, 1, 0]);
  expectVector(left.through, [0, 0, 0]);
  expectVector(right.through, [1.2, 0, 0]);
  expectVector(middle.along, [1, 0, 0]);
});

test("a frame that nothing holds has its six rigid motions", () => {
  const { supports: _, ...floating } = randomFrame(2);
  const frame = prepareFrame(floating);
  expect(frame.mechanisms).toHaveLength(6);
  for (const { bodies } of frame.mechanisms) expect(bodies[0]?.members).toHaveLength(floating.members.length);
  const solution = solveFrame(frame, [{ nodes: [{ node: 5, force: [1, 0, 0] }] }], [[1]]);
  expect(solution.states[0]?.kind).toBe("mechanism");
});

test("independent mechanisms are listed apart", () => {
  // Two arms hinged to one post on different axes, and a third arm that holds.
  const nodes: Vec3[] = [
    [0, 0, 0],
    [0, 0, 1],
    [1, 0, 1],
    [0, 1, 1],
    [-1, 0, 1],
  ];
  const members = [
    bar(nodes, 0, 1),
    bar(nodes, 1, 2, { fromReleases: [false, false, false, true, false, false] }),
    bar(nodes, 1, 3, { fromReleases: [false, false, false, true, false, false] }),
    bar(nodes, 1, 4),
  ];
  const { mechanisms } = prepareFrame({ nodes, members, supports: [{ node: 0, holds: FIXED }] });
  expect(mechanisms).toHaveLength(2);
  const moved = mechanisms.map(({ bodies }) => bodies.map(({ members: own, motion }) => ({ own, motion })));
  for (const bodies of moved) expect(bodies).toHaveLength(1);
  const find = (member: number) => moved.flat().find(({ own }) => own.includes(member))?.motion;
  const [along, across] = [find(1), find(2)];
  if (along?.kind !== "turns" || across?.kind !== "turns") throw new Error("both arms should roll");
  expectVector(along.axis, [1, 0, 0]);
  expectVector(across.axis, [0, 1, 0]);
});

describe("a member that releases too much at both ends", () => {
  const nodes: Vec3[] = [
    [0, 0, 0],
    [1, 0, 0],
  ];
  const supports = [0, 1].map((node) => ({ node, holds: FIXED }));
  const loose = (releases: Six<boolean>) =>
    prepareFrame({ nodes, members: [bar(nodes, 0, 1, { fromReleases: releases, toReleases: releases })], supports });

  test("spins about its own axis", () => {
    const { mechanisms } = loose(HINGE_ALL);
    expect(mechanisms).toHaveLength(1);
    const motion = mechanisms[0]?.bodies[0]?.motion;
    if (motion?.kind !== "turns") throw new Error("it should spin");
    expectVector(motion.axis, [1, 0, 0]);
    expect(mechanisms[0]?.bodies[0]?.members).toEqual([0]);
  });

  test("slides along itself", () => {
    const motion = loose([true, false, false, false, false, false]).mechanisms[0]?.bodies[0]?.motion;
    if (motion?.kind !== "slides") throw new Error("it should slide");
    expectVector(motion.along, [1, 0, 0]);
  });
});

test("a load on a node that only hinges reach is refused by name", () => {
  const nodes: Vec3[] = [
    [0, 0, 0],
    [1, 0, 0],
    [0.5, 0, 0.8],
    [0.5, 1, 0],
  ];
  const truss = { fromReleases: HINGE_ALL, toReleases: [false, false, false, false, true, true] } as const;
  const members = [0, 1, 3].map((from) => bar(nodes, from, 2, { ...truss }));
  const supports = [0, 1, 3].map((node) => ({ node, holds: FIXED }));
  const hinged = members.map((m) => ({
    ...m,
    fromReleases: [false, false, false, false, true, true] as const,
    toReleases: HINGE_ALL,
  }));
  const frame = prepareFrame({ nodes, members: hinged, supports });
  expect(frame.mechanisms).toEqual([]);
  expect(() => solveFrame(frame, [{ nodes: [{ node: 2, moment: [1, 0, 0] }] }], [[1]])).toThrow(/node 2/);
});

test("a chain of hinges has a mechanism for every link; the first hundred are listed", () => {
  const nodes: Vec3[] = Array.from({ length: 402 }, (_, i) => [0.3 * i, 0, 0]);
  const hinge: Six<boolean> = [false, false, false, false, true, false];
  const members = nodes.slice(1).map((_, i) => bar(nodes, i, i + 1, { axes: AXES, fromReleases: hinge }));
  const plane: Six<Hold> = ["free", "fixed", "free", "fixed", "free", "fixed"];
  const supports = nodes.map((_, node) => ({ node, holds: node === 0 ? FIXED : plane }));
  expect(prepareFrame({ nodes, members, supports }).mechanisms).toHaveLength(100);
});

test("a long chain on one hinge is one mechanism that moves all of it", () => {
  const nodes: Vec3[] = Array.from({ length: 200 }, (_, i) => [0.3 * i, 0, 0]);
  const members = nodes.slice(1).map((_, i) => bar(nodes, i, i + 1, { axes: AXES }));
  const supports = [{ node: 0, holds: ["fixed", "fixed", "fixed", "fixed", "free", "fixed"] as const }];
  const { mechanisms } = prepareFrame({ nodes, members, supports });
  expect(mechanisms).toHaveLength(1);
  expect(mechanisms[0]?.bodies).toHaveLength(1);
  expect(mechanisms[0]?.bodies[0]?.members).toHaveLength(199);
  const motion = mechanisms[0]?.bodies[0]?.motion;
  if (motion?.kind !== "turns") throw new Error("it should turn");
  expectVector(motion.axis, [0, 1, 0]);
  expectVector(motion.through, [0, 0, 0]);
});

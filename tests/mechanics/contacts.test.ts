import { describe, expect, test } from "vitest";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import type { Contact, FrameModel, LoadCase, Vec3 } from "../../src/mechanics/model.ts";
import { GROUND } from "../../src/mechanics/model.ts";
import { solvedState } from "../../src/mechanics/results.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { GLOBAL, lineBeamModel, planeHolds } from "./line-beam.ts";
import { axesAlong, SECTION } from "./random-frame.ts";

const [EI, L, w] = [7000, 1.2, 500];

/** Two spans, the right support only pushes. */
function liftingBeam(): FrameModel {
  const model = lineBeamModel({
    EI,
    nodes: [
      [0, "pinned"],
      [L, "pinned"],
      [2 * L, "pinned"],
    ],
  });
  const supports = model.supports.map((s, i) => (i === 2 ? { ...s, holds: planeHolds("free", false) } : s));
  return { ...model, supports, contacts: [{ from: 2, to: GROUND, normal: [0, 1, 0], gap: 0 }] };
}

const spanLoad = (member: number): LoadCase => ({
  members: [
    {
      kind: "line",
      member,
      start: 0,
      end: L,
      force: [
        [0, -w, 0],
        [0, -w, 0],
      ],
    },
  ],
});

describe("a support that only pushes", () => {
  const solution = solveFrame(
    prepareFrame(liftingBeam()),
    [spanLoad(0), spanLoad(1)],
    [
      [1, 0],
      [1, 1],
      [0, 1],
    ],
  );

  test("lifts where beams.two-span.udl-one has its negative reaction, and the rest is a simple span", () => {
    const state = solvedState(solution, 0);
    expect(state.contacts[0]?.status).toBe("open");
    expect(state.contacts[0]?.push).toBe(0);
    expect(state.reactions[1]).toBeCloseTo((w * L) / 2, 8);
    expect(state.contacts[0]?.opening).toBeCloseTo(((w * L ** 3) / (24 * EI)) * L, 12); // end slope × overhang
  });

  test("pushes with 3wL/8 where both spans are loaded: each combination finds its own contacts", () => {
    const state = solvedState(solution, 1);
    expect(state.contacts[0]?.status).toBe("closed");
    expect(state.contacts[0]?.push).toBeCloseTo((3 * w * L) / 8, 8);
    expect(state.contacts[0]?.opening).toBeCloseTo(0, 14);
    expect(solvedState(solution, 2).contacts[0]?.push).toBeCloseTo((7 * w * L) / 16, 8);
  });
});

describe("a gap", () => {
  const gap = 0.002;
  const P = 80;
  const free = (P * L ** 3) / (3 * EI);
  const model = (contact: Partial<Contact>): FrameModel => ({
    ...lineBeamModel({
      EI,
      nodes: [
        [0, "fixed"],
        [L, "free"],
      ],
    }),
    contacts: [{ from: 1, to: GROUND, normal: [0, 1, 0], gap, ...contact }],
  });
  const pushed = (m: FrameModel, force: number) =>
    solvedState(solveFrame(prepareFrame(m), [{ nodes: [{ node: 1, force: [0, -force, 0] }] }], [[1]]), 0);

  test("that the load does not close leaves the cantilever alone", () => {
    const state = pushed(model({}), P / 10);
    expect(state.contacts[0]?.status).toBe("open");
    expect(state.displacements[7]).toBeCloseTo(-free / 10, 12);
  });

  test("of seventy cantilevers side by side: each closes or not by itself, P − 3 EI gap / L³ where it does", () => {
    const one = model({});
    const rows = Array.from({ length: 70 }, (_, i) => i);
    const count = one.nodes.length;
    const many: FrameModel = {
      nodes: rows.flatMap((i) => one.nodes.map(([x, y, z]) => [x, y, z + i] as const)),
      members: rows.flatMap((i) =>
        one.members.map((own) => ({ ...own, from: own.from + count * i, to: own.to + count * i })),
      ),
      supports: rows.flatMap((i) => (one.supports ?? []).map((own) => ({ ...own, node: own.node + count * i }))),
      contacts: rows.flatMap((i) => (one.contacts ?? []).map((own) => ({ ...own, from: own.from + count * i }))),
    };
    const loads = { nodes: rows.map((i) => ({ node: 1 + count * i, force: [0, (-P * i) / 35, 0] as const })) };
    const { contacts, displacements } = solvedState(solveFrame(prepareFrame(many), [loads], [[1]]), 0);
    for (const i of rows) {
      const push = (P * i) / 35 - (3 * EI * gap) / L ** 3;
      expect(contacts[i]?.status).toBe(push > 0 ? "closed" : "open");
      expect(contacts[i]?.push).toBeCloseTo(Math.max(0, push), 8);
      expect(displacements[6 * (1 + count * i) + 1]).toBeCloseTo(push > 0 ? -gap : (-free * i) / 35, 12);
    }
  });

  test("that closes takes P − 3 EI gap / L³", () => {
    expect(free).toBeGreaterThan(gap);
    const state = pushed(model({}), P);
    expect(state.contacts[0]?.push).toBeCloseTo(P - (3 * EI * gap) / L ** 3, 8);
    expect(state.displacements[7]).toBeCloseTo(-gap, 14);
  });

  test("with a yielding stop: beam and stop share what is left", () => {
    const k = 50_000;
    const beam = (3 * EI) / L ** 3;
    const push = (k * (P - beam * gap)) / (k + beam);
    const state = pushed(model({ stiffness: k }), P);
    expect(state.contacts[0]?.push).toBeCloseTo(push, 8);
    expect(state.contacts[0]?.opening).toBeCloseTo(-push / k, 12);
  });

  test("that is negative preloads the contact", () => {
    const state = pushed(model({ gap: -gap }), 0);
    expect(state.contacts[0]?.push).toBeCloseTo((3 * EI * gap) / L ** 3, 8);
  });
});

/** A table of four legs that stand on the floor by contact alone. */
function table(friction: number): FrameModel {
  const [a, b, h] = [1.2, 0.8, 0.9];
  const nodes: Vec3[] = [];
  for (const z of [0, h]) nodes.push([0, 0, z], [a, 0, z], [a, b, z], [0, b, z]);
  const pairs = [0, 1, 2, 3].flatMap((k) => [[k, k + 4] as const, [k + 4, 4 + ((k + 1) % 4)] as const]);
  const members = pairs.map(([from, to]) => {
    return { from, to, axes: axesAlong(nodes[from] ?? [0, 0, 0], nodes[to] ?? [0, 0, 0], 0), ...SECTION };
  });
  const contacts = [0, 1, 2, 3].map((from) => ({ from, to: GROUND, normal: [0, 0, 1], gap: 0, friction }) as const);
  return { nodes, members, contacts };
}

const weight = 400;
const onTop: LoadCase = { nodes: [4, 5, 6, 7].map((node) => ({ node, force: [0, 0, -weight / 4] as const })) };
const push = (force: number): LoadCase => ({
  nodes: [4, 7].map((node) => ({ node, force: [force / 2, 0, 0] as const })),
});

describe("a table that stands by contact and friction alone", () => {
  const frame = prepareFrame(table(0.5));

  test("carries its weight in equal shares, without sideways force", () => {
    const state = solvedState(solveFrame(frame, [onTop], [[1]]), 0);
    for (const contact of state.contacts) expect(contact.push).toBeCloseTo(weight / 4, 6);
  });

  test("keeps pushing feet in balance under a push that friction holds", () => {
    const state = solvedState(solveFrame(frame, [onTop, push(100)], [[1, 1]]), 0);
    const sideways = state.contacts.reduce((sum, { sideways: [x] }) => sum + x, 0);
    expect(sideways).toBeCloseTo(-100, 6);
    const far = state.contacts.reduce((sum, { push: p }, i) => sum + (i === 1 || i === 2 ? p : 0), 0);
    expect(far).toBeCloseTo(weight / 2 + (100 * 0.9) / 1.2, 6); // moments about the near feet
    for (const { push: p, sideways: s } of state.contacts) expect(Math.hypot(...s)).toBeLessThanOrEqual(0.5 * p + 1e-6);
  });

  test("tips about the far feet when the push exceeds weight × half base / height", () => {
    const tipping = (weight * 0.6) / 0.9;
    const firm = prepareFrame(table(5));
    const below = solveFrame(firm, [onTop, push(0.99 * tipping)], [[1, 1]]).states[0];
    expect(below?.kind).toBe("solved");
    const beyond = solveFrame(firm, [onTop, push(1.01 * tipping)], [[1, 1]]).states[0];
    if (beyond?.kind !== "mechanism") throw new Error("the table should tip");
    const motion = beyond.mechanisms[0]?.bodies[0]?.motion;
    expect(beyond.mechanisms).toHaveLength(1);
    if (motion?.kind !== "turns") throw new Error("tipping is a turn");
    expect(motion.axis[1]).toBeCloseTo(1, 9);
    expect(motion.through[0]).toBeCloseTo(1.2, 9);
    expect(motion.through[2]).toBeCloseTo(0, 9);
  });

  test("slides when the push exceeds coefficient × weight", () => {
    const state = solveFrame(prepareFrame(table(0.3)), [onTop, push(0.31 * weight)], [[1, 1]]).states[0];
    if (state?.kind !== "mechanism") throw new Error("the table should slide");
    const held = solveFrame(prepareFrame(table(0.3)), [onTop, push(0.29 * weight)], [[1, 1]]).states[0];
    expect(held?.kind).toBe("solved");
  });

  test("without friction it may slide and turn on the floor from the start", () => {
    const { mechanisms } = prepareFrame(table(0));
    expect(mechanisms).toHaveLength(3);
  });
});

test("contact between two bars: the lower one carries the upper one at the touching point only", () => {
  // Two cantilevers, tip over tip; the load on the upper one is shared by equal stiffness.
  const upper = lineBeamModel({
    EI,
    nodes: [
      [0, "fixed"],
      [L, "free"],
    ],
  });
  const lowerNodes = upper.nodes.map(([x]) => [x, -0.04, 0] as const);
  const model: FrameModel = {
    nodes: [...upper.nodes, ...lowerNodes],
    members: [...upper.members, ...upper.members.map((m) => ({ ...m, from: m.from + 2, to: m.to + 2 }))],
    supports: [...upper.supports, ...upper.supports.map((s) => ({ ...s, node: s.node + 2 }))],
    contacts: [{ from: 1, to: 3, normal: GLOBAL.y, gap: 0 }],
  };
  const at = (P: number) => solveFrame(prepareFrame(model), [{ nodes: [{ node: 1, force: [0, -P, 0] }] }], [[1]]);
  expect(solvedState(at(100), 0).contacts[0]?.push).toBeCloseTo(50, 8);
  expect(solvedState(at(-100), 0).contacts[0]?.status).toBe("open");
});

test("many contacts under random loads satisfy every condition", () => {
  const spans = 24;
  const nodes = Array.from({ length: spans + 1 }, (_, i) => [0.2 * i, i === 0 ? "pinned" : "free"] as const);
  const model: FrameModel = {
    ...lineBeamModel({ EI: 900, nodes }),
    contacts: nodes
      .slice(1)
      .map((_, i) => ({ from: i + 1, to: GROUND, normal: GLOBAL.y, gap: i % 3 === 0 ? 1e-4 : 0 })),
  };
  const cases = nodes
    .slice(1)
    .map((_, i): LoadCase => ({ nodes: [{ node: i + 1, force: [0, i % 2 ? -300 : 120, 0] }] }));
  const combinations = Array.from({ length: 20 }, (_, c) => cases.map((_, i) => Math.sin(1 + 3 * c + i * i)));
  const solution = solveFrame(prepareFrame(model), cases, combinations);
  for (const state of solution.states) {
    if (state.kind === "unsettled") throw new Error("contacts without friction always settle");
    if (state.kind === "mechanism") continue; // loads may lift the whole beam off its feet
    for (const { status, push: p, opening } of state.contacts) {
      expect(p).toBeGreaterThanOrEqual(-1e-6);
      expect(opening).toBeGreaterThanOrEqual(-1e-9);
      if (status === "closed") expect(Math.abs(opening)).toBeLessThan(1e-9);
    }
  }
  expect(solution.states.filter(({ kind }) => kind === "solved").length).toBeGreaterThan(10);
});

test("a seat that touches in more points than a node has freedoms still shares its load by statics", () => {
  const held = lineBeamModel({
    EI,
    nodes: [
      [0, "fixed"],
      [L, "free"],
    ],
  });
  const corners = [-0.02, 0.02].flatMap((x) => [-0.02, 0.02].map((z) => [L + x, -0.02, z] as const));
  const model: FrameModel = {
    ...held,
    contacts: corners.map((at) => ({ from: 1, to: GROUND, normal: [0, 1, 0], gap: 0, at })),
  };
  const P = 500;
  const load: LoadCase = { nodes: [{ node: 1, force: [0, -P, 0], moment: [0, 0, -2] }] };
  const state = solvedState(solveFrame(prepareFrame(model), [load], [[1]]), 0);
  const pushes = state.contacts.map(({ push }) => push);
  expect(pushes.reduce((sum, value) => sum + value, 0)).toBeCloseTo(P, 4); // the seat holds the tip still
  expect((pushes[0] ?? 0) + (pushes[1] ?? 0)).toBeCloseTo(P / 2 - 2 / 0.04, 3);
  expect(pushes[0]).toBeCloseTo(pushes[1] ?? Number.NaN, 3);
});

test("a support that settles closes a gap and presses on it", () => {
  // The pinned right end of a propped beam is lowered; the stop below midspan holds it up: 48 EI/L³ against the stop's δ/2 − gap.
  const [drop, gap] = [0.01, 0.002];
  const model: FrameModel = {
    ...lineBeamModel({
      EI,
      nodes: [
        [0, "pinned"],
        [L / 2, "free"],
        [L, "pinned"],
      ],
    }),
    contacts: [{ from: 1, to: GROUND, normal: [0, 1, 0], gap }],
  };
  const load: LoadCase = { settlements: [{ node: 2, component: 1, value: -drop }] };
  const state = solvedState(solveFrame(prepareFrame(model), [load], [[1]]), 0);
  expect(state.contacts[0]?.push).toBeCloseTo(((48 * EI) / L ** 3) * (drop / 2 - gap), 6);
  expect(state.displacements[7]).toBeCloseTo(-gap, 12);
});

test("gaps given for a combination count as those of the model do", () => {
  const gap = 2e-3;
  const [first] = liftingBeam().contacts ?? [];
  const apart = { ...liftingBeam(), contacts: first ? [{ ...first, gap }] : [] };
  const cases = [spanLoad(0), spanLoad(1)];
  const given = solveFrame(
    prepareFrame(liftingBeam()),
    cases,
    [
      [0, 1],
      [0, 9],
      [0, 9],
    ],
    [{ gaps: [gap] }, { gaps: [gap] }],
  );
  const own = solveFrame(prepareFrame(apart), cases, [
    [0, 1],
    [0, 9],
  ]);
  for (const i of [0, 1]) {
    expect(solvedState(given, i).displacements).toEqual(solvedState(own, i).displacements);
    expect(solvedState(given, i).contacts).toEqual(solvedState(own, i).contacts);
  }
  expect(solvedState(given, 2).contacts[0]?.opening).toBeCloseTo(0, 12);
  expect(solvedState(given, 1).contacts[0]?.status).toBe("closed");
});

test("a frame prepared after its like, with other springs, answers as by itself", () => {
  const base = liftingBeam();
  const spring = (k: number): FrameModel => ({
    ...base,
    springs: [{ from: 2, to: GROUND, axes: GLOBAL, stiffness: [k, k, k, k, k, k] }],
  });
  const like = prepareFrame(spring(1e3));
  const cases = [spanLoad(0), spanLoad(1)];
  solveFrame(like, cases, [[1, 1]]);
  const after = solveFrame(prepareFrame(spring(5e4), like), cases, [[1, 1]]);
  const alone = solveFrame(prepareFrame(spring(5e4)), cases, [[1, 1]]);
  expect(solvedState(after, 0).displacements).toEqual(solvedState(alone, 0).displacements);
  expect(after.frame.parts.table).toBe(like.parts.table);
});

test("friction that holds like a spring shares with the beam until it slips, and then keeps to its bound", () => {
  // A cantilever's tip on the floor: pressed by N, pushed along by P; the beam has 3EI/L³, friction the stiffness k.
  const [N, mu, k, stretch] = [100, 0.4, 30_000, 1e9];
  const beam = (3 * EI) / L ** 3;
  const model: FrameModel = {
    ...lineBeamModel({
      EI,
      nodes: [
        [0, "fixed"],
        [L, "free"],
      ],
    }),
    springs: [{ from: 1, to: GROUND, axes: GLOBAL, stiffness: [stretch, 0, 0, 0, 0, 0] }],
    contacts: [{ from: 1, to: GROUND, normal: [1, 0, 0], gap: 0, stiffness: 1e9, friction: 1, hold: k }],
  };
  const shoved = (P: number) => {
    const load: LoadCase = { nodes: [{ node: 1, force: [-N, P, 0] }] };
    return solvedState(solveFrame(prepareFrame(model), [load], [[1]], [{ friction: mu }]), 0);
  };
  const press = shoved(0).contacts[0]?.push ?? 0;
  const light = 0.5 * mu * press * (1 + beam / k);
  const [held] = shoved(light).contacts;
  expect(held?.status).toBe("holds");
  expect(-(held?.sideways[1] ?? 0) / ((light * k) / (k + beam))).toBeCloseTo(1, 9);
  const slid = shoved(4 * light);
  expect(slid.contacts[0]?.status).toBe("slips");
  expect((slid.displacements[7] ?? 0) / ((4 * light - mu * press) / beam)).toBeCloseTo(1, 7);
});

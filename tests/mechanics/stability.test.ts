import { describe, expect, test } from "vitest";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import type { FrameModel, Hold, Member, Six } from "../../src/mechanics/model.ts";
import { GROUND } from "../../src/mechanics/model.ts";
import { bucklingModes, bucklingOf } from "../../src/mechanics/stability/buckling.ts";
import { naturalModes, naturalModesNear } from "../../src/mechanics/stability/frequency.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { jointedFrame } from "./jointed-frame.ts";
import { GLOBAL } from "./line-beam.ts";
import { portalModel } from "./references/portal-runners.ts";

const L = 1.5;
const MEMBER: Member = {
  from: 0,
  to: 1,
  axes: GLOBAL,
  EA: 70e6,
  EIy: 40_000,
  EIz: 10_000,
  GJ: 9000,
  GAy: Infinity,
  GAz: Infinity,
  massPerLength: 3,
};
const PINNED: Six<Hold> = ["fixed", "fixed", "fixed", "fixed", "free", "free"];
const SLIDING: Six<Hold> = ["free", "fixed", "fixed", "fixed", "free", "free"];
const FIXED: Six<Hold> = ["fixed", "fixed", "fixed", "fixed", "fixed", "fixed"];
const FREE: Six<Hold> = ["free", "free", "free", "free", "free", "free"];

function pressed(model: FrameModel, count = 1, node = 1): number[] {
  const s = solveFrame(prepareFrame(model), [{ nodes: [{ node, force: [-1, 0, 0] }] }], [[1]]);
  const found = bucklingModes(s, 0, count);
  if (found.kind !== "modes") throw new Error("a mechanism");
  return found.modes.map(({ lambda }) => lambda);
}

function column(more: Partial<Member>, right = SLIDING): FrameModel {
  return {
    nodes: [
      [0, 0, 0],
      [L, 0, 0],
    ],
    members: [{ ...MEMBER, ...more }],
    supports: [
      { node: 0, holds: PINNED },
      { node: 1, holds: right },
    ],
  };
}

const near = (actual: number | undefined, expected: number, allowed: number): void => {
  expect(Math.abs((actual ?? Number.NaN) / expected - 1), `${actual} against ${expected}`).toBeLessThan(allowed);
};
const euler = (EI: number, length = L): number => (Math.PI ** 2 * EI) / length ** 2;

describe("buckling", () => {
  test("the softest of two dozen columns that hardly differ: Euler's force, though their modes crowd", () => {
    const columns = Array.from({ length: 24 }, (_, i) => i);
    const EI = (i: number): number => 10_000 * (1 + 3e-5 * ((i * 7) % 24));
    const model: FrameModel = {
      nodes: columns.flatMap((i) => [[0, i, 0] as const, [L, i, 0] as const]),
      members: columns.map((i) => ({ ...MEMBER, from: 2 * i, to: 2 * i + 1, EIz: EI(i) })),
      supports: columns.flatMap((i) => [
        { node: 2 * i, holds: PINNED },
        { node: 2 * i + 1, holds: SLIDING },
      ]),
    };
    const load = { nodes: columns.map((i) => ({ node: 2 * i + 1, force: [-1, 0, 0] as const })) };
    const found = bucklingModes(solveFrame(prepareFrame(model), [load], [[1]]), 0, 1);
    near(found.kind === "modes" ? found.modes[0]?.lambda : undefined, euler(10_000), 5e-5);
  });

  test("Euler's column stands just below its force and not just above it", () => {
    for (const factor of [1, 1e-3]) {
      const load = { nodes: [{ node: 1, force: [-1 / factor, 0, 0] as const }] };
      const whole = bucklingOf(solveFrame(prepareFrame(column({})), [load], [[1], [0.5], [-1]]));
      const critical = euler(10_000) * factor;
      expect(whole.stands(0, 0.9999 * critical)).toBe(true);
      expect(whole.stands(0, 1.0001 * critical)).toBe(false);
      expect(whole.stands(1, 1.9999 * critical)).toBe(true);
      expect(whole.stands(1, 2.0002 * critical)).toBe(false);
      expect(whole.stands(2, 1e3 * critical)).toBe(true); // pulled
    }
  });

  test("Euler's forces about both axes, the first four in order", () => {
    const found = pressed(column({ GJ: 1e6 }), 4);
    [euler(10_000), euler(40_000), 4 * euler(10_000), 9 * euler(10_000)].forEach((expected, i) => {
      near(found[i], expected, 1e-4);
    });
  });

  test("with shear: P = P_E/(1 + P_E/GA) (Engesser 1891)", () => {
    const GA = 9e6;
    near(pressed(column({ GAy: GA, GAz: GA }))[0], euler(10_000) / (1 + euler(10_000) / GA), 1e-4);
  });

  test("twisting: P = GJ/r² whatever the length (Wagner 1929), r² = (EIy + EIz)/EA", () => {
    const GJ = 2;
    near(pressed(column({ GJ }))[0], (GJ * 70e6) / 50_000, 1e-4);
  });

  test("rigid ends of length e beyond the flexible part: tan(kL/2) = 1/(ke)", () => {
    const e = 0.12;
    const model: FrameModel = {
      nodes: [
        [-e, 0, 0],
        [L + e, 0, 0],
      ],
      members: [{ ...MEMBER, fromOffset: [e, 0, 0], toOffset: [-e, 0, 0] }],
      supports: [
        { node: 0, holds: PINNED },
        { node: 1, holds: SLIDING },
      ],
    };
    let [lo, hi] = [0.1 / L, Math.PI / L];
    for (let i = 0; i < 100; i++) {
      const k = (lo + hi) / 2;
      if (Math.tan((k * L) / 2) < 1 / (k * e)) lo = k;
      else hi = k;
    }
    near(pressed(model)[0], 10_000 * lo ** 2, 1e-4);
  });

  // Sideways a pressed cantilever takes P/(tan(kL)/k − L), a pulled one P/(L − tanh(kL)/k); together nothing.
  test("a cantilever held up by one that is pulled as hard: tan kL = tanh kL, 3.9266 (worked by hand)", () => {
    const model: FrameModel = {
      nodes: [0, 1].flatMap(() => [[0, 0, 0] as const, [L, 0, 0] as const]),
      members: [0, 2].map((from) => ({ ...MEMBER, from, to: from + 1 })),
      supports: [0, 2].flatMap((node) => [
        { node, holds: FIXED },
        { node: node + 1, holds: ["free", "free", "fixed", "fixed", "fixed", "free"] as const },
      ]),
      springs: [{ from: 1, to: 3, axes: GLOBAL, stiffness: [0, 1e12, 0, 0, 0, 0] }],
    };
    const force = (x: number) => [x, 0, 0] as const;
    const load = {
      nodes: [
        { node: 1, force: force(-1) },
        { node: 3, force: force(1) },
      ],
    };
    const found = bucklingModes(solveFrame(prepareFrame(model), [load], [[1]]), 0, 1);
    near(found.kind === "modes" ? found.modes[0]?.lambda : undefined, (10_000 * 3.92660231 ** 2) / L ** 2, 1e-4);
  });

  test("a force that grows along the bar: self-weight of a flagpole, 7.837 EI/L² (Greenhill 1881)", () => {
    const model = { ...column({}, FREE), supports: [{ node: 0, holds: FIXED }] };
    const q = 1 / L;
    const load = {
      kind: "line" as const,
      member: 0,
      start: 0,
      end: L,
      force: [
        [-q, 0, 0],
        [-q, 0, 0],
      ] as const,
    };
    const found = bucklingModes(solveFrame(prepareFrame(model), [{ members: [load] }], [[1]]), 0, 1);
    if (found.kind !== "modes") throw new Error("a mechanism");
    near(found.modes[0]?.lambda, (7.83735 * 10_000) / L ** 2, 1e-4);
  });

  test("tension buckles nothing", () => {
    const s = solveFrame(prepareFrame(column({})), [{ nodes: [{ node: 1, force: [5, 0, 0] }] }], [[1]]);
    expect(bucklingModes(s, 0, 2)).toEqual({ kind: "modes", modes: [] });
  });

  test("a portal on feet that stand by contact and friction sways like one on pins (columns.portal.sway-pinned.g1)", () => {
    const pinned = portalModel({ h: 1, b: 1, column: 1, beam: 1, feet: "pinned" });
    const supports = (pinned.supports ?? []).map(({ node, holds }) => {
      const standing: Six<Hold> = ["free", "free", "fixed", "fixed", "fixed", "free"];
      return { node, holds: node === 0 || node === 3 ? standing : holds };
    });
    const contacts = [0, 3].map((from) => ({ from, to: GROUND, normal: [0, 1, 0], gap: 0, friction: 0.5 }) as const);
    const load = { nodes: [1, 2].map((node) => ({ node, force: [0, -1, 0] as const })) };
    const found = bucklingModes(solveFrame(prepareFrame({ ...pinned, supports, contacts }), [load], [[1]]), 0, 1);
    if (found.kind !== "modes") throw new Error("a mechanism");
    near(found.modes[0]?.lambda, 1.82129, 1e-3);
  });
});

describe("the factor of the way a frame leans", () => {
  test("is that of the first mode of a portal that sways, and not below (columns.portal.sway-pinned.g1; Rayleigh)", () => {
    const model = portalModel({ h: 1, b: 1, column: 1, beam: 1, feet: "pinned" });
    const down = { nodes: [1, 2].map((node) => ({ node, force: [0, -1, 0] as const })) };
    const across = { nodes: [{ node: 1, force: [0.01, 0, 0] as const }] };
    const solution = solveFrame(
      prepareFrame(model),
      [down, across],
      [
        [1, 1],
        [1, -1],
      ],
    );
    const factor = bucklingOf(solution).swayFactor(0, 1);
    expect(factor).toBeGreaterThan(1.8212);
    expect(factor).toBeLessThan(1.02 * 1.8212);
  });
});

describe("many combinations asked at once", () => {
  test("those that do not stand are the ones that one by one do not, in a jointed frame on feet that lift", () => {
    const { model, cases } = jointedFrame(8);
    const factors = [1, 2, 3, 4, 5].flatMap((n) => [
      [1, n, 0],
      [1, n, 0.4 * n],
      [1, n, -0.4 * n],
    ]);
    const solution = solveFrame(prepareFrame(model), cases, factors);
    const whole = bucklingOf(solution);
    const solved = factors.flatMap((_, i) => (solution.states[i]?.kind === "solved" ? [i] : []));
    expect(solved.length).toBeGreaterThan(8);
    const least = solved.map((i) => {
      const found = whole.modes(i, 1);
      return found.kind === "modes" ? (found.modes[0]?.lambda ?? Infinity) : 0;
    });
    const sorted = [...least].sort((a, b) => a - b);
    const [first = 0, , third = 0, , fifth = 0] = sorted;
    for (const factor of [0.99 * first, third * 1.001, fifth * 1.001, 1.01 * (sorted.at(-1) ?? 0)])
      expect([...whole.falling(solved, factor)].sort((a, b) => a - b)).toEqual(
        solved.filter((_, i) => (least[i] ?? 0) < factor),
      );
  });
});

describe("natural frequencies", () => {
  const frequencies = (model: FrameModel, count: number): number[] => {
    const found = naturalModes(prepareFrame(model), count);
    if (found.kind !== "modes") throw new Error("a mechanism");
    for (const { residual } of found.modes) expect(residual).toBeLessThan(1e-5);
    return found.modes.map(({ frequency }) => frequency);
  };
  const cantilever = (more: Partial<Member>): FrameModel => ({
    nodes: [
      [0, 0, 0],
      [L, 0, 0],
    ],
    members: [{ ...MEMBER, ...more }],
    supports: [{ node: 0, holds: FIXED }],
  });
  const bending = (EI: number, betaL: number): number => (betaL ** 2 / (2 * Math.PI)) * Math.sqrt(EI / (3 * L ** 4));

  test("of a cantilever in both planes (Blevins: βL = 1.8751041, 4.6940911)", () => {
    const found = frequencies(cantilever({}), 3);
    near(found[0], bending(10_000, 1.8751041), 1e-4);
    near(found[1], bending(40_000, 1.8751041), 1e-4);
    near(found[2], bending(10_000, 4.6940911), 1e-4);
  });

  test("near a frequency far up, however many lie below, all counted (Blevins: βL = (n − 1/2) π from n = 6 on)", () => {
    const model = cantilever({ EIy: 10_000, GJ: 1e9, EA: 1e12 });
    const nth = (n: number): number => bending(10_000, (n - 0.5) * Math.PI);
    const found = naturalModesNear(prepareFrame(model), 1.01 * nth(7), 6);
    if (found.kind !== "near") throw new Error("a mechanism");
    const pairs = [6, 6, 7, 7, 8, 8];
    for (const [i, { frequency, residual }] of found.modes.entries()) {
      near(frequency, nth(pairs[i] ?? 0), 1e-3);
      expect(residual).toBeLessThan(1e-6);
    }
    // Two planes: five each lie below.
    expect(found.skipped).toBe(10);
  });

  test("near any frequency of a jointed frame they are those of the lowest found one after the other", () => {
    const frame = prepareFrame(jointedFrame(1).model);
    const all = naturalModes(frame, 24);
    if (all.kind !== "modes") throw new Error("a mechanism");
    for (const at of [3, 9, 15]) {
      const [one, next] = [all.modes[at]?.frequency ?? 0, all.modes[at + 1]?.frequency ?? 0];
      const found = naturalModesNear(frame, Math.sqrt(one * next), 5);
      if (found.kind !== "near") throw new Error("a mechanism");
      expect(found.skipped + found.modes.filter(({ frequency }) => frequency < Math.sqrt(one * next)).length).toBe(
        at + 1,
      );
      for (const [i, { frequency }] of found.modes.entries())
        near(frequency, all.modes[found.skipped + i]?.frequency ?? 0, 1e-3);
    }
  });

  test("equal ones are found as often as they occur", () => {
    const found = frequencies(cantilever({ EIy: 10_000 }), 4);
    near(found[1], found[0] ?? 0, 1e-9);
    near(found[3], found[2] ?? 0, 1e-9);
  });

  test("stretching and twisting of a held-free bar: c/4L", () => {
    near(frequencies(cantilever({ EA: 300, GJ: 1e6 }), 1)[0], Math.sqrt(300 / 3) / (4 * L), 1e-3);
    const r2 = 50_000 / 70e6;
    near(frequencies(cantilever({ GJ: 0.5 }), 1)[0], Math.sqrt(0.5 / (3 * r2)) / (4 * L), 1e-3);
  });

  test("a mass with inertia on a stiff spring turns at √(k/J)", () => {
    const holds: Six<Hold> = ["fixed", "fixed", "fixed", "fixed", 500, "fixed"];
    const model = { nodes: [[0, 0, 0] as const], members: [], supports: [{ node: 0, holds }] };
    const masses = [{ node: 0, mass: 2, inertia: [0.1, 0.3, 0.1] as const }];
    near(frequencies({ ...model, masses }, 1)[0], Math.sqrt(500 / 0.3) / (2 * Math.PI), 1e-9);
  });

  test("a frame with a mechanism has none to give; the mechanism is named", () => {
    expect(naturalModes(prepareFrame({ ...cantilever({}), supports: [] }), 1).kind).toBe("mechanism");
  });
});

describe("a factor beyond what is asked for", () => {
  test("is not looked for: Euler's force of a column pressed by 1 N", () => {
    const solution = solveFrame(prepareFrame(column({})), [{ nodes: [{ node: 1, force: [-1, 0, 0] }] }], [[1]]);
    const below = (upTo: number): number[] => {
      const found = bucklingOf(solution).modes(0, 1, upTo);
      return found.kind === "modes" ? found.modes.map(({ lambda }) => lambda) : [];
    };
    expect(below(euler(10_000) * 0.99)).toEqual([]);
    near(below(euler(10_000) * 1.01)[0], euler(10_000), 1e-4);
  });
});

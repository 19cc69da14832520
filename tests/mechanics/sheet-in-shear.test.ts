import { describe, expect, it } from "vitest";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import type { Coupling, FrameModel, Member } from "../../src/mechanics/model.ts";
import { shearBuckling, sheetInShear } from "../../src/mechanics/plates/sheet-in-shear.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";

const WIDTH = 1.2;
const HEIGHT = 0.8;
const SLIP = 4e6;
/** Stiff, so that the screws alone give. */
const STIFF = 1e15;
const rows = [
  { from: [0, 0], to: [WIDTH, 0], screws: 7 },
  { from: [WIDTH, 0], to: [WIDTH, HEIGHT], screws: 5 },
  { from: [0, HEIGHT], to: [WIDTH, HEIGHT], screws: 7 },
  { from: [0, 0], to: [0, HEIGHT], screws: 5 },
] as const;

/** Σ x² and Σ y² of all screws about the middle. */
function squares(): readonly [number, number] {
  let [x2, y2] = [0, 0];
  for (const { from, to, screws } of rows)
    for (let i = 0; i < screws; i++) {
      const t = i / (screws - 1);
      x2 += (from[0] + t * (to[0] - from[0]) - WIDTH / 2) ** 2;
      y2 += (from[1] + t * (to[1] - from[1]) - HEIGHT / 2) ** 2;
    }
  return [x2, y2];
}

/** Four stiff bars hinged at their corners in the x-z plane, the lower one held, a sheet screwed to all four. */
function hinged(shear: number): FrameModel {
  const at = [
    [0, 0],
    [WIDTH, 0],
    [WIDTH, HEIGHT],
    [0, HEIGHT],
  ] as const;
  const nodes = at.map(([x, z]): [number, number, number] => [x, 0, z]);
  const member = (from: number, to: number, x: readonly [number, number, number]): Member => ({
    from,
    to,
    axes: { x, y: [0, 1, 0], z: [-x[2], 0, x[0]] },
    EA: 1e13,
    EIy: 1e13,
    EIz: 1e13,
    GJ: 1e13,
    GAy: Number.POSITIVE_INFINITY,
    GAz: Number.POSITIVE_INFINITY,
    massPerLength: 0,
    fromReleases: [false, false, false, false, true, false],
    toReleases: [false, false, false, false, true, false],
  });
  const members = [member(0, 1, [1, 0, 0]), member(1, 2, [0, 0, 1]), member(3, 2, [1, 0, 0]), member(0, 3, [0, 0, 1])];
  const ends = [
    [0, 1],
    [1, 2],
    [3, 2],
    [0, 3],
  ] as const;
  const couplings = sheetInShear({ rows, slip: SLIP, shear }).forms.map(
    ({ weights, stiffness }): Coupling => ({
      stiffness,
      points: ends.flatMap(([from, to], r) => {
        const x = members[r]?.axes.x ?? [1, 0, 0];
        return [from, to].map((node, end) => {
          const along = (weights[3 * r] ?? 0) / 2;
          const across = weights[3 * r + 1 + end] ?? 0;
          return {
            node,
            at: nodes[node] ?? [0, 0, 0],
            direction: [along * x[0] - across * x[2], 0, along * x[2] + across * x[0]] as const,
          };
        });
      }),
    }),
  );
  return {
    nodes,
    members,
    couplings,
    supports: [
      { node: 0, holds: ["fixed", "fixed", "fixed", "fixed", "fixed", "fixed"] },
      { node: 1, holds: ["fixed", "fixed", "fixed", "fixed", "fixed", "fixed"] },
      { node: 2, holds: ["free", "fixed", "free", "fixed", "fixed", "fixed"] },
      { node: 3, holds: ["free", "fixed", "free", "fixed", "fixed", "fixed"] },
    ],
  };
}

const FORCE = 1000;

function pushed(shear: number): { readonly moved: number; readonly screw: number } {
  const solution = solveFrame(prepareFrame(hinged(shear)), [{ nodes: [{ node: 3, force: [FORCE, 0, 0] }] }], [[1]]);
  const [state] = solution.states;
  if (state?.kind !== "solved") throw new Error("not solved");
  const screw = sheetInShear({ rows, slip: SLIP, shear }).borne([...state.couplings]).screw;
  return { moved: state.displacements[18] ?? 0, screw };
}

describe("a sheet screwed to four hinged bars", () => {
  it("racks by H h²/k (1/Σx² + 1/Σy²) (Källsner and Girhammar 2009, elastic model, from memory)", () => {
    const [x2, y2] = squares();
    const wanted = ((FORCE * HEIGHT ** 2) / SLIP) * (1 / x2 + 1 / y2);
    expect(pushed(STIFF).moved / wanted).toBeCloseTo(1, 5);
  });

  it("gives H h/(G t b) more where the sheet itself shears (the same model)", () => {
    const [x2, y2] = squares();
    const stiffness = 0.6e9 * 0.012;
    const wanted = ((FORCE * HEIGHT ** 2) / SLIP) * (1 / x2 + 1 / y2) + (FORCE * HEIGHT) / (stiffness * WIDTH);
    expect(pushed(stiffness * WIDTH * HEIGHT).moved / wanted).toBeCloseTo(1, 5);
  });

  it("presses the corner screw with H h √((x/Σx²)² + (y/Σy²)²) (the same model)", () => {
    const [x2, y2] = squares();
    const wanted = FORCE * HEIGHT * Math.hypot(WIDTH / 2 / x2, HEIGHT / 2 / y2);
    expect(pushed(STIFF).screw / wanted).toBeCloseTo(1, 5);
  });

  it("does not feel a motion of all bars as one piece", () => {
    const { forms } = sheetInShear({ rows, slip: SLIP, shear: 1e7 });
    expect(forms).toHaveLength(9);
    for (const { weights } of forms) {
      const motion = [0, 0, 0];
      rows.forEach(({ from, to }, r) => {
        const run = [to[0] - from[0], to[1] - from[1]] as const;
        const size = Math.hypot(...run);
        const [c, s] = [run[0] / size, run[1] / size];
        const [along, first, last] = [weights[3 * r] ?? 0, weights[3 * r + 1] ?? 0, weights[3 * r + 2] ?? 0];
        motion[0] = (motion[0] ?? 0) + along * c - (first + last) * s;
        motion[1] = (motion[1] ?? 0) + along * s + (first + last) * c;
        const turn = ([x, y]: readonly [number, number], w: number): number => w * (s * y + c * x);
        const mean = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const;
        motion[2] = (motion[2] ?? 0) + turn(from, first) + turn(to, last) + along * (s * mean[0] - c * mean[1]);
      });
      for (const one of motion) expect(Math.abs(one)).toBeLessThan(1e-9);
    }
  });
});

describe("shear buckling of a flat sheet", () => {
  it("k is 9.34 for a square and 5.34 for a long strip (Timoshenko and Gere, table 9-10)", () => {
    const plate = (Math.PI ** 2 * 70e9) / (12 * (1 - 0.3 ** 2)) / 1e4;
    expect(shearBuckling(70e9, 0.3, 0.01, [1, 1]) / plate).toBeCloseTo(9.34, 2);
    expect(shearBuckling(70e9, 0.3, 0.01, [1, 1e3]) / plate).toBeCloseTo(5.34, 2);
  });
});

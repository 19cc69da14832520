import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { analyse } from "../../../src/mechanics/sparse/analyse.ts";
import { assembleSymmetric, type ElementBlock } from "../../../src/mechanics/sparse/assemble.ts";
import { type Factor, factorise } from "../../../src/mechanics/sparse/factorise.ts";
import { nullVector, relativeStrain } from "../../../src/mechanics/sparse/null-vector.ts";
import { componentError, solveRefined } from "../../../src/mechanics/sparse/refine.ts";
import type { SymmetricMatrix } from "../../../src/mechanics/sparse/symmetric-matrix.ts";
import { largest, numbers, springs } from "./dense.ts";
import { barStiffness, gridFrame, rack } from "./frames.ts";

const ROUNDING = 1e-11; // of the forces that must cancel

function made(
  n: number,
  blocks: readonly ElementBlock[],
  nodeOf?: Int32Array,
): { matrix: SymmetricMatrix; factor: Factor } {
  const matrix = assembleSymmetric(n, blocks);
  return { matrix, factor: factorise(analyse(matrix, nodeOf), matrix) };
}

/** Rank by Gram-Schmidt. */
function rank(vectors: readonly Float64Array[]): number {
  const basis: number[][] = [];
  for (const vector of vectors) {
    let rest = [...vector];
    for (const unit of basis) {
      const along = rest.reduce((sum, value, i) => sum + value * (unit[i] ?? 0), 0);
      rest = rest.map((value, i) => value - along * (unit[i] ?? 0));
    }
    const size = Math.hypot(...rest);
    if (size > 1e-6) basis.push(rest.map((value) => value / size));
  }
  return basis.length;
}

describe("mechanisms", () => {
  test("two springs in a row without ground: the one motion is both ends alike", () => {
    const { matrix, factor } = made(
      3,
      springs([
        [0, 1, 5],
        [1, 2, 7],
      ]),
    );
    expect(factor.pivots.positive).toBe(2);
    expect(factor.pivots.suspicious).toHaveLength(1);
    const v = nullVector(factor, factor.pivots.suspicious[0]?.unknown ?? -1);
    expect(relativeStrain(matrix, v)).toBeLessThan(ROUNDING);
    for (const component of v) expect(component).toBeCloseTo(1, 12);
  });

  test("an unknown nothing holds is itself the mechanism", () => {
    const { factor } = made(
      4,
      springs([
        [0, -1, 5],
        [0, 1, 2],
        [3, -1, 1e6],
      ]),
    );
    expect(factor.pivots.suspicious).toEqual([{ unknown: 2, ratio: 0, balance: 0, held: true }]);
    expect([...nullVector(factor, 2)]).toEqual([0, 0, 1, 0]);
    const x = factor.solve(Float64Array.of(0, 2, 0, 3e6), 1);
    expect(x[0]).toBeCloseTo(2 / 5, 12);
    expect(x[3]).toBeCloseTo(3, 12);
  });

  test("a bar on a hinge at one end swings about it: v = (0 … , l, …, 1)", () => {
    const length = 0.5;
    // Only the turning about z is free at the held end; that unknown is 0, the far joint has 1 … 6.
    const blocks = [{ unknowns: [-1, -1, -1, -1, -1, 0, 1, 2, 3, 4, 5, 6], values: barStiffness(0, length) }];
    const { matrix, factor } = made(7, blocks);
    expect(factor.pivots.suspicious).toHaveLength(1);
    const unknown = factor.pivots.suspicious[0]?.unknown ?? -1;
    expect([0, 2, 6]).toContain(unknown);
    const v = nullVector(factor, unknown);
    expect(relativeStrain(matrix, v)).toBeLessThan(ROUNDING);
    const expected = [1, 0, length, 0, 0, 0, 1];
    expected.forEach((component, i) => {
      expect(v[i]).toBeCloseTo(component, 10);
    });
  });

  test.each([
    ["a cube", gridFrame(4, 4, 4, () => false)],
    ["a long rack", gridFrame(60, 2, 3, () => false)],
    ["a floor", gridFrame(12, 12, 2, () => false)],
    ["a rack of 770 sections", gridFrame(770, 2, 3, () => false)],
  ])("%s that nothing holds has the six motions of a rigid body", (_name, frame) => {
    const { matrix, factor } = made(frame.unknowns, frame.blocks, frame.nodeOf);
    expect(factor.pivots.suspicious).toHaveLength(6);
    expect(factor.pivots.positive).toBe(frame.unknowns - 6);
    const motions = factor.pivots.suspicious.map(({ unknown }) => nullVector(factor, unknown));
    for (const v of motions) expect(relativeStrain(matrix, v)).toBeLessThan(1e-8);
    expect(rank(motions)).toBe(6);
  });

  test("a rack 600 bars long that only turns about a hinge at its end, though its pivot is not small", () => {
    const frame = gridFrame(600, 2, 3, () => false);
    const pinned = [0, 2].flatMap((joint) => [0, 1, 2].map((d) => ({ unknowns: [6 * joint + d], values: [1e8] })));
    const { matrix, factor } = made(frame.unknowns, [...frame.blocks, ...pinned], frame.nodeOf);
    expect(factor.pivots.suspicious).toHaveLength(1);
    expect(factor.pivots.suspicious[0]?.held).toBe(true);
    const v = nullVector(factor, factor.pivots.suspicious[0]?.unknown ?? -1);
    expect(relativeStrain(matrix, v)).toBeLessThan(1e-8);
    // The hinge is the upright line through the two pinned joints: the far end moves across by its distance × the turn.
    const turn = v[5] ?? Number.NaN;
    const far = 6 * (599 * 6);
    // The condition of so long a frame, 600⁴, leaves five digits or so.
    expect((v[far + 1] ?? 0) / turn / (599 * 0.5)).toBeCloseTo(1, 4);
    expect((v[far + 5] ?? 0) / turn).toBeCloseTo(1, 4);
  });

  test("a long slender cantilever has pivots as small but is no mechanism", () => {
    const frame = gridFrame(1500, 1, 1, (x) => x === 0);
    const { matrix, factor } = made(frame.unknowns, frame.blocks, frame.nodeOf);
    expect(factor.pivots).toMatchObject({ negative: 0 });
    expect(factor.pivots.suspicious.filter(({ held }) => held)).toEqual([]);
    const b = new Float64Array(frame.unknowns);
    b[frame.unknowns - 5] = 1;
    // The tip of a cantilever of 1499 bars: P·l³/(3·E·I) (any beam table); the condition 1499⁴ leaves three digits or so.
    const { x } = solveRefined(factor, matrix, b, 1);
    const deflection = (1499 * 0.5) ** 3 / (3 * 70e9 * 9e-8);
    expect((x[frame.unknowns - 5] ?? 0) / deflection).toBeCloseTo(1, 2);
  });

  test("only the loose part of a frame moves", () => {
    const frame = gridFrame(6, 3, 3);
    const loose = frame.unknowns;
    // A bar of its own at joint 0: fixed to it but for one turning about its own axis.
    const own = Array.from({ length: 6 }, (_, d) => loose + d);
    const hinge = loose + 6;
    const blocks = [...frame.blocks, { unknowns: [0, 1, 2, hinge, 4, 5, ...own], values: barStiffness(0) }];
    const { matrix, factor } = made(loose + 7, blocks);
    expect(factor.pivots.suspicious).toHaveLength(1);
    const v = nullVector(factor, factor.pivots.suspicious[0]?.unknown ?? -1);
    expect(relativeStrain(matrix, v)).toBeLessThan(ROUNDING);
    const moving = [...v].flatMap((component, i) => (Math.abs(component) > 1e-9 ? [i] : []));
    expect(moving).toEqual([loose + 3, hinge]);
  });

  test("every loose group of a random net of springs is found once, with its own motion", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(29), fc.integer({ min: -1, max: 29 }), fc.integer({ min: 1, max: 1000 })), {
          maxLength: 60,
        }),
        (drawn) => {
          const net = drawn.filter(([a, b]) => a !== b);
          const group = Array.from({ length: 30 }, (_, i) => i);
          const root = (i: number): number => (group[i] === i ? i : root(group[i] ?? i));
          const grounded = new Set<number>();
          for (const [a, b] of net) if (b >= 0) group[root(a)] = root(b);
          for (const [a, b] of net) if (b < 0) grounded.add(root(a));
          const free = new Set(group.map((_, i) => root(i)).filter((r) => !grounded.has(r)));
          const { matrix, factor } = made(30, springs(net));
          expect(new Set(factor.pivots.suspicious.map(({ unknown }) => root(unknown)))).toEqual(free);
          expect(factor.pivots.suspicious).toHaveLength(free.size);
          for (const { unknown } of factor.pivots.suspicious) {
            const v = nullVector(factor, unknown);
            expect(relativeStrain(matrix, v)).toBeLessThan(1e-9);
            v.forEach((component, i) => {
              expect(component).toBeCloseTo(root(i) === root(unknown) ? 1 : 0, 9);
            });
          }
        },
      ),
    );
  });

  test("a nonexistent unknown has no motion", () => {
    const { factor } = made(2, springs([[0, 1, 1]]));
    expect(() => nullVector(factor, 2)).toThrow(RangeError);
  });
});

describe("refinement", () => {
  test("brings the error to the rounding of doubles on a badly scaled frame", () => {
    const frame = rack(40);
    const next = numbers(4);
    const blocks = frame.blocks.map(({ unknowns, values }) => {
      const scale = 10 ** (4 * next());
      return { unknowns, values: Array.from(values, (value) => scale * value) };
    });
    const { matrix, factor } = made(frame.unknowns, blocks, frame.nodeOf);
    const b = Float64Array.from({ length: 3 * frame.unknowns }, next);
    const refined = solveRefined(factor, matrix, b, 3);
    expect(refined.error).toBeLessThan(1e-15);
    expect(refined.error).toBe(componentError(matrix, refined.x, b, 3));
    expect(refined.steps).toBeLessThanOrEqual(5);
  });

  test("tells of a load that a mechanism cannot carry", () => {
    const { matrix, factor } = made(
      3,
      springs([
        [0, 1, 5],
        [1, 2, 7],
      ]),
    );
    expect(solveRefined(factor, matrix, Float64Array.of(1, 0, 0), 1).error).toBeGreaterThan(0.01);
    const balanced = solveRefined(factor, matrix, Float64Array.of(1, 0, -1), 1);
    expect(balanced.error).toBeLessThan(1e-15);
    expect(largest(balanced.x)).toBeGreaterThan(0);
  });
});

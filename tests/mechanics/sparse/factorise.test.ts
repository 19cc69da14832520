import fc from "fast-check";
import { lusolve, type Matrix, sparse } from "mathjs";
import { describe, expect, test } from "vitest";
import { analyse } from "../../../src/mechanics/sparse/analyse.ts";
import { assembleSymmetric, type ElementBlock } from "../../../src/mechanics/sparse/assemble.ts";
import { factorise } from "../../../src/mechanics/sparse/factorise.ts";
import { subtractTiles } from "../../../src/mechanics/sparse/front-kernel.ts";
import { componentError } from "../../../src/mechanics/sparse/refine.ts";
import { wideKernel } from "../../../src/mechanics/sparse/wide-kernel.ts";
import { dense, largest, largestDifference, numbers, solveDense, springs } from "./dense.ts";
import { barStiffness, gridFrame, rack } from "./frames.ts";

const solveBy = (
  n: number,
  blocks: readonly ElementBlock[],
  b: Float64Array,
  k = 1,
  nodeOf?: Int32Array,
): Float64Array => {
  const matrix = assembleSymmetric(n, blocks);
  return factorise(analyse(matrix, nodeOf), matrix).solve(b, k);
};

/** Random blocks made positive definite by a dominant diagonal. */
const definite = fc
  .record({ n: fc.integer({ min: 1, max: 70 }), blocks: fc.nat(60), seed: fc.integer() })
  .map(({ n, blocks, seed }) => {
    const next = numbers(seed);
    const made: ElementBlock[] = [];
    for (let e = 0; e < blocks; e++) {
      const m = 1 + Math.floor(2.5 * (next() + 1));
      const unknowns = Array.from({ length: m }, () => Math.floor(((next() + 1) / 2) * n));
      const half = Array.from({ length: m * m }, next);
      const values = half.map((_, p) => {
        const [i, j] = [Math.floor(p / m), p % m];
        return i === j ? m + Math.abs(half[p] ?? 0) : (half[Math.max(i, j) * m + Math.min(i, j)] ?? 0);
      });
      made.push({ unknowns: [...new Set(unknowns)].length === m ? unknowns : unknowns.map(() => -1), values });
    }
    for (let i = 0; i < n; i++) made.push({ unknowns: [i], values: [1] });
    return { n, blocks: made, b: Float64Array.from({ length: n }, next) };
  });

describe("solving against dense L·D·Lᵀ", () => {
  test("random definite matrices", () => {
    fc.assert(
      fc.property(definite, ({ n, blocks, b }) => {
        const expected = solveDense(dense(assembleSymmetric(n, blocks)), [...b]).x;
        expect(largestDifference(solveBy(n, blocks, b), expected)).toBeLessThan(1e-12 * (1 + largest(expected)));
      }),
      { numRuns: 300 },
    );
  });

  test("any grouping into joints gives the same answer", () => {
    fc.assert(
      fc.property(definite, fc.integer({ min: 1, max: 9 }), ({ n, blocks, b }, groups) => {
        const nodeOf = Int32Array.from({ length: n }, (_, i) => (i * 7) % groups);
        const expected = solveDense(dense(assembleSymmetric(n, blocks)), [...b]).x;
        expect(largestDifference(solveBy(n, blocks, b, 1, nodeOf), expected)).toBeLessThan(
          1e-12 * (1 + largest(expected)),
        );
      }),
    );
  });

  test("a frame of 4 × 3 × 3 joints", () => {
    const frame = gridFrame(4, 3, 3);
    const matrix = assembleSymmetric(frame.unknowns, frame.blocks);
    const b = Float64Array.from({ length: frame.unknowns }, numbers(5));
    const expected = solveDense(dense(matrix), [...b]).x;
    const x = factorise(analyse(matrix, frame.nodeOf), matrix).solve(b, 1);
    expect(largestDifference(x, expected)).toBeLessThan(1e-10 * largest(expected));
  });
});

test("against the sparse LU of mathjs, on frames", () => {
  for (const frame of [gridFrame(3, 3, 4), rack(9), gridFrame(12, 2, 2)]) {
    const matrix = assembleSymmetric(frame.unknowns, frame.blocks);
    const b = Float64Array.from({ length: frame.unknowns }, numbers(11));
    const lu: Matrix = lusolve(
      sparse(dense(matrix)),
      [...b].map((value) => [value]),
    ) as Matrix;
    const expected = (lu.toArray() as number[][]).map((row) => row[0] ?? Number.NaN);
    const x = factorise(analyse(matrix, frame.nodeOf), matrix).solve(b, 1);
    expect(largestDifference(x, expected)).toBeLessThan(1e-9 * largest(expected));
  }
});

test("a cantilever of one bar bends P·l³/(3·E·I) at its tip (any beam table)", () => {
  const length = 0.5;
  const x = solveBy(
    6,
    [{ unknowns: [-1, -1, -1, -1, -1, -1, 0, 1, 2, 3, 4, 5], values: barStiffness(0, length) }],
    Float64Array.of(0, 100, 0, 0, 0, 0),
  );
  expect(x[1]).toBeCloseTo((100 * length ** 3) / (3 * 70e9 * 9e-8), 12);
});

describe("frames large enough for wide fronts", () => {
  test.each([
    ["a rack of 120 sections", rack(120)],
    ["a block of 8 × 8 × 8 joints", gridFrame(8, 8, 8)],
    ["a floor of 30 × 30 × 2 joints", gridFrame(30, 30, 2)],
    ["a block of 11 × 11 × 10 joints, whose fronts are cut into chains", gridFrame(11, 11, 10)],
  ])("%s is solved to the last digits", (_name, frame) => {
    const matrix = assembleSymmetric(frame.unknowns, frame.blocks);
    const factor = factorise(analyse(matrix, frame.nodeOf), matrix);
    const b = Float64Array.from({ length: frame.unknowns }, numbers(3));
    expect(factor.pivots).toEqual({ positive: frame.unknowns, negative: 0, suspicious: [] });
    expect(componentError(matrix, factor.solve(b, 1), b, 1)).toBeLessThan(1e-12);
  });
});

describe("several right-hand sides", () => {
  const frame = gridFrame(5, 3, 3);
  const matrix = assembleSymmetric(frame.unknowns, frame.blocks);
  const factor = factorise(analyse(matrix, frame.nodeOf), matrix);
  const n = frame.unknowns;

  test.each([0, 1, 2, 3, 4, 5, 9])("%i at once agree with one at a time", (k) => {
    const b = Float64Array.from({ length: n * k }, numbers(k));
    const together = factor.solve(b, k);
    for (let c = 0; c < k; c++) {
      const single = factor.solve(b.slice(c * n, (c + 1) * n), 1);
      const part = together.subarray(c * n, (c + 1) * n);
      expect(largestDifference(part, single)).toBeLessThan(1e-12 * largest(single));
    }
    expect(together.length).toBe(n * k);
  });

  test("a wrong length is refused", () => {
    expect(() => factor.solve(new Float64Array(n), 2)).toThrow(RangeError);
  });
});

describe("one analysis, several matrices", () => {
  const frame = gridFrame(4, 4, 3);
  const matrix = assembleSymmetric(frame.unknowns, frame.blocks);
  const analysis = analyse(matrix, frame.nodeOf);
  const b = Float64Array.from({ length: frame.unknowns }, numbers(8));

  test("doubling the stiffness halves the answer", () => {
    const stiffer = assembleSymmetric(
      frame.unknowns,
      [...frame.blocks].map(({ unknowns, values }) => ({
        unknowns,
        values: Array.from(values, (value) => 2 * value),
      })),
    );
    const once = factorise(analysis, matrix).solve(b, 1);
    const twice = factorise(analysis, stiffer).solve(b, 1);
    expect([...twice]).toEqual([...once].map((value) => value / 2));
  });

  test("the same matrix gives the same bits again", () => {
    expect(factorise(analysis, matrix).solve(b, 1)).toEqual(
      factorise(analyse(matrix, frame.nodeOf), matrix).solve(b, 1),
    );
  });

  test("pushes at single places give columns of the inverse, one by one and three at a time", () => {
    const factor = factorise(analysis, matrix);
    const { n } = matrix;
    const places = [0, n - 1, Math.floor(n / 2)];
    const together = new Float64Array(3 * n);
    for (const [c, place] of places.entries()) together[c * n + place] = 1;
    // What is left of a fuller load must not be found again.
    factor.solve(b, 1);
    const x = factor.solve(together, 3);
    for (const [c, place] of places.entries()) {
      const alone = factor.solve(together.slice(c * n, (c + 1) * n), 1);
      const expected = solveDense(
        dense(matrix),
        Array.from({ length: n }, (_, i) => (i === place ? 1 : 0)),
      ).x;
      for (const found of [alone, x.slice(c * n, (c + 1) * n)])
        expect(largestDifference(found, expected)).toBeLessThan(1e-10 * largest(expected));
    }
    expect([...factor.solve(new Float64Array(3 * n), 3)].every((value) => value === 0)).toBe(true);
  });

  test("another pattern is refused", () => {
    const other = gridFrame(4, 4, 3, (x) => x === 0);
    expect(() => factorise(analysis, assembleSymmetric(other.unknowns, other.blocks))).toThrow(RangeError);
  });
});

describe("inertia", () => {
  test("counts the eigenvalues 2 − 2 cos(jπ/(n + 1)) of a chain of springs below a shift (Strang, Introduction to Linear Algebra)", () => {
    const n = 200;
    const chain = springs([
      [0, -1, 1],
      ...Array.from({ length: n - 1 }, (_, i) => [i, i + 1, 1] as const),
      [n - 1, -1, 1],
    ]);
    const pattern = assembleSymmetric(n, chain);
    const analysis = analyse(pattern);
    for (const shift of [-0.5, 0.013, 0.77, 1.9, 3.3, 5]) {
      const shifted = assembleSymmetric(n, [
        ...chain,
        ...springs(Array.from({ length: n }, (_, i) => [i, -1, -shift] as const)),
      ]);
      const below = Array.from({ length: n }, (_, j) => 2 - 2 * Math.cos(((j + 1) * Math.PI) / (n + 1))).filter(
        (eigenvalue) => eigenvalue < shift,
      ).length;
      const { pivots } = factorise(analysis, shifted);
      expect(pivots).toEqual({ positive: n - below, negative: below, suspicious: [] });
    }
  });

  test("equals the signs of the dense pivots on random indefinite matrices", () => {
    fc.assert(
      fc.property(definite, fc.double({ min: 0.5, max: 8, noNaN: true }), ({ n, blocks }, shift) => {
        const moved = [...blocks, ...Array.from({ length: n }, (_, i) => ({ unknowns: [i], values: [-shift] }))];
        const matrix = assembleSymmetric(n, moved);
        const { pivots } = factorise(analyse(matrix), matrix);
        const plain = solveDense(dense(matrix), new Array<number>(n).fill(0)).pivots;
        fc.pre(pivots.suspicious.length === 0 && plain.every((pivot) => Math.abs(pivot) > 1e-8));
        expect(pivots.negative).toBe(plain.filter((pivot) => pivot < 0).length);
        expect(pivots.positive).toBe(n - pivots.negative);
      }),
    );
  });
});

describe("the wide kernel", () => {
  test.each([
    ["a cube", gridFrame(7, 7, 7)],
    ["a floor with odd numbers of unknowns", gridFrame(9, 9, 2, (x, y, z) => z === 0 && (x + y) % 3 === 0)],
    ["a rack", rack(30)],
  ])("gives the same as the plain one, to the last digits: %s", (_name, frame) => {
    // Held freedoms here and there make fronts whose sizes no tile divides.
    const held = new Set([1, 8, 15, 16, 40, 77]);
    const numbering = Array.from({ length: frame.unknowns }, (_, i) => i).filter((i) => !held.has(i));
    const number = new Map(numbering.map((i, k) => [i, k]));
    const blocks = frame.blocks.map(({ unknowns, values }) => ({
      unknowns: Array.from(unknowns, (i) => number.get(i) ?? -1),
      values,
    }));
    const matrix = assembleSymmetric(numbering.length, blocks);
    const analysis = analyse(matrix);
    const b = Float64Array.from({ length: 3 * matrix.n }, numbers(2));
    const plain = factorise(analysis, matrix, "plain");
    const wide = factorise(analysis, matrix, "wide");
    expect(wide.pivots).toEqual(plain.pivots);
    const x = wide.solve(b, 3);
    expect(largestDifference(x, plain.solve(b, 3))).toBeLessThan(1e-11 * largest(x));
    expect(componentError(matrix, x, b, 3)).toBeLessThan(1e-12);
    expect(factorise(analysis, matrix, "wide").solve(b, 3)).toEqual(x);
  });

  test("subtracts exactly what the plain one does, where sums are exact", () => {
    fc.assert(
      fc.property(fc.nat(13), fc.integer({ min: 1, max: 4 }), fc.integer(), (depth, tiles, seed) => {
        const stride = depth + 1;
        const next = numbers(seed);
        const integers = (count: number): number[] => Array.from({ length: count }, () => Math.round(100 * next()));
        const [a, b, c] = [integers(3 * tiles * stride), integers(3 * stride), integers(3 * tiles * 5)];
        const wide = wideKernel(a.length + b.length + c.length);
        expect(wide).toBeDefined();
        if (wide === undefined) return;
        const results = [{ take: (count: number) => new Float64Array(count), subtractTiles }, wide].map((kernel) => {
          const [x, y, z] = [kernel.take(a.length), kernel.take(b.length), kernel.take(c.length)];
          x.set(a);
          y.set(b);
          z.set(c);
          kernel.subtractTiles(x, 1, stride, y, 1, stride, depth, z, 2, 5, tiles);
          return [...z];
        });
        expect(results[1]).toEqual(results[0]);
        // One entry by hand.
        let sum = 0;
        for (let k = 0; k < depth; k++) sum += (a[1 + k] ?? 0) * (b[1 + 2 * stride + k] ?? 0);
        expect(results[0]?.[4]).toBe((c[4] ?? 0) - sum);
      }),
    );
  });
});

test("a matrix without unknowns is solved by nothing", () => {
  const matrix = assembleSymmetric(0, []);
  const factor = factorise(analyse(matrix), matrix);
  expect(factor.solve(new Float64Array(0), 1)).toEqual(new Float64Array(0));
  expect(factor.pivots).toEqual({ positive: 0, negative: 0, suspicious: [] });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assembleOnPattern, assembleSymmetric } from "../../../src/mechanics/sparse/assemble.ts";
import { multiply, multiplyAbsolute } from "../../../src/mechanics/sparse/symmetric-matrix.ts";
import { dense, largestDifference } from "./dense.ts";

const N = 9;
const blocks = fc.array(
  fc.integer({ min: 1, max: 5 }).chain((m) =>
    fc.record({
      unknowns: fc.array(fc.integer({ min: -1, max: N - 1 }), { minLength: m, maxLength: m }),
      half: fc.array(fc.integer({ min: -50, max: 50 }), { minLength: m * m, maxLength: m * m }),
    }),
  ),
  { maxLength: 12 },
);

function symmetric(half: readonly number[], m: number): number[] {
  return half.map((_, e) => half[Math.max(Math.floor(e / m), e % m) * m + Math.min(Math.floor(e / m), e % m)] ?? 0);
}

describe("assembling element blocks", () => {
  test("sums the same as a dense table, also for held and repeated unknowns", () => {
    fc.assert(
      fc.property(blocks, (drawn) => {
        const elements = drawn.map(({ unknowns, half }) => ({ unknowns, values: symmetric(half, unknowns.length) }));
        const table = Array.from({ length: N }, () => new Array<number>(N).fill(0));
        for (const { unknowns, values } of elements) {
          unknowns.forEach((i, a) => {
            unknowns.forEach((j, b) => {
              if (i >= 0 && j >= 0)
                (table[i] as number[])[j] = (table[i]?.[j] ?? 0) + (values[a * unknowns.length + b] ?? 0);
            });
          });
        }
        expect(dense(assembleSymmetric(N, elements))).toEqual(table);
      }),
    );
  });

  test("keeps rows ascending, without repeats, on or below the diagonal, with every diagonal entry", () => {
    fc.assert(
      fc.property(blocks, (drawn) => {
        const matrix = assembleSymmetric(
          N,
          drawn.map(({ unknowns, half }) => ({ unknowns, values: half })),
        );
        expect(matrix.colStart[N]).toBe(matrix.rowIndex.length);
        for (let j = 0; j < N; j++) {
          const rows = [...matrix.rowIndex.subarray(matrix.colStart[j], matrix.colStart[j + 1])];
          expect(rows[0]).toBe(j);
          expect(rows).toEqual([...new Set(rows)].sort((a, b) => a - b));
        }
      }),
    );
  });

  test("gives the same sum on a pattern that has room for it, and none on one that has not", () => {
    fc.assert(
      fc.property(blocks, blocks, (drawn, more) => {
        const own = drawn.map(({ unknowns, half }) => ({ unknowns, values: half }));
        const others = more.map(({ unknowns, half }) => ({ unknowns, values: half }));
        const pattern = assembleSymmetric(N, [...own, ...others]);
        const found = assembleOnPattern(pattern, own);
        expect(found && dense(found)).toEqual(dense(assembleSymmetric(N, own)));
        const bare = assembleSymmetric(N, []);
        const coupled = own.some(({ unknowns }) => new Set(unknowns.filter((i) => i >= 0)).size > 1);
        expect(assembleOnPattern(bare, own) === undefined).toBe(coupled);
      }),
    );
  });

  test("sums a hub that hundreds of others meet in, each several times, in the order in which they come", () => {
    const [others, times] = [300, 3];
    // Powers of two and thirds: the sum hangs on its order.
    const own = (k: number, t: number): number => 2 ** (k % 7) / 3 + 10 ** t;
    const elements = Array.from({ length: times }, (_, t) =>
      Array.from({ length: others }, (_, k) => {
        const other = 1 + ((7 * k) % others);
        return { unknowns: [0, other], values: [own(k, t), -own(k, t), -own(k, t), own(k, t)] };
      }),
    ).flat();
    const matrix = assembleSymmetric(others + 1, elements);
    expect([...matrix.rowIndex.subarray(0, others + 1)]).toEqual(Array.from({ length: others + 1 }, (_, i) => i));
    const sums = new Array<number>(others + 1).fill(0);
    for (const { unknowns, values } of elements) {
      sums[0] = (sums[0] ?? 0) + (values[0] ?? 0);
      sums[unknowns[1] ?? 0] = (sums[unknowns[1] ?? 0] ?? 0) + (values[2] ?? 0);
    }
    expect([...matrix.value.subarray(0, others + 1)]).toEqual(sums);
  });

  test("has the same pattern for other values, zeros included", () => {
    const full = assembleSymmetric(3, [{ unknowns: [0, 2], values: [1, 2, 2, 5] }]);
    const zero = assembleSymmetric(3, [{ unknowns: [0, 2], values: [0, 0, 0, 0] }]);
    expect(zero.rowIndex).toEqual(full.rowIndex);
    expect(zero.colStart).toEqual(full.colStart);
  });

  test("refuses an unknown that does not exist, a block of another size, and values that are not finite", () => {
    expect(() => assembleSymmetric(2, [{ unknowns: [2], values: [1] }])).toThrow(RangeError);
    expect(() => assembleSymmetric(2, [{ unknowns: [0, 1], values: [1, 2, 3] }])).toThrow(RangeError);
    expect(() => assembleSymmetric(2, [{ unknowns: [0], values: [Number.NaN] }])).toThrow(RangeError);
  });
});

test("a matrix times several vectors is the dense product", () => {
  const matrix = assembleSymmetric(3, [
    { unknowns: [0, 1], values: [2, -1, -1, 2] },
    { unknowns: [1, 2], values: [3, -3, -3, 4] },
  ]);
  const x = Float64Array.of(1, 2, 3, -1, 0, 5);
  // By hand: rows (2, −1, 0), (−1, 5, −3), (0, −3, 4).
  expect([...multiply(matrix, x, 2)]).toEqual([0, 0, 6, -2, -14, 20]);
  expect(largestDifference(multiplyAbsolute(matrix, x, 2), [4, 20, 18, 2, 16, 20])).toBe(0);
  expect(() => multiply(matrix, x, 3)).toThrow(RangeError);
});

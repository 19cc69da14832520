import { describe, expect, test } from "vitest";
import { assembleSymmetric } from "../../../src/mechanics/sparse/assemble.ts";
import { productsOf } from "../../../src/mechanics/sparse/products.ts";
import { multiply, multiplyAbsolute } from "../../../src/mechanics/sparse/symmetric-matrix.ts";

const COUNT = 40;
/** Numbers without pattern, the same each time. */
const wild = (i: number): number => Math.sin(12.9898 * i + 78.233) * 10 ** (5 * Math.cos(3.7 * i));

describe("both products of a few vectors in one sweep", () => {
  const matrix = assembleSymmetric(
    COUNT,
    Array.from({ length: COUNT - 2 }, (_, i) => {
      const [a, b, c, d, e, f] = [0, 1, 2, 3, 4, 5].map((k) => wild(6 * i + k)) as [
        number,
        number,
        number,
        number,
        number,
        number,
      ];
      return { unknowns: [i, i + 1, i + 2], values: [a, b, c, b, d, e, c, e, f] };
    }),
  );

  test.each([1, 2, 3, 4])("%i of them: bit for bit those of one after the other", (k) => {
    const x = Float64Array.from({ length: k * COUNT }, (_, i) => wild(1000 + i));
    const { product, size } = productsOf(matrix, x);
    expect(product).toEqual(multiply(matrix, x, k));
    expect(size).toEqual(multiplyAbsolute(matrix, x, k));
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { nest } from "../../src/facts/nesting.ts";

const pieces = (...lengths: readonly number[]): { id: string; length: number }[] =>
  lengths.map((length, i) => ({ id: `p${i}`, length }));

describe("laying pieces out on stock bars", () => {
  it("fills one bar to the end when the saw takes nothing", () => {
    const { bars, atLeast } = nest(pieces(3, 2, 1), 6, 0);
    expect(bars).toHaveLength(1);
    expect(bars[0]?.rest).toBeCloseTo(0, 12);
    expect(atLeast).toBe(1);
  });

  // 1 + 2 and 3 m with 4 mm saw cuts: 3 + 0.004 + 2 + 0.004 + 1 = 6.008 m do not fit on 6 m; two bars, hand count.
  it("counts the saw cut between pieces", () => {
    expect(nest(pieces(3, 2, 1), 6, 0.004).bars).toHaveLength(2);
    // After the last piece no cut is needed where it ends at the bar's end: 3 + 0.004 + 2.996 = 6.
    expect(nest(pieces(3, 2.996), 6, 0.004).bars).toHaveLength(1);
  });

  // The classic worst family of decreasing fits, here with 1.2, 0.6 … : optimum known by construction (each bar 0.51 + 0.27 + 0.22).
  it("stays within 11/9 of a known optimum and two thirds of a bar", () => {
    const made = Array.from({ length: 12 }, () => [0.51, 0.27, 0.22]).flat();
    const { bars } = nest(pieces(...made), 1, 0);
    expect(bars.length).toBeLessThanOrEqual(Math.floor((11 / 9) * 12 + 6 / 9));
  });

  it("sets pieces apart that are longer than a bar", () => {
    const { bars, tooLong } = nest(pieces(7, 1), 6, 0.003);
    expect(tooLong.map((piece) => piece.length)).toEqual([7]);
    expect(bars).toHaveLength(1);
  });

  it("loses no piece, overfills no bar and never beats its own lower bound", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 50, max: 5900 }), { minLength: 1, maxLength: 60 }),
        fc.integer({ min: 0, max: 5 }),
        (lengths, kerf) => {
          const { bars, atLeast } = nest(pieces(...lengths.map((mm) => mm / 1000)), 6, kerf / 1000);
          expect(bars.flatMap((bar) => bar.pieces)).toHaveLength(lengths.length);
          expect(bars.length).toBeGreaterThanOrEqual(atLeast);
          for (const bar of bars) {
            const used =
              bar.pieces.reduce((sum, piece) => sum + piece.length, 0) + (bar.pieces.length - 1) * (kerf / 1000);
            expect(used).toBeLessThanOrEqual(6 + 1e-6);
          }
        },
      ),
    );
  });
});

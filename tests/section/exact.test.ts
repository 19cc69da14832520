import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Region } from "../../src/geometry/polygon.ts";
import { elasticModuli, plasticModuli } from "../../src/section/moduli.ts";
import { type Moments, moments, principalMoments } from "../../src/section/moments.ts";
import { box, lightSquare, millimetres, placed, rectangle, s40, scaled, solid, stackedS40 } from "./shapes.ts";

/** Relative difference that rounding of doubles may leave. */
const ROUNDING = 1e-12;

const near = (actual: number, wanted: number, size = Math.abs(wanted)) =>
  expect(Math.abs(actual - wanted)).toBeLessThanOrEqual(ROUNDING * size);

describe("moments against closed forms", () => {
  it("rectangle b·h, b·h³/12 (geometry)", () => {
    const m = moments(solid(rectangle(30, 50, 7, -3)));
    near(m.A, 0.03 * 0.05);
    near(m.Iy, (0.03 * 0.05 ** 3) / 12);
    near(m.Iz, (0.05 * 0.03 ** 3) / 12);
    near(m.centroid.y, 0.007, 0.03);
    near(m.centroid.z, -0.003, 0.05);
    near(m.Iyz, 0, m.Iy);
  });

  it("right triangle: b·h³/36 and −b²h²/72 (geometry)", () => {
    const m = moments(
      solid(
        millimetres([
          [0, 0],
          [30, 0],
          [0, 60],
        ]),
      ),
    );
    near(m.Iy, (0.03 * 0.06 ** 3) / 36);
    near(m.Iz, (0.06 * 0.03 ** 3) / 36);
    near(m.Iyz, -(0.03 ** 2 * 0.06 ** 2) / 72);
  });

  it("S40: A 1088 mm², I = 40⁴/12 less four slots, in fractions (exact rectangles)", () => {
    const m = moments(s40);
    // Two slots on the axis' side (bottom and top), two across.
    const slot = (b: number, h: number, d: number) => (b * h ** 3) / 12 + b * h * d ** 2;
    const along = 2 * (slot(8, 4, 18) + slot(16, 6, 13));
    const across = 2 * (slot(4, 8, 0) + slot(6, 16, 0));
    near(m.A * 1e6, 1600 - 4 * (8 * 4 + 16 * 6));
    near(m.Iy * 1e12, 40 ** 4 / 12 - along - across);
    near(m.Iz * 1e12, 40 ** 4 / 12 - along - across);
  });

  it("does not depend on where the section is drawn, nor on which way its rings run", () => {
    const here = moments(lightSquare);
    const there = moments(placed(lightSquare, 0, 0.37, -0.21));
    near(there.Iy, here.Iy);
    near(there.A, here.A);
    const backwards: Region = {
      outer: [...lightSquare.outer].reverse(),
      holes: lightSquare.holes.map((h, i) => (i % 2 ? h : [...h].reverse())),
    };
    near(moments(backwards).Iy, here.Iy);
    near(plasticModuli(backwards, here.A).y, plasticModuli(lightSquare, here.A).y);
  });
});

describe("principal axes", () => {
  it("follow the section as it turns", () => {
    const flat = moments(box(80, 40, 3));
    fc.assert(
      fc.property(fc.double({ min: -1.5, max: 1.5, noNaN: true }), (angle) => {
        const { I1, I2, angle: found } = principalMoments(moments(placed(box(80, 40, 3), angle)));
        near(I1, flat.Iz);
        near(I2, flat.Iy);
        // The strong axis of the flat box is z, a right angle further; axes repeat after half a turn.
        const off = found - (angle + Math.PI / 2);
        expect(Math.abs(off - Math.PI * Math.round(off / Math.PI))).toBeLessThan(1e-9);
      }),
    );
  });

  it("name the greater moment first and give plain angles for plain sections", () => {
    expect(principalMoments(moments(solid(rectangle(20, 40)))).angle).toBe(0);
    expect(principalMoments(moments(solid(rectangle(40, 20)))).angle).toBeCloseTo(Math.PI / 2, 12);
    expect(principalMoments(moments(s40)).angle).toBe(0);
  });

  it("are those of Mohr's circle: moments 5 and 3, product −1 give 4 ± √2 at 22.5 degrees (worked by hand)", () => {
    const m: Moments = { A: 1, centroid: { y: 0, z: 0 }, Iy: 5, Iz: 3, Iyz: -1 };
    const { I1, I2, angle } = principalMoments(m);
    near(I1, 4 + Math.SQRT2);
    near(I2, 4 - Math.SQRT2);
    near(angle, Math.PI / 8);
  });
});

describe("moduli", () => {
  it("elastic: a triangle has h/3 on one side and 2h/3 on the other (geometry)", () => {
    const region = solid(
      millimetres([
        [-15, 0],
        [15, 0],
        [0, 60],
      ]),
    );
    const w = elasticModuli(region, moments(region));
    const I = (0.03 * 0.06 ** 3) / 36;
    near(w.zPlus, I / 0.04);
    near(w.zMinus, I / 0.02);
    near(w.yPlus, w.yMinus);
  });

  it("plastic: rectangle b·h²/4, square box, diamond b·h²/12, triangle (textbook; triangle: 2 − √2 over 6 of b·h²)", () => {
    const modulus = (region: Region) => plasticModuli(region, moments(region).A);
    near(modulus(solid(rectangle(30, 50))).y, (0.03 * 0.05 ** 2) / 4);
    near(modulus(solid(rectangle(30, 50))).z, (0.05 * 0.03 ** 2) / 4);
    near(modulus(box(40, 40, 2)).y, (0.04 ** 3 - 0.036 ** 3) / 4);
    const diamond = solid(
      millimetres([
        [0, -25],
        [15, 0],
        [0, 25],
        [-15, 0],
      ]),
    );
    near(modulus(diamond).y, (0.03 * 0.05 ** 2) / 12);
    const triangle = solid(
      millimetres([
        [-15, 0],
        [15, 0],
        [0, 60],
      ]),
    );
    near(modulus(triangle).y, ((2 - Math.SQRT2) / 6) * 0.03 * 0.06 ** 2);
  });

  it("plastic: S40 by rectangles, 11456 mm³ (worked by hand: the square less the slots on either side of the axis and across it)", () => {
    const { A } = moments(s40);
    // Halves of the slots that lie across the axis: 4 wide 8 high and 6 wide 16 high, two of each: b·h²/4.
    const across = 2 * ((4 * 8 ** 2) / 4 + (6 * 16 ** 2) / 4);
    const wanted = 40 ** 3 / 4 - 2 * (32 * 18 + 96 * 13) - across;
    near(plasticModuli(s40, A).y * 1e9, wanted);
    near(plasticModuli(s40, A).z * 1e9, wanted);
  });

  it("never fall below the smaller elastic modulus, and grow with the cube of size", () => {
    for (const region of [s40, lightSquare, stackedS40, placed(lightSquare, 0.4)]) {
      const m = moments(region);
      const p = plasticModuli(region, m.A);
      const e = elasticModuli(region, m);
      expect(p.y).toBeGreaterThan(Math.min(e.zPlus, e.zMinus));
      expect(p.z).toBeGreaterThan(Math.min(e.yPlus, e.yMinus));
      const big = scaled(region, 3);
      near(plasticModuli(big, moments(big).A).y, 27 * p.y);
    }
  });
});

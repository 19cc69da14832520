import { describe, expect, it } from "vitest";
import type { Region } from "../../src/geometry/polygon.ts";
import { type SectionProperties, sectionProperties } from "../../src/section/section-properties.ts";
import {
  box,
  ellipse,
  lightSquare,
  lightSquareOneClosed,
  millimetres,
  placed,
  rectangle,
  rounded,
  s40,
  scaled,
  solid,
} from "./shapes.ts";

const relative = (actual: number, wanted: number) => Math.abs(actual - wanted) / Math.abs(wanted);

/** Distance of the shear centre from the centroid [m]. */
const eccentricity = ({ shearCentre, centroid }: SectionProperties) =>
  Math.hypot(shearCentre.y - centroid.y, shearCentre.z - centroid.z);

/** Channel of b flanges, h web, thickness t, all outside measures, web at the left [mm]. */
const channel = (b: number, h: number, t: number): Region =>
  solid(
    millimetres([
      [0, 0],
      [b, 0],
      [b, t],
      [t, t],
      [t, h - t],
      [b, h - t],
      [b, h],
      [0, h],
    ]),
  );

describe("torsion against closed forms", () => {
  it("rectangle by Saint-Venant's series, inside the band for any shape (Timoshenko & Goodier, Theory of Elasticity, § 109)", () => {
    for (const [b, a] of [
      [1, 1],
      [1.2, 1],
      [3, 1],
      [10, 1],
      [20, 1],
    ] as const) {
      let series = 0;
      for (let n = 1; n < 200; n += 2) series += Math.tanh((n * Math.PI * b) / (2 * a)) / n ** 5;
      const J = (a ** 3 * b * (1 - ((192 * a) / (Math.PI ** 5 * b)) * series)) / 3;
      const { torsionBand, J: found } = sectionProperties(solid(rectangle(a * 1000, b * 1000)));
      expect(torsionBand.low).toBeLessThanOrEqual(J);
      expect(torsionBand.high).toBeGreaterThanOrEqual(J);
      expect(relative(found, J)).toBeLessThan(5e-4);
    }
  });

  it("ellipse πa³b³/(a² + b²), peak at the end of the short axis πab²/2 (Saint-Venant)", () => {
    const [a, b] = [30, 15];
    const p = sectionProperties(solid(ellipse(a, b, 240)));
    expect(relative(p.J * 1e12, (Math.PI * a ** 3 * b ** 3) / (a * a + b * b))).toBeLessThan(5e-4);
    expect(relative(p.Wt * 1e9, (Math.PI * a * b * b) / 2)).toBeLessThan(2e-3);
  });

  it("equilateral triangle √3a⁴/80, peak in the middle of a side a³/20 (Saint-Venant)", () => {
    const p = sectionProperties(
      solid(
        millimetres([
          [0, 0],
          [40, 0],
          [20, 20 * Math.sqrt(3)],
        ]),
      ),
    );
    expect(relative(p.J * 1e12, (Math.sqrt(3) * 40 ** 4) / 80)).toBeLessThan(5e-4);
    expect(relative(p.Wt * 1e9, 40 ** 3 / 20)).toBeLessThan(2e-3);
  });

  it("thick tube π(R⁴ − r⁴)/2 (Coulomb)", () => {
    const { J, Wt } = sectionProperties({ outer: ellipse(20, 20, 240), holes: [ellipse(12, 12, 180)] });
    expect(relative(J * 1e12, (Math.PI * (20 ** 4 - 12 ** 4)) / 2)).toBeLessThan(5e-4);
    expect(relative(Wt * 1e9, (Math.PI * (20 ** 4 - 12 ** 4)) / 2 / 20)).toBeLessThan(2e-3);
  });

  it("thin box tends to 4Am²t/U as the wall gets thinner (Bredt)", () => {
    const off = [4, 2, 1, 0.5].map((t) => {
      const [b, h] = [60 - t, 30 - t];
      return relative(sectionProperties(box(60, 30, t)).J * 1e12, (4 * (b * h) ** 2 * t) / (2 * (b + h)));
    });
    expect(off).toEqual([...off].sort((p, q) => q - p));
    expect(off[3]).toBeLessThan(0.01); // what is left are the corners, in proportion to t
  });

  it("two unlike cells share the twist (Bredt; cell equations solved here)", () => {
    const t = 0.5;
    // Widths between wall centrelines; height the same.
    const [b1, b2, h] = [20, 50, 30];
    const region: Region = {
      outer: rectangle(b1 + b2 + t, h + t, (b1 + b2) / 2),
      holes: [rectangle(b1 - t, h - t, b1 / 2), rectangle(b2 - t, h - t, b1 + b2 / 2)],
    };
    const [A1, A2] = [b1 * h, b2 * h];
    const [d1, d2, d12] = [(2 * b1 + 2 * h) / t, (2 * b2 + 2 * h) / t, h / t];
    // d1·F1 − d12·F2 = 2A1 and −d12·F1 + d2·F2 = 2A2 for unit G and twist; torque 2(F1A1 + F2A2).
    const det = d1 * d2 - d12 * d12;
    const F1 = (2 * A1 * d2 + 2 * A2 * d12) / det;
    const F2 = (2 * A2 * d1 + 2 * A1 * d12) / det;
    expect(relative(sectionProperties(region).J * 1e12, 2 * (F1 * A1 + F2 * A2))).toBeLessThan(0.01);
  });
});

describe("shear against closed forms", () => {
  it("5/6 of a rectangle both ways, whatever its shape (Saint-Venant flexure, Poisson's ratio 0)", () => {
    for (const [b, h] of [
      [10, 10],
      [10, 30],
      [4, 60],
    ] as const) {
      const { A, Avy, Avz } = sectionProperties(solid(rectangle(b, h)));
      expect(relative(Avy, (5 / 6) * A)).toBeLessThan(2e-3);
      expect(relative(Avz, (5 / 6) * A)).toBeLessThan(2e-3);
    }
  });

  it("6/7 of a circle, half of a thin tube (Saint-Venant flexure, Poisson's ratio 0)", () => {
    const round = sectionProperties(solid(ellipse(10, 10, 120)));
    expect(relative(round.Avy, (6 / 7) * round.A)).toBeLessThan(1e-3);
    const tube = sectionProperties({ outer: ellipse(20, 20, 120), holes: [ellipse(19.5, 19.5, 120)] });
    expect(relative(tube.Avz, tube.A / 2)).toBeLessThan(3e-3);
  });

  it("channel: shear centre 3b²/(h + 6b) behind the web, warping constant tb³h²(3b + 2h)/12(6b + h) (Vlasov)", () => {
    const t = 0.5;
    const [b, h] = [20, 40];
    const p = sectionProperties(channel(b + t / 2, h + t, t));
    const behind = t / 2 / 1000 - p.shearCentre.y;
    expect(relative(behind * 1000, (3 * b * b) / (h + 6 * b))).toBeLessThan(5e-3);
    expect(p.shearCentre.z).toBeCloseTo((h + t) / 2000, 6);
    const Iw = ((t * b ** 3 * h ** 2) / 12) * ((3 * b + 2 * h) / (6 * b + h));
    expect(relative(p.Iw * 1e18, Iw)).toBeLessThan(5e-3);
  });

  it("slit thin tube: shear centre two radii from the middle, opposite the slit (Vlasov)", () => {
    const n = 160;
    const arc = (r: number) =>
      Array.from({ length: n + 1 }, (_, i) => {
        const angle = 0.001 + ((2 * Math.PI - 0.002) * i) / n;
        return [r * Math.cos(angle), r * Math.sin(angle)] as const;
      });
    const p = sectionProperties(solid(millimetres([...arc(20.25), ...arc(19.75).reverse()])));
    expect(relative(p.shearCentre.y * 1000, -40)).toBeLessThan(5e-3);
    expect(Math.abs(p.shearCentre.z * 1000)).toBeLessThan(0.05);
  });
});

describe("how properties change with the drawing", () => {
  const original = sectionProperties(lightSquare);

  it("turning and moving changes neither J, Wt nor Iw, and takes the shear centre along", () => {
    const region = channel(20, 40, 2);
    const straight = sectionProperties(region);
    const angle = 0.6;
    const turned = sectionProperties(placed(region, angle, 0.1, -0.3));
    expect(relative(turned.J, straight.J)).toBeLessThan(1e-3);
    expect(relative(turned.Wt, straight.Wt)).toBeLessThan(0.02);
    expect(relative(turned.Iw, straight.Iw)).toBeLessThan(2e-3);
    const { y, z } = straight.shearCentre;
    expect(turned.shearCentre.y).toBeCloseTo(0.1 + y * Math.cos(angle) - z * Math.sin(angle), 5);
    expect(turned.shearCentre.z).toBeCloseTo(-0.3 + y * Math.sin(angle) + z * Math.cos(angle), 5);
  });

  it("scaling gives the powers of size, to rounding, since the mesh scales too", () => {
    const big = sectionProperties(scaled(lightSquare, 8));
    expect(relative(big.J, 8 ** 4 * original.J)).toBeLessThan(1e-9);
    expect(relative(big.Avy, 8 ** 2 * original.Avy)).toBeLessThan(1e-9);
    expect(relative(big.Wt, 8 ** 3 * original.Wt)).toBeLessThan(1e-9);
    expect(relative(big.Iw, 8 ** 6 * original.Iw)).toBeLessThan(1e-9);
  });

  it("the same drawing gives the same bits", () => {
    expect(sectionProperties(lightSquare)).toEqual(original);
  });

  it("joining two sections makes J at least the sum (superadditive), A exactly the sum", () => {
    const half = sectionProperties(solid(rectangle(20, 40, -10)));
    const whole = sectionProperties(solid(rectangle(40, 40)));
    expect(whole.torsionBand.low).toBeGreaterThan(2 * half.torsionBand.high);
    expect(relative(whole.A, 2 * half.A)).toBeLessThan(1e-12);
  });
});

describe("greatest torsional stress at re-entrant corners", () => {
  const sharp = sectionProperties(s40);

  it("hardly depends on whether small fillets are drawn", () => {
    for (const radius of [0.1, 0.3, 1]) {
      const { Wt, J } = sectionProperties(solid(rounded(s40.outer, radius)));
      expect(relative(Wt / J, sharp.Wt / sharp.J)).toBeLessThan(0.02);
    }
  });

  it("nor on the mesh: half a degree of turning makes another one", () => {
    const { Wt } = sectionProperties(placed(s40, Math.PI / 360));
    expect(relative(Wt, sharp.Wt)).toBeLessThan(0.005);
  });

  it("does not see the corners of a bore drawn as a polygon: 16 sides give what 64 give", () => {
    const bored = (n: number) => sectionProperties({ outer: rectangle(20, 20), holes: [ellipse(4, 4, n)] }).Wt;
    expect(relative(bored(16), bored(64))).toBeLessThan(2e-3);
  });

  it("is that of the thin tube times at most 1.5 in a thin box, whatever the wall (Bredt)", () => {
    for (const t of [0.5, 1, 2]) {
      const bredt = 2 * (60 - t) * (30 - t) * t;
      const factor = bredt / (sectionProperties(box(60, 30, t)).Wt * 1e9);
      expect(factor).toBeGreaterThan(1.3);
      expect(factor).toBeLessThan(1.5);
    }
  });
});

describe("what slots do to a bar", () => {
  const open = sectionProperties(lightSquare);
  const closed = sectionProperties(lightSquareOneClosed);

  it("open slots leave 1/15 to 1/27 of the polar moment, on a light section", () => {
    const share = (open.Iy + open.Iz) / open.J;
    expect(share).toBeGreaterThan(15);
    expect(share).toBeLessThan(27);
  });

  it("closing one slot triples J and moves the shear centre towards it", () => {
    expect(closed.J / open.J).toBeGreaterThan(3);
    expect(closed.J / open.J).toBeLessThan(4);
    expect(eccentricity(open)).toBeLessThan(1e-6);
    expect(closed.shearCentre.z - closed.centroid.z).toBeLessThan(-3e-3);
    expect(closed.shearCentre.y - closed.centroid.y).toBeCloseTo(0, 5);
  });

  it("shear areas are a fifth to two fifths of the area", () => {
    for (const { A, Avy, Avz } of [open, sectionProperties(s40)]) {
      for (const share of [Avy / A, Avz / A]) {
        expect(share).toBeGreaterThan(0.22);
        expect(share).toBeLessThan(0.37);
      }
    }
  });

  it("bands are narrower than 0.2 % and contain J", () => {
    for (const { J, torsionBand } of [open, closed, sectionProperties(s40)]) {
      expect(torsionBand.low).toBeLessThan(J);
      expect(torsionBand.high).toBeGreaterThan(J);
      expect((torsionBand.high - torsionBand.low) / J).toBeLessThan(2.1e-3);
    }
  });
});

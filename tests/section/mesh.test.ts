import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { area, type Region } from "../../src/geometry/polygon.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { checkRings } from "../../src/section/check-rings.ts";
import { toGrid } from "../../src/section/grid.ts";
import { refine } from "../../src/section/refine.ts";
import { sectionProperties } from "../../src/section/section-properties.ts";
import { triangulate } from "../../src/section/triangulate.ts";
import { apex, head, type Triangulation, turn } from "../../src/section/triangulation.ts";
import {
  box,
  lightSquare,
  lightSquareOneClosed,
  millimetres,
  placed,
  rectangle,
  s40,
  solid,
  stackedS40,
} from "./shapes.ts";

const corner = (m: Triangulation, e: number): number => m.corner[e] ?? -1;

function meshed(region: Region, longest = 2 ** 23): { m: Triangulation; step: number } {
  const grid = toGrid(region);
  checkRings(grid);
  const m = triangulate(grid);
  refine(m, () => longest, [], 50_000);
  return { m, step: grid.step };
}

/** Every triangle turns anticlockwise, neighbours know each other and share their corners; returns the area and the smallest angle. */
function audit(m: Triangulation): { area: number; smallest: number } {
  let twice = 0;
  let smallest = Math.PI;
  for (let e = 0; e < 3 * m.triangles; e++) {
    const [a, b, c] = [corner(m, e), head(m, e), apex(m, e)];
    const t = turn(m, a, b, c);
    expect(t).toBeGreaterThan(0);
    if (e % 3 === 0) twice += t;
    const f = m.twin[e] ?? -1;
    if (f >= 0) {
      expect(m.twin[f]).toBe(e);
      expect(corner(m, f)).toBe(b);
      expect(head(m, f)).toBe(a);
    }
    const [by, bz] = [(m.y[b] ?? 0) - (m.y[a] ?? 0), (m.z[b] ?? 0) - (m.z[a] ?? 0)];
    const [cy, cz] = [(m.y[c] ?? 0) - (m.y[a] ?? 0), (m.z[c] ?? 0) - (m.z[a] ?? 0)];
    smallest = Math.min(smallest, Math.atan2(t, by * cy + bz * cz));
  }
  return { area: twice / 2, smallest };
}

/** A star-shaped polygon with a small star-shaped hole about the same middle. */
const stars = fc
  .tuple(
    fc.array(fc.double({ min: 0.3, max: 1, noNaN: true }), { minLength: 3, maxLength: 14 }),
    fc.array(fc.double({ min: 0.02, max: 0.1, noNaN: true }), { minLength: 3, maxLength: 8 }),
    fc.double({ min: 0, max: 6, noNaN: true }),
  )
  .map(([out, inn, turned]): Region => {
    const ring = (radii: readonly number[]) =>
      millimetres(
        radii.map((r, i): Vec2 => {
          const angle = turned + (2 * Math.PI * i) / radii.length;
          return [40 * r * Math.cos(angle), 40 * r * Math.sin(angle)];
        }),
      );
    // With three points the middle may come too near an edge.
    return out.length < 5 ? solid(ring(out)) : { outer: ring(out), holes: [ring(inn)] };
  });

describe("meshing", () => {
  const sections: Record<string, Region> = {
    rectangle: solid(rectangle(6, 40)),
    box: box(40, 40, 0.3),
    s40,
    stackedS40,
    lightSquare,
    lightSquareOneClosed,
    // Rows of holes: many points on one line, and box corners that edges across a hole's side lead to.
    sieve: {
      outer: rectangle(40, 40),
      holes: [-13, 0, 13].flatMap((y) => [-13, 0, 13].map((z) => rectangle(6, 6, y, z))),
    },
    turned: placed(lightSquare, 0.4, 1, 2),
  };
  for (const [name, region] of Object.entries(sections)) {
    it(`covers ${name} with well-shaped triangles`, () => {
      const { m, step } = meshed(region);
      const found = audit(m);
      expect(Math.abs((found.area * step * step) / area(region) - 1)).toBeLessThan(1e-6);
      expect(found.smallest).toBeGreaterThan((23 * Math.PI) / 180);
    });
  }

  it("keeps on the grid for any star with a hole, and J within its bounds and below the polar moment", () => {
    fc.assert(
      fc.property(stars, (region) => {
        const { m, step } = meshed(region);
        expect(Math.abs((audit(m).area * step * step) / area(region) - 1)).toBeLessThan(1e-6);
        const { J, torsionBand, Iy, Iz, A, Avy, Avz } = sectionProperties(region);
        expect(torsionBand.low).toBeLessThanOrEqual(J);
        expect(torsionBand.high).toBeGreaterThanOrEqual(J);
        expect((torsionBand.high - torsionBand.low) / J).toBeLessThan(0.01);
        expect(J).toBeLessThan((Iy + Iz) * (1 + 1e-6));
        expect(Avy).toBeLessThan(A);
        expect(Avz).toBeLessThan(A);
      }),
      { numRuns: 40, seed: 7 },
    );
  });

  it("ends on needles, slits and specks", () => {
    const needle = solid(
      millimetres([
        [0, 0],
        [40, 0.2],
        [40, -0.2],
      ]),
    );
    const slit = solid(
      millimetres([
        [0, 0],
        [40, 0],
        [40, 20],
        [0, 20],
        [0, 10.001],
        [30, 10.001],
        [30, 9.999],
        [0, 9.999],
      ]),
    );
    const speck: Region = { outer: rectangle(40, 40), holes: [rectangle(0.01, 0.01, 3, 2)] };
    const near: Region = { outer: rectangle(40, 40), holes: [rectangle(10, 10, 14.99)] };
    for (const region of [needle, slit, speck, near]) {
      const { J, torsionBand } = sectionProperties(region);
      expect((torsionBand.high - torsionBand.low) / J).toBeLessThan(0.01);
    }
  });
});

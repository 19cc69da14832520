import fc from "fast-check";
import polygonClipping from "polygon-clipping";
import { describe, expect, it } from "vitest";
import { areaOf, difference, intersection, union } from "../../src/geometry/clip.ts";
import type { Region, Ring } from "../../src/geometry/polygon.ts";
import { rotateRegion, translateRegion } from "../../src/geometry/region-transform.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { between } from "./arbitraries.ts";

const square = (x: number, y: number, size: number): Region => ({
  outer: [
    [x, y],
    [x + size, y],
    [x + size, y + size],
    [x, y + size],
  ],
  holes: [],
});

/** Snapping moves a point by at most 0.7e-9 m, so an area by at most that times the perimeter [m²]. */
const SNAP_AREA = 1e-8;

/** Park-Miller: the same noise on every run. */
function noise(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** A slotted 40 x 40 mm outline: a square with a T-shaped notch in each side, about the origin. */
const slotted: Region = (() => {
  const quarter: Ring = [
    [0.004, -0.02],
    [0.02, -0.02],
    [0.02, -0.004],
    [0.0155, -0.004],
    [0.0155, -0.01],
    [0.011, -0.004],
    [0.011, 0.004],
    [0.0155, 0.01],
    [0.0155, 0.004],
    [0.02, 0.004],
  ];
  const outer: Vec2[] = [];
  for (let turn = 0; turn < 4; turn += 1) {
    const [c, s] = [[1, 0, -1, 0][turn] ?? 0, [0, 1, 0, -1][turn] ?? 0];
    for (const [x, y] of quarter.slice(1)) outer.push([c * x - s * y, s * x + c * y]);
  }
  return { outer, holes: [] };
})();

describe("clipping", () => {
  it("counts two unit squares a quarter over each other by hand: union 1.75, common 0.25, left over 0.75", () => {
    const [a, b] = [square(0, 0, 1), square(0.5, 0.5, 1)];
    expect(areaOf(union([a, b]))).toBeCloseTo(1.75, 12);
    expect(areaOf(intersection([a], [b]))).toBeCloseTo(0.25, 12);
    expect(areaOf(difference([a], [b]))).toBeCloseTo(0.75, 12);
  });

  it("returns rings open and holes as holes: a 3 x 3 square less its middle has one region, one hole of 4 points", () => {
    const [frame, ...rest] = difference([square(0, 0, 3)], [square(1, 1, 1)]);
    expect(rest).toEqual([]);
    expect(frame?.outer.length).toBe(4);
    expect(frame?.holes.map((hole) => hole.length)).toEqual([4]);
    expect(areaOf(frame ? [frame] : [])).toBeCloseTo(8, 12);
  });

  it("joins squares that share an edge into one, and finds no common area where they only touch", () => {
    expect(union([square(0, 0, 1), square(1, 0, 1)]).length).toBe(1);
    expect(intersection([square(0, 0, 1)], [square(1, 0, 1)])).toEqual([]);
    // 0.4 nm apart is the same place on the grid.
    expect(union([square(0, 0, 1), square(1 + 4e-10, 0, 1)]).length).toBe(1);
  });

  it("copes with nothing", () => {
    expect(union([])).toEqual([]);
    expect(intersection([square(0, 0, 1)], [])).toEqual([]);
    expect(difference([], [square(0, 0, 1)])).toEqual([]);
    expect(areaOf(difference([square(0, 0, 1)], []))).toBe(1);
  });

  it("keeps what one cap does not cover: 1600 mm² of cut end less a 25 mm square plate is 975 mm²", () => {
    expect(areaOf(difference([square(0, 0, 0.04)], [square(0.005, 0.005, 0.025)]))).toBeCloseTo(975e-6, 12);
  });

  it("never gives up on 400 unions of slotted outlines with noise of 1e-9 to 1e-14 m", () => {
    const random = noise(7);
    const alone = areaOf(union([slotted]));
    for (let run = 0; run < 400; run += 1) {
      const size = 10 ** -(9 + (run % 6));
      const shake = (region: Region): Region => ({
        outer: region.outer.map(([x, y]): Vec2 => [x + (random() - 0.5) * size, y + (random() - 0.5) * size]),
        holes: [],
      });
      // Same place, shifted along by a slot width, and turned by a quarter: edges lie on edges but for the noise.
      const moved =
        [slotted, translateRegion(slotted, [0.008, 0]), rotateRegion(slotted, Math.PI / 2)][run % 3] ?? slotted;
      const [a, b] = [shake(slotted), shake(moved)];
      const [all, common] = [areaOf(union([a, b])), areaOf(intersection([a], [b]))];
      expect(Math.abs(all + common - 2 * alone)).toBeLessThan(SNAP_AREA);
    }
  });

  it("joins a 20 mm square and a 20 x 80 mm plate lying along it at 45°, which leaves the sweep with an open ring: 2000 mm²", () => {
    const post: Region = {
      outer: [
        [-0.014142136, -0.014142136],
        [-0.028284271, 0],
        [-0.042426407, -0.014142136],
        [-0.028284271, -0.028284271],
      ],
      holes: [],
    };
    const plate: Region = {
      outer: [
        [0.021213203, 0.021213203],
        [-0.035355339, -0.035355339],
        [-0.021213203, -0.049497475],
        [0.035355339, 0.007071068],
      ],
      holes: [],
    };
    const ring = (region: Region): [number, number][] => region.outer.map(([x, y]) => [x, y]);
    expect(() => polygonClipping.union([ring(post)], [ring(plate)])).toThrow("Unable to complete output ring");
    expect(Math.abs(areaOf(union([post, plate])) - 2000e-6)).toBeLessThan(SNAP_AREA);
  });

  it("never gives up on 2,000 heaps of rectangles at multiples of 22.5°, some of them 1e-8 rad off: areas add up", () => {
    const random = noise(99);
    const pick = (values: readonly number[]): number => values[Math.floor(random() * values.length)] ?? 0;
    for (let run = 0; run < 2000; run += 1) {
      const base = (Math.floor(random() * 8) * Math.PI) / 8;
      const heap = Array.from({ length: 2 + Math.floor(random() * 5) }, (): Region => {
        const [w, h] = [pick([0.02, 0.01, 0.04, 0.005]), pick([0.02, 0.01, 0.5, 0.0155])];
        const [x, y] = [Math.round(random() * 4) / 100, Math.round(random() * 4) / 100];
        const angle = base + (random() < 0.7 ? Math.floor(random() * 4) * (Math.PI / 2) : random() * 1e-8);
        const outer: Ring = [
          [x - w, y - h],
          [x + w, y - h],
          [x + w, y + h],
          [x - w, y + h],
        ];
        return rotateRegion({ outer, holes: [] }, angle);
      });
      const [first, others] = [heap.slice(0, 1), union(heap.slice(1))];
      const left = areaOf(difference(first, others));
      expect(Math.abs(areaOf(union(heap)) - left - areaOf(others))).toBeLessThan(SNAP_AREA);
      expect(Math.abs(areaOf(intersection(first, others)) + left - areaOf(first))).toBeLessThan(SNAP_AREA);
    }
  });

  it("adds up for any squares at any angle: |A ∪ B| = |A| + |B| − |A ∩ B| and |A \\ B| = |A| − |A ∩ B|", () => {
    const placed = fc
      .tuple(between(0, 1), between(0, 1), between(-3, 3))
      .map(([x, y, angle]) => rotateRegion(square(x, y, 1), angle, [x, y]));
    fc.assert(
      fc.property(placed, placed, (a, b) => {
        const common = areaOf(intersection([a], [b]));
        expect(Math.abs(areaOf(union([a, b])) - (2 - common))).toBeLessThan(SNAP_AREA);
        expect(Math.abs(areaOf(difference([a], [b])) - (1 - common))).toBeLessThan(SNAP_AREA);
        expect(Math.abs(areaOf(intersection([b], [a])) - common)).toBeLessThan(SNAP_AREA);
      }),
    );
  });
});

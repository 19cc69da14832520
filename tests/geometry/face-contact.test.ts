import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { faceContact } from "../../src/geometry/face-contact.ts";
import type { Face } from "../../src/geometry/prism.ts";
import { prismFromBox } from "../../src/geometry/prism.ts";
import { distance, rotateAbout, type Vec3 } from "../../src/geometry/vector.ts";
import { between, motions, moveFace, uprightBox } from "./arbitraries.ts";

/** One degree: what a bar may be out of square and still seat, in these tests. */
const DEGREE = Math.PI / 180;

const faceOf = (centre: Vec3, half: Vec3, index: number): Face => {
  const face = prismFromBox(uprightBox(centre, half)).faces[index];
  if (face === undefined) throw new Error("a box has six faces");
  return face;
};
/** Right end (+x) of a 40 x 80 mm rail that ends at x = 0. */
const end = faceOf([-0.5, 0, 0], [0.5, 0.02, 0.04], 1);
/** Left side (-x) of a 40 x 40 mm post 1 m tall whose face is at x = gap. */
const post = (gap: number, y = 0, z = 0): Face => faceOf([gap + 0.02, y, z], [0.02, 0.02, 0.5], 0);

describe("face contact", () => {
  it("seats a 40 x 80 mm end flush on a 40 mm post: gap 0, 3200 mm², about the end's middle", () => {
    const contact = faceContact(end, post(0), DEGREE);
    expect(contact?.area).toBeCloseTo(0.0032, 14);
    expect(contact?.gap).toBeCloseTo(0, 14);
    expect(distance(contact?.middle ?? [1, 1, 1], [0, 0, 0])).toBeLessThan(1e-14);
    expect(contact?.overlap.length).toBe(4);
  });

  it("measures by hand a post 0.5 mm away, 15 mm aside, ending 10 mm up the rail: 25 x 50 mm", () => {
    // y: rail -20…20, post -5…35, common 25 mm; z: rail -40…40, post from -10 up, common 50 mm.
    const contact = faceContact(end, post(0.0005, 0.015, 0.49), DEGREE);
    expect(contact?.gap).toBeCloseTo(0.0005, 14);
    expect(contact?.area).toBeCloseTo(0.025 * 0.05, 14);
    expect(distance(contact?.middle ?? [1, 1, 1], [0, 0.0075, 0.015])).toBeLessThan(1e-14);
  });

  it("counts a face inside the other body as a negative gap", () => {
    expect(faceContact(end, post(-0.001), DEGREE)?.gap).toBeCloseTo(-0.001, 14);
  });

  it("has no area side by side or edge to edge, and still tells the gap", () => {
    for (const aside of [0.04, 0.5]) {
      const contact = faceContact(end, post(0.002, aside), DEGREE);
      expect(contact?.area).toBe(0);
      expect(contact?.overlap).toEqual([]);
      expect(contact?.gap).toBeCloseTo(0.002, 12);
    }
  });

  it("opens a wedge for a post 0.5° out of plumb: tan 0.5° over the 80 mm of the end", () => {
    const lean = DEGREE / 2;
    const upright = post(0);
    const turned: Face = {
      normal: rotateAbout(upright.normal, [0, 1, 0], lean),
      vertices: upright.vertices.map((p) => rotateAbout(p, [0, 1, 0], lean)),
    };
    const contact = faceContact(end, turned, DEGREE);
    expect(contact?.tilt).toBeCloseTo(lean, 12);
    expect((contact?.widestGap ?? 0) - (contact?.leastGap ?? 0)).toBeCloseTo(0.08 * Math.tan(lean), 12);
    expect(contact?.gap).toBeCloseTo(0, 12);
    expect(faceContact(end, turned, lean * 0.99)).toBeUndefined();
  });

  it("is no contact between faces that look the same way, or are square to each other", () => {
    expect(faceContact(end, end, DEGREE)).toBeUndefined();
    expect(faceContact(end, faceOf([0, 0, 0], [1, 1, 1], 2), DEGREE)).toBeUndefined();
    expect(faceContact({ normal: [1, 0, 0], vertices: [] }, end, DEGREE)).toBeUndefined();
    expect(faceContact(end, { normal: [-1, 0, 0], vertices: [] }, DEGREE)).toBeUndefined();
  });

  it("does not depend on place, and gives both faces the same gap and area", () => {
    fc.assert(
      fc.property(motions, between(-0.01, 0.01), between(-0.05, 0.05), (m, gap, aside) => {
        const there = post(gap, aside, aside * 9);
        const still = faceContact(end, there, DEGREE);
        const moved = faceContact(moveFace(m, end), moveFace(m, there), DEGREE);
        const back = faceContact(there, end, DEGREE);
        for (const other of [moved, back]) {
          expect(other?.gap).toBeCloseTo(still?.gap ?? Number.NaN, 11);
          // An overlap may fall either side of the smallest area that counts, 1e-9 m².
          expect(Math.abs((other?.area ?? 0) - (still?.area ?? 0))).toBeLessThan(2e-9);
        }
      }),
    );
  });
});

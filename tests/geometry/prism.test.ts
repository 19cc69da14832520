import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boxPenetration } from "../../src/geometry/box.ts";
import { mitrePlane } from "../../src/geometry/plane.ts";
import { barPrism, cutPrism, faceArea, prismBounds, prismFromBox, prismVolume } from "../../src/geometry/prism.ts";
import { prismPenetration } from "../../src/geometry/prism-penetration.ts";
import { add, distance, dot, normalise, scale, subtract, type Vec3 } from "../../src/geometry/vector.ts";
import { boxes, directions, motions, movePrism, points, uprightBox } from "./arbitraries.ts";

/** Rounding over some metres [m]; after a rigid motion one digit more is given away. */
const TOUCH = 1e-12;
const MOVED = 1e-11;

/** A 40 x 40 mm bar from the corner at the origin along +x, 1 m on the centreline, mitred against a bar along +y. */
const mitred = barPrism(uprightBox([0.475, 0, 0], [0.525, 0.02, 0.02]), [mitrePlane([0, 0, 0], [1, 0, 0], [0, 1, 0])]);
const partner = barPrism(uprightBox([0, 0.475, 0], [0.02, 0.525, 0.02]), [mitrePlane([0, 0, 0], [0, 1, 0], [1, 0, 0])]);

describe("prisms", () => {
  it("makes a box of 6 faces, 8 vertices, 3 edge directions, normals outwards", () => {
    const prism = prismFromBox(uprightBox([1, 2, 3], [0.1, 0.2, 0.3]));
    expect([prism.faces.length, prism.vertices.length, prism.edges.length]).toEqual([6, 8, 3]);
    expect(prismVolume(prism)).toBeCloseTo(0.2 * 0.4 * 0.6, 14);
    for (const { normal, vertices } of prism.faces) {
      for (const vertex of vertices) expect(dot(subtract(vertex, [1, 2, 3]), normal)).toBeGreaterThan(0.09);
    }
    expect(prismBounds(prism).min[2]).toBeCloseTo(2.7, 14);
  });

  it("mitres a 40 mm bar at 45° by hand: cut face 40 x 40·√2 mm, volume 40 x 40 x 1000 mm, long point at -20 mm", () => {
    if (mitred === undefined) throw new Error("the cut left nothing");
    expect(mitred.faces.length).toBe(6);
    expect(mitred.vertices.length).toBe(8);
    const cut = mitred.faces[mitred.faces.length - 1];
    expect(cut && faceArea(cut)).toBeCloseTo(0.04 * 0.04 * Math.SQRT2, 12);
    expect(prismVolume(mitred)).toBeCloseTo(0.04 * 0.04 * 1, 12);
    expect(prismBounds(mitred).min[0]).toBeCloseTo(-0.02, 12);
  });

  it("lets mitred bars touch where the uncut boxes clash by 20 mm and more", () => {
    if (mitred === undefined || partner === undefined) throw new Error("the cut left nothing");
    expect(Math.abs(prismPenetration(mitred, partner).depth)).toBeLessThanOrEqual(TOUCH);
    const uncut = boxPenetration(
      uprightBox([0.475, 0, 0], [0.525, 0.02, 0.02]),
      uprightBox([0, 0.475, 0], [0.02, 0.525, 0.02]),
    );
    expect(uncut.depth).toBeGreaterThan(0.02);
  });

  it("keeps a prism a plane misses, loses one it clears, and cuts a corner into a triangle", () => {
    const cube = prismFromBox(uprightBox([0, 0, 0], [1, 1, 1]));
    expect(cutPrism(cube, { point: [2, 0, 0], normal: [1, 0, 0] })).toBe(cube);
    expect(cutPrism(cube, { point: [1, 0, 0], normal: [1, 0, 0] })).toBe(cube);
    expect(cutPrism(cube, { point: [-1, 0, 0], normal: [1, 0, 0] })).toBeUndefined();
    // The plane x + y + z = 2 takes the corner tetrahedron with legs 1: 8 - 1/6, triangle with sides √2.
    const cornered = cutPrism(cube, { point: [1, 1, 0], normal: normalise([1, 1, 1]) });
    if (cornered === undefined) throw new Error("the cut left nothing");
    expect(cornered.faces.length).toBe(7);
    expect(prismVolume(cornered)).toBeCloseTo(8 - 1 / 6, 12);
    const triangle = cornered.faces[6];
    expect(triangle?.vertices.length).toBe(3);
    expect(triangle && faceArea(triangle)).toBeCloseTo(Math.sqrt(3) / 2, 12);
  });

  it("cuts through vertices and edges: a cube halved along its diagonal plane is a wedge of 5 faces, 6 vertices", () => {
    const wedge = cutPrism(prismFromBox(uprightBox([0, 0, 0], [1, 1, 1])), {
      point: [0, 0, 0],
      normal: normalise([1, 1, 0]),
    });
    expect([wedge?.faces.length, wedge?.vertices.length]).toEqual([5, 6]);
    expect(wedge && prismVolume(wedge)).toBeCloseTo(4, 12);
  });

  it("splits any box at any plane into parts that add up and only touch", () => {
    fc.assert(
      fc.property(boxes, points, directions, (box, aside, direction) => {
        const normal = normalise(direction);
        const plane = { point: add(box.centre, scale(aside, 0.05)), normal };
        const whole = prismFromBox(box);
        const near = cutPrism(whole, plane);
        const far = cutPrism(whole, { point: plane.point, normal: scale(normal, -1) });
        const sum = (near ? prismVolume(near) : 0) + (far ? prismVolume(far) : 0);
        expect(Math.abs(sum - prismVolume(whole))).toBeLessThan(1e-9);
        if (near && far) expect(prismPenetration(near, far).depth).toBeLessThanOrEqual(2e-10);
      }),
    );
  });

  it("agrees with the box test on boxes, and on itself after a rigid motion", () => {
    fc.assert(
      fc.property(boxes, boxes, motions, (a, b, m) => {
        const [p, q] = [prismFromBox(a), prismFromBox(b)];
        const { depth } = prismPenetration(p, q);
        expect(Math.abs(boxPenetration(a, b).depth - depth)).toBeLessThanOrEqual(MOVED);
        expect(Math.abs(prismPenetration(movePrism(m, p), movePrism(m, q)).depth - depth)).toBeLessThanOrEqual(MOVED);
        expect(Math.abs(prismPenetration(q, p).depth - depth)).toBeLessThanOrEqual(MOVED);
      }),
    );
  });

  it("points the axis from the first to the second", () => {
    const [a, b] = [prismFromBox(uprightBox([0, 0, 0], [1, 1, 1])), prismFromBox(uprightBox([0, 0, -1.9], [1, 1, 1]))];
    const { depth, axis } = prismPenetration(a, b);
    expect(depth).toBeCloseTo(0.1, 12);
    expect(distance(axis, [0, 0, -1] as Vec3)).toBeLessThan(TOUCH);
  });
});

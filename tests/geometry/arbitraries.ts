import fc from "fast-check";
import type { OrientedBox } from "../../src/geometry/box.ts";
import type { Face, Prism } from "../../src/geometry/prism.ts";
import { add, rotateAbout, type Vec3 } from "../../src/geometry/vector.ts";

/** A rigid motion: a turn about an axis through the origin, then a shift [m]. */
export interface Motion {
  readonly axis: Vec3;
  readonly angle: number;
  readonly shift: Vec3;
}

/**
 * Numbers spread evenly between two bounds, both included. fast-check's own doubles crowd round zero, where bodies of some metres
 * all look alike.
 */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((step) => min + ((max - min) * step) / 1_000_000);

const metres = (reach: number): fc.Arbitrary<number> => between(-reach, reach);

export const points: fc.Arbitrary<Vec3> = fc.tuple(metres(3), metres(3), metres(3));

/** Directions of useful length; the zero vector has its own tests. */
export const directions: fc.Arbitrary<Vec3> = fc
  .tuple(metres(1), metres(1), metres(1))
  .filter(([x, y, z]) => Math.hypot(x, y, z) > 0.1);

export const motions: fc.Arbitrary<Motion> = fc.record({ axis: directions, angle: metres(3), shift: points });

export const turn = (m: Motion, v: Vec3): Vec3 => rotateAbout(v, m.axis, m.angle);
export const move = (m: Motion, p: Vec3): Vec3 => add(turn(m, p), m.shift);
export const moveFace = (m: Motion, f: Face): Face => ({
  normal: turn(m, f.normal),
  vertices: f.vertices.map((p) => move(m, p)),
});
export const movePrism = (m: Motion, p: Prism): Prism => ({
  faces: p.faces.map((f) => moveFace(m, f)),
  vertices: p.vertices.map((v) => move(m, v)),
  edges: p.edges.map((e) => turn(m, e)),
});
export const moveBox = (m: Motion, b: OrientedBox): OrientedBox => ({
  centre: move(m, b.centre),
  axes: [turn(m, b.axes[0]), turn(m, b.axes[1]), turn(m, b.axes[2])],
  half: b.half,
});

export const uprightBox = (centre: Vec3, half: Vec3): OrientedBox => ({
  centre,
  axes: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  half,
});

const halves: fc.Arbitrary<number> = between(0.01, 0.8);

export const boxes: fc.Arbitrary<OrientedBox> = fc
  .record({ motion: motions, half: fc.tuple(halves, halves, halves) })
  .map(({ motion, half }) => moveBox(motion, uprightBox([0, 0, 0], half)));

import { type Bounds3, boundsOf } from "./bounds.ts";
import type { OrientedBox } from "./box.ts";
import { type Plane, signedDistance } from "./plane.ts";
import {
  add,
  along,
  cross,
  distance,
  dot,
  length,
  lerp,
  normalise,
  perpendicularPair,
  scale,
  subtract,
  type Vec3,
} from "./vector.ts";

/** A flat convex side of a body: vertices [m] counter-clockwise seen from outside, unit normal pointing out. */
export interface Face {
  readonly normal: Vec3;
  readonly vertices: readonly Vec3[];
}

/** A convex body with flat sides: a bar with its end cuts. Faces, vertices, and the edge directions without repeats. */
export interface Prism {
  readonly faces: readonly Face[];
  readonly vertices: readonly Vec3[];
  readonly edges: readonly Vec3[];
}

/** Points nearer to each other, and to a cutting plane, than this are one, or on it [m]. */
const SAME_POINT = 1e-10;
/** Sine [rad] under which two edges or two normals count as parallel. */
const PARALLEL_SINE = 1e-9;

const parallel = (a: Vec3, b: Vec3): boolean => length(cross(a, b)) <= PARALLEL_SINE;

/** A prism from its faces. */
export function prismOf(faces: readonly Face[]): Prism {
  const vertices: Vec3[] = [];
  const edges: Vec3[] = [];
  for (const { vertices: loop } of faces) {
    let previous = loop[loop.length - 1];
    for (const vertex of loop) {
      if (!vertices.some((known) => distance(known, vertex) <= SAME_POINT)) vertices.push(vertex);
      if (previous !== undefined && distance(previous, vertex) > SAME_POINT) {
        const edge = normalise(subtract(vertex, previous));
        if (!edges.some((known) => parallel(known, edge))) edges.push(edge);
      }
      previous = vertex;
    }
  }
  return { faces, vertices, edges };
}

/** A body moved by so much [m]. */
export function shifted(prism: Prism, by: Vec3): Prism {
  return {
    faces: prism.faces.map(({ normal, vertices }) => ({ normal, vertices: vertices.map((p) => add(p, by)) })),
    vertices: prism.vertices.map((p) => add(p, by)),
    edges: prism.edges,
  };
}

/** A box as a prism: faces in the order −x, +x, −y, +y, −z, +z of the box's own axes (taken right-handed). */
export function prismFromBox(box: OrientedBox): Prism {
  const faces: Face[] = [];
  for (const [i, j, k] of [
    [0, 1, 2],
    [1, 2, 0],
    [2, 0, 1],
  ] as const) {
    for (const side of [-1, 1]) {
      const normal = scale(box.axes[i], side);
      const middle = along(box.centre, normal, box.half[i]);
      const u = scale(box.axes[j], box.half[j]);
      const v = scale(box.axes[k], box.half[k]);
      const loop = [
        [-1, -1],
        [1, -1],
        [1, 1],
        [-1, 1],
      ].map(([s = 0, t = 0]) => along(along(middle, u, s), v, t));
      faces.push({ normal, vertices: counterClockwise(loop, normal) });
    }
  }
  return prismOf(faces);
}

/** A flat convex plate: its loop on one side [m], either way round, made `thickness` thick along the unit normal. */
export function platePrism(loop: readonly Vec3[], normal: Vec3, thickness: number): Prism {
  const down = scale(normal, -1);
  const base = counterClockwise(loop, down);
  const top = counterClockwise(
    loop.map((point) => along(point, normal, thickness)),
    normal,
  );
  const faces: Face[] = [
    { normal: down, vertices: base },
    { normal, vertices: top },
  ];
  let from = top[top.length - 1];
  for (const to of top) {
    if (from === undefined) break;
    const side = normalise(cross(subtract(to, from), normal));
    const [a, b] = [along(from, normal, -thickness), along(to, normal, -thickness)];
    faces.push({ normal: side, vertices: [a, b, to, from] });
    from = to;
  }
  return prismOf(faces);
}

function counterClockwise(loop: readonly Vec3[], normal: Vec3): readonly Vec3[] {
  return dot(vectorArea(loop), normal) < 0 ? [...loop].reverse() : loop;
}

/** Half the sum of cross products round a flat loop: along its normal, as long as its area [m²]. */
export function vectorArea(loop: readonly Vec3[]): Vec3 {
  const [first, ...rest] = loop;
  let sum: Vec3 = [0, 0, 0];
  if (first === undefined) return sum;
  let previous: Vec3 = [0, 0, 0];
  for (const vertex of rest) {
    const spoke = subtract(vertex, first);
    sum = along(sum, cross(previous, spoke), 0.5);
    previous = spoke;
  }
  return sum;
}

/** Area of a face [m²]. */
export const faceArea = (face: Face): number => length(vectorArea(face.vertices));

/** The part of a loop on the negative side of a plane, and the points of it that lie on the plane. */
function cutLoop(loop: readonly Vec3[], plane: Plane): { kept: readonly Vec3[]; onPlane: readonly Vec3[] } {
  const kept: Vec3[] = [];
  const onPlane: Vec3[] = [];
  let previous = loop[loop.length - 1];
  for (const vertex of loop) {
    if (previous === undefined) break;
    const [d0, d1] = [signedDistance(plane, previous), signedDistance(plane, vertex)];
    if ((d0 > SAME_POINT && d1 < -SAME_POINT) || (d0 < -SAME_POINT && d1 > SAME_POINT)) {
      const crossing = lerp(previous, vertex, d0 / (d0 - d1));
      kept.push(crossing);
      onPlane.push(crossing);
    }
    if (d1 <= SAME_POINT) kept.push(vertex);
    if (Math.abs(d1) <= SAME_POINT) onPlane.push(vertex);
    previous = vertex;
  }
  return { kept, onPlane };
}

/** Points of one plane put in order round their middle, points that are one dropped. */
function roundLoop(points: readonly Vec3[], normal: Vec3): readonly Vec3[] {
  const distinct: Vec3[] = [];
  for (const p of points) if (!distinct.some((known) => distance(known, p) <= SAME_POINT)) distinct.push(p);
  const middle = scale(
    distinct.reduce((sum, p) => along(sum, p, 1), [0, 0, 0] as Vec3),
    1 / Math.max(1, distinct.length),
  );
  const [u, v] = perpendicularPair(normal);
  return distinct
    .map((p) => ({ p, angle: Math.atan2(dot(subtract(p, middle), v), dot(subtract(p, middle), u)) }))
    .sort((a, b) => a.angle - b.angle)
    .map(({ p }) => p);
}

/**
 * What is left of a prism after sawing along a plane and dropping the side its normal points to; the new face comes last.
 * A plane that misses the prism leaves it as it is; undefined where nothing, or nothing thicker than 1e-10 m, is left.
 */
export function cutPrism(prism: Prism, plane: Plane): Prism | undefined {
  const distances = prism.vertices.map((vertex) => signedDistance(plane, vertex));
  if (distances.every((d) => d <= SAME_POINT)) return prism;
  if (distances.every((d) => d >= -SAME_POINT)) return undefined;
  const faces: Face[] = [];
  const rim: Vec3[] = [];
  for (const face of prism.faces) {
    const { kept, onPlane } = cutLoop(face.vertices, plane);
    for (const point of onPlane) rim.push(point);
    const loop = roundLoop(kept, face.normal);
    if (loop.length >= 3) faces.push({ normal: face.normal, vertices: loop });
  }
  const cap = roundLoop(rim, plane.normal);
  if (cap.length >= 3) faces.push({ normal: plane.normal, vertices: cap });
  return prismOf(faces);
}

/** A bar: a box sawn by planes whose normals point out of the material. Undefined where the cuts leave nothing. */
export function barPrism(box: OrientedBox, cuts: readonly Plane[]): Prism | undefined {
  let prism: Prism | undefined = prismFromBox(box);
  for (const cut of cuts) prism = prism && cutPrism(prism, cut);
  return prism;
}

/** The smallest box along the global axes around a prism [m]. */
/** The stretch of a unit axis a body covers [m]. */
export function extentAlong(prism: Prism, axis: Vec3): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (const vertex of prism.vertices) {
    const at = dot(vertex, axis);
    low = Math.min(low, at);
    high = Math.max(high, at);
  }
  return [low, high];
}

export const prismBounds = (prism: Prism): Bounds3 => boundsOf(prism.vertices);

/** Volume of a prism [m³] by the divergence theorem: a third of Σ face area · its distance from a vertex. */
export function prismVolume(prism: Prism): number {
  const apex = prism.vertices[0];
  if (apex === undefined) return 0;
  return prism.faces.reduce((sum, face) => {
    const corner = face.vertices[0];
    return corner === undefined ? sum : sum + dot(vectorArea(face.vertices), subtract(corner, apex)) / 3;
  }, 0);
}

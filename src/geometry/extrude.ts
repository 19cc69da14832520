import { type Face, type Prism, prismOf, vectorArea } from "./prism.ts";
import { add, along, dot, normalise, perpendicularPair, scale, type Vec3 } from "./vector.ts";

/**
 * The solid a flat convex loop [m] sweeps when it is moved by `by` [m]: the loop as it lies, the loop moved, then one side an edge.
 * Throws RangeError where the loop has no area.
 */
export function extrude(loop: readonly Vec3[], by: Vec3): Prism {
  const area = vectorArea(loop);
  const forward = dot(area, by) >= 0 ? loop : [...loop].reverse();
  const normal = normalise(dot(area, by) >= 0 ? area : scale(area, -1));
  const moved = forward.map((point) => add(point, by));
  const faces: Face[] = [
    { normal: scale(normal, -1), vertices: [...forward].reverse() },
    { normal, vertices: moved },
  ];
  for (const [i, start] of forward.entries()) {
    const end = forward[(i + 1) % forward.length];
    if (end === undefined) continue;
    const vertices = [start, end, add(end, by), add(start, by)];
    faces.push({ normal: normalise(vectorArea(vertices)), vertices });
  }
  return prismOf(faces);
}

/** A drum as a prism of `sides` sides that touch the circle from inside: from `base` along the unit vector `axis`, sizes in m. */
export function drum(base: Vec3, axis: Vec3, radius: number, height: number, sides = 12): Prism {
  const [u, v] = perpendicularPair(axis);
  const ring = Array.from({ length: sides }, (_, i): Vec3 => {
    const angle = (2 * Math.PI * (i + 0.5)) / sides;
    return along(along(base, u, radius * Math.cos(angle)), v, radius * Math.sin(angle));
  });
  return extrude(ring, scale(axis, height));
}

import type { Vec2 } from "../../geometry/vector.ts";

/** A fastener in the plane of its joint; `weight` is its share of stiffness (1 when all are alike). */
export interface GroupFastener {
  readonly at: Vec2;
  readonly weight?: number;
}

/** A force in the plane, acting at a point, and a moment about the normal (anticlockwise positive). */
export interface GroupLoad {
  readonly force: Vec2;
  readonly at: Vec2;
  readonly moment?: number;
}

export interface GroupForces {
  readonly centroid: Vec2;
  /** Moment about the centroid. */
  readonly moment: number;
  /** What each fastener takes of the load, in order: equal shares of the force and, across its radius, of the moment. */
  readonly forces: readonly Vec2[];
}

/**
 * Forces of a fastener group on a rigid plate by the elastic vector method (Shigley, section 8-12): the force is shared
 * by weight, the moment in proportion to weight × distance from the weighted centroid, square to the radius.
 * Together they balance the load. Throws RangeError without fasteners, and for a moment on fasteners all in one place.
 */
export function elasticGroup(fasteners: readonly GroupFastener[], load: GroupLoad): GroupForces {
  let [total, x, y] = [0, 0, 0];
  for (const { at, weight = 1 } of fasteners) {
    total += weight;
    x += weight * at[0];
    y += weight * at[1];
  }
  if (!(total > 0)) throw new RangeError("a group without fasteners takes no load");
  const centroid: Vec2 = [x / total, y / total];
  const [dx, dy] = [load.at[0] - centroid[0], load.at[1] - centroid[1]];
  const moment = (load.moment ?? 0) + dx * load.force[1] - dy * load.force[0];
  let polar = 0;
  for (const { at, weight = 1 } of fasteners) {
    polar += weight * ((at[0] - centroid[0]) ** 2 + (at[1] - centroid[1]) ** 2);
  }
  if (moment !== 0 && !(polar > 0)) throw new RangeError("fasteners in one place take no moment");
  const turn = moment === 0 ? 0 : moment / polar;
  const forces = fasteners.map(({ at, weight = 1 }): Vec2 => {
    const [rx, ry] = [at[0] - centroid[0], at[1] - centroid[1]];
    return [weight * (load.force[0] / total - turn * ry), weight * (load.force[1] / total + turn * rx)];
  });
  return { centroid, moment, forces };
}

/**
 * Pull of each fastener of a bracket that a moment tilts about an edge, proportional to its distance from the edge:
 * M lᵢ / Σ l² (Bhandari, Design of Machine Elements, section 7.7).
 */
export function tiltingPulls(distances: readonly number[], moment: number): readonly number[] {
  const sum = distances.reduce((total, l) => total + l * l, 0);
  if (!(sum > 0)) throw new RangeError("fasteners on the edge take no tilting moment");
  return distances.map((l) => (moment * l) / sum);
}

import type { Vec3 } from "../../geometry/vector.ts";
import { cross, subtract } from "../../geometry/vector.ts";
import { MechanicsInputError } from "../errors.ts";
import type { Anchor, Coupling, FrameModel } from "../model.ts";
import { GROUND } from "../model.ts";

/** One scalar relative motion as a linear form of node freedoms (6 · node + component): value = Σ weight · u[freedom]. */
export interface Link {
  readonly freedoms: Int32Array;
  readonly weights: Float64Array;
}

function position(model: FrameModel, node: number): Vec3 {
  const found = model.nodes[node];
  if (!found) throw new MechanicsInputError(`node ${node} does not exist`);
  return found;
}

/** Motion of `from` minus motion of `to` along the unit vector `d`, both taken at point `at` as if rigidly connected to it. */
export function slideLink(model: FrameModel, from: number, to: Anchor, at: Vec3 | undefined, d: Vec3): Link {
  const point = at ?? position(model, from);
  const own = [...d, ...cross(subtract(point, position(model, from)), d)];
  if (to === GROUND) return pair(from, own);
  return pair(from, own, to, [...d, ...cross(subtract(point, position(model, to)), d)]);
}

/** Rotation of `from` minus rotation of `to` about the unit vector `d`. */
export function turnLink(from: number, to: Anchor, d: Vec3): Link {
  const own = [0, 0, 0, ...d];
  return to === GROUND ? pair(from, own) : pair(from, own, to, own);
}

/** The motion of a coupling. */
export function couplingLink(model: FrameModel, { points }: Coupling): Link {
  const weights = new Map<number, number>();
  for (const { node, at, direction } of points) {
    const own = [...direction, ...cross(subtract(at, position(model, node)), direction)];
    for (const [i, weight] of own.entries()) weights.set(6 * node + i, (weights.get(6 * node + i) ?? 0) + weight);
  }
  const freedoms = [...weights.keys()].sort((a, b) => a - b);
  return {
    freedoms: Int32Array.from(freedoms),
    weights: Float64Array.from(freedoms, (freedom) => weights.get(freedom) ?? 0),
  };
}

function pair(from: number, own: readonly number[], to?: number, other: readonly number[] = []): Link {
  const freedoms = own.map((_, i) => 6 * from + i).concat(other.map((_, i) => 6 * (to ?? 0) + i));
  return { freedoms: Int32Array.from(freedoms), weights: Float64Array.from([...own, ...other.map((w) => -w)]) };
}

/** The motion of a link under node displacements `u`. */
export function motion(link: Link, u: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < link.freedoms.length; i++) {
    sum += (link.weights[i] as number) * (u[link.freedoms[i] as number] as number);
  }
  return sum;
}

/** Adds the node forces that do work on the link's motion: factor × weight. */
export function addAlong(link: Link, factor: number, nodeForces: Float64Array): void {
  for (let i = 0; i < link.freedoms.length; i++) {
    const freedom = link.freedoms[i] as number;
    nodeForces[freedom] = (nodeForces[freedom] as number) + factor * (link.weights[i] as number);
  }
}

import { shearParameter } from "./stiffness.ts";

/**
 * Exact static shape functions of a Timoshenko beam (Przemieniecki, section 5.6): the lateral displacement and the
 * rotation at ξ = x/L that a unit end displacement or end rotation produces. By reciprocity the same functions give
 * the end forces that a load on the member with held ends calls for, without any quadrature error.
 */
export interface Shape {
  /** Lateral displacement for: start displacement, start rotation, end displacement, end rotation. */
  readonly lateral: Float64Array;
  /** Rotation of the cross-section for the same four. */
  readonly rotation: Float64Array;
}

export const newShape = (): Shape => ({ lateral: new Float64Array(4), rotation: new Float64Array(4) });

/** Fills `shape` at `xi` for a beam of length `L` with bending stiffness `EI` and shear stiffness `GA`. */
export function fillShape(shape: Shape, EI: number, GA: number, L: number, xi: number): void {
  const phi = shearParameter(EI, GA, L);
  const mu = 1 / (1 + phi);
  const xi2 = xi * xi;
  const xi3 = xi2 * xi;
  const { lateral, rotation } = shape;
  lateral[0] = mu * (1 - 3 * xi2 + 2 * xi3 + phi * (1 - xi));
  lateral[1] = L * mu * (xi - 2 * xi2 + xi3 + (phi / 2) * (xi - xi2));
  lateral[2] = mu * (3 * xi2 - 2 * xi3 + phi * xi);
  lateral[3] = L * mu * (xi3 - xi2 - (phi / 2) * (xi - xi2));
  const turn = (6 * mu * (xi2 - xi)) / L;
  rotation[0] = turn;
  rotation[1] = mu * (1 - 4 * xi + 3 * xi2 + phi * (1 - xi));
  rotation[2] = -turn;
  rotation[3] = mu * (3 * xi2 - 2 * xi + phi * xi);
}

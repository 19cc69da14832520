import type { Shape } from "../member/shape.ts";
import { fillShape, newShape } from "../member/shape.ts";
import type { Rigidity } from "../member/stiffness.ts";
import type { LocalLoad, LocalLoads } from "./compile.ts";

/**
 * Gauss-Legendre rule of three points, exact to degree five: shape functions are cubic and line loads linear,
 * so the products are integrated exactly.
 */
const GAUSS_AT = [-Math.sqrt(3 / 5), 0, Math.sqrt(3 / 5)];
const GAUSS_WEIGHT = [5 / 9, 8 / 9, 5 / 9];

const shape: Shape = newShape();

/**
 * End forces (12, local) on a member with held ends, added to `out[at…]`: by reciprocity minus the work of the load
 * on the exact shape functions. Free strains ask for the constant forces −EA ε, −EI κ.
 */
export function addFixedEndForces(
  rigidity: Rigidity,
  length: number,
  { loads, strain }: LocalLoads,
  out: Float64Array,
  at: number,
  factor = 1,
): void {
  for (const load of loads) {
    if (load.kind === "point") {
      addPoint(rigidity, length, load.start, load.value, factor, out, at);
    } else {
      addLine(rigidity, length, load, factor, out, at);
    }
  }
  const [axial, curvatureY, curvatureZ] = strain;
  const held = [-rigidity.EA * axial, 0, 0, 0, -rigidity.EIy * curvatureY, -rigidity.EIz * curvatureZ];
  for (let i = 0; i < 6; i++) {
    const force = factor * (held[i] as number); // acts on the positive face at the end, reversed at the start
    out[at + i] = (out[at + i] as number) - force;
    out[at + 6 + i] = (out[at + 6 + i] as number) + force;
  }
}

const atPoint: number[] = [0, 0, 0, 0, 0, 0];

function addLine(r: Rigidity, length: number, load: LocalLoad, factor: number, out: Float64Array, at: number): void {
  const half = (load.end - load.start) / 2;
  for (let g = 0; g < GAUSS_AT.length; g++) {
    const t = (1 + (GAUSS_AT[g] as number)) / 2;
    for (let i = 0; i < 6; i++) {
      const first = load.value[i] as number;
      atPoint[i] = first + t * ((load.value[6 + i] as number) - first);
    }
    const x = load.start + t * (load.end - load.start);
    addPoint(r, length, x, atPoint, factor * half * (GAUSS_WEIGHT[g] as number), out, at);
  }
}

function addPoint(
  r: Rigidity,
  length: number,
  x: number,
  value: readonly number[],
  factor: number,
  out: Float64Array,
  at: number,
): void {
  const xi = x / length;
  const q = (i: number): number => -factor * (value[i] as number);
  const put = (i: number, force: number): void => {
    out[at + i] = (out[at + i] as number) + force;
  };
  const { lateral, rotation } = shape;
  const N = (i: number): number => lateral[i] as number;
  const H = (i: number): number => rotation[i] as number;
  for (const i of [0, 3]) {
    put(i, q(i) * (1 - xi));
    put(6 + i, q(i) * xi);
  }
  // Plane of local y: displacement along y, rotation about z.
  fillShape(shape, r.EIz, r.GAy, length, xi);
  put(1, q(1) * N(0) + q(5) * H(0));
  put(5, q(1) * N(1) + q(5) * H(1));
  put(7, q(1) * N(2) + q(5) * H(2));
  put(11, q(1) * N(3) + q(5) * H(3));
  // Plane of local z: the rotation about y is minus the slope.
  fillShape(shape, r.EIy, r.GAz, length, xi);
  put(2, q(2) * N(0) - q(4) * H(0));
  put(4, -q(2) * N(1) + q(4) * H(1));
  put(8, q(2) * N(2) - q(4) * H(2));
  put(10, -q(2) * N(3) + q(4) * H(3));
}

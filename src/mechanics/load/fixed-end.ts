import type { Shape } from "../member/shape.ts";
import { fillShape, newShape } from "../member/shape.ts";
import type { Rigidity } from "../member/stiffness.ts";
import type { MemberLoads } from "./compile.ts";
import { POINT, SIX, VARYING } from "./compile.ts";

/**
 * Gauss-Legendre rule of three points, exact to degree five: shape functions are cubic and line loads linear,
 * so the products are integrated exactly.
 */
const GAUSS_AT = [-Math.sqrt(3 / 5), 0, Math.sqrt(3 / 5)];
const GAUSS_WEIGHT = [5 / 9, 8 / 9, 5 / 9];

const shape: Shape = newShape();

/**
 * End forces (12, local) on member m with held ends, added to `out[12 m…]`: by reciprocity minus the work of the load
 * on the exact shape functions. Free strains ask for the constant forces −EA ε, −EI κ.
 */
export function addFixedEndForces(
  rigidity: Rigidity,
  length: number,
  loads: MemberLoads,
  m: number,
  out: Float64Array,
): void {
  const { first, kind, place, start, values, strain } = loads;
  const at = 12 * m;
  for (let i = first[m] as number; i < (first[m + 1] as number); i++) {
    if (kind[i] === POINT) addPoint(rigidity, length, start[i] as number, values, place[i] as number, 1, out, at);
    else addLine(rigidity, length, loads, i, out, at);
  }
  if (!strain) return;
  const [axial, curvatureY, curvatureZ] = [0, 1, 2].map((i) => strain[3 * m + i] as number) as [number, number, number];
  const held = [-rigidity.EA * axial, 0, 0, 0, -rigidity.EIy * curvatureY, -rigidity.EIz * curvatureZ];
  for (let i = 0; i < 6; i++) {
    const force = held[i] as number; // acts on the positive face at the end, reversed at the start
    out[at + i] = (out[at + i] as number) - force;
    out[at + 6 + i] = (out[at + 6 + i] as number) + force;
  }
}

const atPoint = new Float64Array(6);

function addLine(r: Rigidity, length: number, loads: MemberLoads, i: number, out: Float64Array, at: number): void {
  const { values } = loads;
  const [start, end, from] = [loads.start[i] as number, loads.end[i] as number, loads.place[i] as number];
  const last = loads.kind[i] === VARYING ? from + SIX : from;
  const half = (end - start) / 2;
  for (let g = 0; g < GAUSS_AT.length; g++) {
    const t = (1 + (GAUSS_AT[g] as number)) / 2;
    for (let k = 0; k < 6; k++) {
      const first = values[from + k] as number;
      atPoint[k] = first + t * ((values[last + k] as number) - first);
    }
    const x = start + t * (end - start);
    addPoint(r, length, x, atPoint, 0, half * (GAUSS_WEIGHT[g] as number), out, at);
  }
}

function addPoint(
  r: Rigidity,
  length: number,
  x: number,
  value: Float64Array,
  v: number,
  factor: number,
  out: Float64Array,
  at: number,
): void {
  const xi = x / length;
  addAlong(out, at, factor * (value[v] as number), xi);
  addAlong(out, at + 3, factor * (value[v + 3] as number), xi);
  // Plane of local y: displacement along y, rotation about z. Plane of local z: the rotation about y is minus the slope.
  fillShape(shape, r.EIz, r.GAy, length, xi);
  addAcross(out, at + 1, at + 5, factor * (value[v + 1] as number), factor * (value[v + 5] as number), 1);
  fillShape(shape, r.EIy, r.GAz, length, xi);
  addAcross(out, at + 2, at + 4, factor * (value[v + 2] as number), factor * (value[v + 4] as number), -1);
}

/** A force along the axis or a torque is shared like the lever says. */
function addAlong(out: Float64Array, i: number, load: number, xi: number): void {
  out[i] = (out[i] as number) - load * (1 - xi);
  out[i + 6] = (out[i + 6] as number) - load * xi;
}

/** A force and a moment in one plane, on the shapes at their station; `sign` −1 where the rotation is minus the slope. */
function addAcross(out: Float64Array, force: number, moment: number, load: number, turn: number, sign: number): void {
  const { lateral, rotation } = shape;
  for (let end = 0; end < 2; end++) {
    const [f, m, i] = [force + 6 * end, moment + 6 * end, 2 * end];
    const onForce = load * (lateral[i] as number) + sign * turn * (rotation[i] as number);
    const onMoment = sign * load * (lateral[i + 1] as number) + turn * (rotation[i + 1] as number);
    out[f] = (out[f] as number) - onForce;
    out[m] = (out[m] as number) - onMoment;
  }
}

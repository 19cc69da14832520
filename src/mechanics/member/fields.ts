import type { LocalLoad, LocalLoads } from "../load/compile.ts";
import type { Piecewise } from "../piecewise.ts";
import type { Rigidity } from "./stiffness.ts";

/**
 * Internal forces on the face that looks along +x, components along the local axes (tension positive, right-handed
 * moments): N' = −q_x, Vy' = −q_y, Vz' = −q_z, T' = −m_x, My' = Vz − m_y, Mz' = −Vy − m_z.
 * A stress is N/A + My z/Iy − Mz y/Iz.
 */
export interface InternalForces {
  readonly N: Piecewise;
  readonly Vy: Piecewise;
  readonly Vz: Piecewise;
  readonly T: Piecewise;
  readonly My: Piecewise;
  readonly Mz: Piecewise;
}

/** Displacements of the axis along local x, y, z (m) and rotations of the cross-section about them (rad). */
export interface Deflections {
  readonly x: Piecewise;
  readonly y: Piecewise;
  readonly z: Piecewise;
  readonly turnX: Piecewise;
  readonly turnY: Piecewise;
  readonly turnZ: Piecewise;
}

/** Loads of one member with the factor of their load case. */
export type Factored = readonly (readonly [factor: number, loads: LocalLoads])[];

const NO_LOAD: Factored = [];

function breaksOf(length: number, factored: Factored): Float64Array {
  const stations = [0, length];
  for (const [, { loads }] of factored) for (const load of loads) stations.push(load.start, load.end);
  stations.sort((a, b) => a - b);
  return Float64Array.from(stations.filter((x, i) => i === 0 || x > (stations[i - 1] as number)));
}

/** Adds what `load` puts on the piece [x, end]: constant and slope of each of six components, and point values at x. */
function addToPiece(
  load: LocalLoad,
  factor: number,
  x: number,
  end: number,
  q: Float64Array,
  jump: Float64Array,
): void {
  if (load.kind === "point") {
    if (load.start === x)
      for (let i = 0; i < 6; i++) jump[i] = (jump[i] as number) + factor * (load.value[i] as number);
    return;
  }
  if (load.start > x || load.end < end || load.start === load.end) return;
  const span = load.end - load.start;
  for (let i = 0; i < 6; i++) {
    const first = load.value[i] as number;
    const slope = ((load.value[6 + i] as number) - first) / span;
    q[i] = (q[i] as number) + factor * (first + slope * (x - load.start));
    q[6 + i] = (q[6 + i] as number) + factor * slope;
  }
}

/** Degrees of N, Vy, Vz, T (linear loads integrate to two) and of My, Mz. */
const DEGREE = [2, 2, 2, 2, 3, 3] as const;

/**
 * Exact internal forces of a member from its end forces (local, at the start) and its loads.
 * `end` holds the 12 end forces from index `at` on.
 */
export function internalForces(
  length: number,
  end: Float64Array,
  at: number,
  factored: Factored = NO_LOAD,
): InternalForces {
  const breaks = breaksOf(length, factored);
  const count = breaks.length - 1;
  const c = DEGREE.map((degree) => new Float64Array(count * (degree + 1)));
  const now = new Float64Array(6); // N Vy Vz T My Mz at the start of the piece
  for (let i = 0; i < 6; i++) now[i] = -(end[at + i] as number);
  const q = new Float64Array(12);
  const jump = new Float64Array(6);
  for (let p = 0; p < count; p++) {
    const x = breaks[p] as number;
    const s = (breaks[p + 1] as number) - x;
    q.fill(0);
    jump.fill(0);
    for (const [factor, { loads }] of factored) {
      for (const load of loads) addToPiece(load, factor, x, breaks[p + 1] as number, q, jump);
    }
    for (let i = 0; i < 6; i++) now[i] = (now[i] as number) - (jump[i] as number);
    writePiece(c, p, now, q);
    for (let i = 0; i < 6; i++) {
      const degree = DEGREE[i] as number;
      const own = c[i] as Float64Array;
      let value = 0;
      for (let d = degree; d >= 0; d--) value = value * s + (own[p * (degree + 1) + d] as number);
      now[i] = value;
    }
  }
  const [N, Vy, Vz, T, My, Mz] = c.map((coefficients, i) => ({ breaks, degree: DEGREE[i] as number, coefficients }));
  return { N, Vy, Vz, T, My, Mz } as InternalForces;
}

function writePiece(c: readonly Float64Array[], p: number, now: Float64Array, q: Float64Array): void {
  for (let i = 0; i < 4; i++) {
    const own = c[i] as Float64Array;
    own[3 * p] = now[i] as number;
    own[3 * p + 1] = -(q[i] as number);
    own[3 * p + 2] = -(q[6 + i] as number) / 2;
  }
  moment(c[4] as Float64Array, p, now[4] as number, c[2] as Float64Array, 1, q[4] as number, q[10] as number);
  moment(c[5] as Float64Array, p, now[5] as number, c[1] as Float64Array, -1, q[5] as number, q[11] as number);
}

/** M' = sign·V − m with m = m0 + m1 s. */
function moment(own: Float64Array, p: number, M: number, V: Float64Array, sign: number, m0: number, m1: number): void {
  own[4 * p] = M;
  own[4 * p + 1] = sign * (V[3 * p] as number) - m0;
  own[4 * p + 2] = (sign * (V[3 * p + 1] as number) - m1) / 2;
  own[4 * p + 3] = (sign * (V[3 * p + 2] as number)) / 3;
}

/** ∫ (scale · f + constant) from the start, beginning with `start`; continuous over the pieces. */
function integral(f: Piecewise, factor: number, constant: number, start: number): Piecewise {
  const stride = f.degree + 1;
  const count = f.breaks.length - 1;
  const coefficients = new Float64Array(count * (stride + 1));
  let value = start;
  for (let p = 0; p < count; p++) {
    const at = p * (stride + 1);
    coefficients[at] = value;
    for (let d = 0; d < stride; d++) {
      const own = factor * (f.coefficients[p * stride + d] as number) + (d === 0 ? constant : 0);
      coefficients[at + d + 1] = own / (d + 1);
    }
    const s = (f.breaks[p + 1] as number) - (f.breaks[p] as number);
    value = 0;
    for (let d = stride; d >= 0; d--) value = value * s + (coefficients[at + d] as number);
  }
  return { breaks: f.breaks, degree: stride, coefficients };
}

/** ∫ (a·f + b·g), f and g over the same breaks. */
function integralOfTwo(f: Piecewise, a: number, g: Piecewise, b: number, start: number): Piecewise {
  const big = f.degree >= g.degree ? f : g;
  const merged = new Float64Array(big.coefficients.length);
  for (let p = 0; p < f.breaks.length - 1; p++) {
    for (let d = 0; d <= big.degree; d++) {
      const own = d <= f.degree ? a * (f.coefficients[p * (f.degree + 1) + d] as number) : 0;
      const other = d <= g.degree ? b * (g.coefficients[p * (g.degree + 1) + d] as number) : 0;
      merged[p * (big.degree + 1) + d] = own + other;
    }
  }
  return integral({ breaks: f.breaks, degree: big.degree, coefficients: merged }, 1, 0, start);
}

/**
 * Exact displacements along a member: θ' = M/EI + κ, v' = θz + Vy/GAy, w' = −θy + Vz/GAz, u' = N/EA + ε, φ' = T/GJ,
 * integrated from the start, whose local displacements are `u[at…at+5]`.
 */
export function deflections(
  rigidity: Rigidity,
  forces: InternalForces,
  u: Float64Array,
  at: number,
  factored: Factored = NO_LOAD,
): Deflections {
  let [axial, kappaY, kappaZ] = [0, 0, 0];
  for (const [factor, { strain }] of factored) {
    axial += factor * strain[0];
    kappaY += factor * strain[1];
    kappaZ += factor * strain[2];
  }
  const start = (i: number): number => u[at + i] as number;
  const turnY = integral(forces.My, 1 / rigidity.EIy, kappaY, start(4));
  const turnZ = integral(forces.Mz, 1 / rigidity.EIz, kappaZ, start(5));
  return {
    x: integral(forces.N, 1 / rigidity.EA, axial, start(0)),
    y: integralOfTwo(turnZ, 1, forces.Vy, 1 / rigidity.GAy, start(1)),
    z: integralOfTwo(turnY, -1, forces.Vz, 1 / rigidity.GAz, start(2)),
    turnX: integral(forces.T, 1 / rigidity.GJ, 0, start(3)),
    turnY,
    turnZ,
  };
}

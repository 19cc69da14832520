import type { MemberLoads } from "../load/compile.ts";
import { POINT, SIX, VARYING } from "../load/compile.ts";
import type { Piecewise } from "../piecewise.ts";
import { evaluate } from "../polynomial.ts";
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

/** The member loads of load cases with the factor of each. */
export type Factored = readonly (readonly [factor: number, loads: MemberLoads])[];

function breaksOf(length: number, factored: Factored, m: number): Float64Array {
  let inner: number[] | undefined;
  for (const [, loads] of factored) {
    const { first } = loads;
    for (let i = first[m] as number; i < (first[m + 1] as number); i++) {
      const [start, end] = [loads.start[i] as number, loads.end[i] as number];
      if (start > 0 && start < length) inner = withPlace(inner, start);
      if (end > start && end < length) inner = withPlace(inner, end);
    }
  }
  if (!inner) return Float64Array.of(0, length);
  const places = [...inner, 0, length].sort((a, b) => a - b);
  return Float64Array.from(places.filter((x, i) => i === 0 || x > (places[i - 1] as number)));
}

function withPlace(places: number[] | undefined, x: number): number[] {
  if (!places) return [x];
  places.push(x);
  return places;
}

/** Adds what load i puts on the piece [x, end]: constant and slope of each of six components, and point values at x. */
function addToPiece(
  { kind, place, start: starts, end: ends, values }: MemberLoads,
  load: number,
  factor: number,
  x: number,
  end: number,
  q: Float64Array,
  jump: Float64Array,
): void {
  const [start, stop, at] = [starts[load] as number, ends[load] as number, place[load] as number];
  if (kind[load] === POINT) {
    if (start === x) for (let i = 0; i < 6; i++) jump[i] = (jump[i] as number) + factor * (values[at + i] as number);
    return;
  }
  if (start > x || stop < end || start === stop) return;
  const span = stop - start;
  const last = kind[load] === VARYING ? at + SIX : at;
  for (let i = 0; i < 6; i++) {
    const first = values[at + i] as number;
    const slope = ((values[last + i] as number) - first) / span;
    q[i] = (q[i] as number) + factor * (first + slope * (x - start));
    q[6 + i] = (q[6 + i] as number) + factor * slope;
  }
}

/** N, Vy, Vz, T have degree two (linear loads), My and Mz three. */
const FORCE_DEGREE = 2;
const MOMENT_DEGREE = 3;

const now = new Float64Array(6); // N Vy Vz T My Mz at the start of a piece
const q = new Float64Array(12);
const jump = new Float64Array(6);

/**
 * Exact internal forces of member m from its end forces (local, at the start) and its loads.
 * `end` holds the 12 end forces of each member.
 */
export function internalForces(length: number, end: Float64Array, m: number, factored: Factored): InternalForces {
  const breaks = breaksOf(length, factored, m);
  const count = breaks.length - 1;
  const force = (): Float64Array => new Float64Array(count * (FORCE_DEGREE + 1));
  const [N, Vy, Vz, T] = [force(), force(), force(), force()];
  const [My, Mz] = [new Float64Array(count * (MOMENT_DEGREE + 1)), new Float64Array(count * (MOMENT_DEGREE + 1))];
  for (let i = 0; i < 6; i++) now[i] = -(end[12 * m + i] as number);
  for (let p = 0; p < count; p++) {
    const x = breaks[p] as number;
    const s = (breaks[p + 1] as number) - x;
    q.fill(0);
    jump.fill(0);
    for (const [factor, loads] of factored) {
      for (let i = loads.first[m] as number; i < (loads.first[m + 1] as number); i++)
        addToPiece(loads, i, factor, x, breaks[p + 1] as number, q, jump);
    }
    for (let i = 0; i < 6; i++) now[i] = (now[i] as number) - (jump[i] as number);
    forcePiece(N, p, s, 0);
    forcePiece(Vy, p, s, 1);
    forcePiece(Vz, p, s, 2);
    forcePiece(T, p, s, 3);
    momentPiece(My, p, s, 4, Vz, 1);
    momentPiece(Mz, p, s, 5, Vy, -1);
  }
  const of = (degree: number, coefficients: Float64Array): Piecewise => ({ breaks, degree, coefficients });
  return {
    N: of(FORCE_DEGREE, N),
    Vy: of(FORCE_DEGREE, Vy),
    Vz: of(FORCE_DEGREE, Vz),
    T: of(FORCE_DEGREE, T),
    My: of(MOMENT_DEGREE, My),
    Mz: of(MOMENT_DEGREE, Mz),
  };
}

/** Writes piece p of component i from its value at the start and moves that value on by s. */
function forcePiece(own: Float64Array, p: number, s: number, i: number): void {
  own[3 * p] = now[i] as number;
  own[3 * p + 1] = -(q[i] as number);
  own[3 * p + 2] = -(q[6 + i] as number) / 2;
  now[i] = evaluate(own, 3 * p, FORCE_DEGREE, s);
}

/** M' = sign·V − m. */
function momentPiece(own: Float64Array, p: number, s: number, i: number, V: Float64Array, sign: number): void {
  own[4 * p] = now[i] as number;
  own[4 * p + 1] = sign * (V[3 * p] as number) - (q[i] as number);
  own[4 * p + 2] = (sign * (V[3 * p + 1] as number) - (q[6 + i] as number)) / 2;
  own[4 * p + 3] = (sign * (V[3 * p + 2] as number)) / 3;
  now[i] = evaluate(own, 4 * p, MOMENT_DEGREE, s);
}

/** ∫ (a·f + b·g + constant) from the start, beginning with `start`; continuous over the pieces. f has the higher degree. */
function integral(f: Piecewise, a: number, start: number, constant = 0, g?: Piecewise, b = 0): Piecewise {
  const { breaks } = f;
  const degree = f.degree + 1;
  const count = breaks.length - 1;
  const coefficients = new Float64Array(count * (degree + 1));
  let value = start;
  for (let p = 0; p < count; p++) {
    const at = p * (degree + 1);
    coefficients[at] = value;
    for (let d = 0; d < degree; d++) {
      let own = a * (f.coefficients[p * degree + d] as number);
      if (d === 0) own += constant;
      if (g && d <= g.degree) own += b * (g.coefficients[p * (g.degree + 1) + d] as number);
      coefficients[at + d + 1] = own / (d + 1);
    }
    value = evaluate(coefficients, at, degree, (breaks[p + 1] as number) - (breaks[p] as number));
  }
  return { breaks, degree, coefficients };
}

/**
 * Exact displacements along member m: θ' = M/EI + κ, v' = θz + Vy/GAy, w' = −θy + Vz/GAz, u' = N/EA + ε, φ' = T/GJ,
 * integrated from the start, whose local displacements are `u[0…5]`.
 */
export function deflections(
  rigidity: Rigidity,
  forces: InternalForces,
  u: Float64Array,
  m: number,
  factored: Factored,
): Deflections {
  let [axial, kappaY, kappaZ] = [0, 0, 0];
  for (const [factor, { strain }] of factored) {
    if (!strain) continue;
    axial += factor * (strain[3 * m] as number);
    kappaY += factor * (strain[3 * m + 1] as number);
    kappaZ += factor * (strain[3 * m + 2] as number);
  }
  const start = (i: number): number => u[i] as number;
  const turnY = integral(forces.My, 1 / rigidity.EIy, start(4), kappaY);
  const turnZ = integral(forces.Mz, 1 / rigidity.EIz, start(5), kappaZ);
  return {
    x: integral(forces.N, 1 / rigidity.EA, start(0), axial),
    y: integral(turnZ, 1, start(1), 0, forces.Vy, 1 / rigidity.GAy),
    z: integral(turnY, -1, start(2), 0, forces.Vz, 1 / rigidity.GAz),
    turnX: integral(forces.T, 1 / rigidity.GJ, start(3)),
    turnY,
    turnZ,
  };
}

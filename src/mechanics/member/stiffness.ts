/**
 * Stiffness of the prismatic Timoshenko beam in its own axes (Przemieniecki, Theory of Matrix Structural Analysis,
 * section 5.6): the exact solution of the beam equations, so one element per member is exact in statics.
 * End components 0..5 at the start and 6..11 at the end: translations x y z, rotations x y z.
 */

/** Ten numbers that make up the stiffness of one member, in this order. */
export const COEFFICIENTS = 10;
const AXIAL = 0;
const TWIST = 1;
const Z_PLANE = 2;
const Y_PLANE = 6;

/** Shear parameter Φ = 12 EI / (GA L²) of bending with stiffness `EI` and shear stiffness `GA` over length `L`. */
export const shearParameter = (EI: number, GA: number, L: number): number => (12 * EI) / (GA * L * L);

function plane(out: Float64Array, at: number, EI: number, GA: number, L: number): void {
  const phi = shearParameter(EI, GA, L);
  const base = EI / ((1 + phi) * L);
  out[at] = (12 * base) / (L * L);
  out[at + 1] = (6 * base) / L;
  out[at + 2] = (4 + phi) * base;
  out[at + 3] = (2 - phi) * base;
}

export interface Rigidity {
  readonly EA: number;
  readonly EIy: number;
  readonly EIz: number;
  readonly GJ: number;
  readonly GAy: number;
  readonly GAz: number;
}

/** Writes the ten coefficients of a member of length `L` from `out[at]` on. */
export function writeCoefficients(out: Float64Array, at: number, rigidity: Rigidity, L: number): void {
  out[at + AXIAL] = rigidity.EA / L;
  out[at + TWIST] = rigidity.GJ / L;
  plane(out, at + Z_PLANE, rigidity.EIz, rigidity.GAy, L);
  plane(out, at + Y_PLANE, rigidity.EIy, rigidity.GAz, L);
}

/** End forces k·u of the member whose coefficients start at `c[at]`, added to `f[to…to+11]`. */
export function addElasticForces(
  c: Float64Array,
  at: number,
  u: Float64Array,
  from: number,
  f: Float64Array,
  to: number,
): void {
  const axial = (c[at + AXIAL] as number) * ((u[from] as number) - (u[from + 6] as number));
  const twist = (c[at + TWIST] as number) * ((u[from + 3] as number) - (u[from + 9] as number));
  add(f, to, axial);
  add(f, to + 6, -axial);
  add(f, to + 3, twist);
  add(f, to + 9, -twist);
  addPlaneForces(c, at + Z_PLANE, u, from + 1, from + 5, f, to + 1, to + 5, 1);
  addPlaneForces(c, at + Y_PLANE, u, from + 2, from + 4, f, to + 2, to + 4, -1);
}

const add = (f: Float64Array, at: number, value: number): void => {
  f[at] = (f[at] as number) + value;
};

/** One plane of bending; `sign` −1 where the rotation is minus the slope (local z). The other end lies six further on. */
function addPlaneForces(
  c: Float64Array,
  at: number,
  u: Float64Array,
  lateral: number,
  turn: number,
  f: Float64Array,
  force: number,
  moment: number,
  sign: number,
): void {
  const drop = (u[lateral] as number) - (u[lateral + 6] as number);
  const [first, last] = [u[turn] as number, u[turn + 6] as number];
  const coupling = sign * (c[at + 1] as number);
  const [near, far] = [c[at + 2] as number, c[at + 3] as number];
  const shear = (c[at] as number) * drop + coupling * (first + last);
  add(f, force, shear);
  add(f, force + 6, -shear);
  add(f, moment, coupling * drop + near * first + far * last);
  add(f, moment + 6, coupling * drop + far * first + near * last);
}

/** Writes the full 12 × 12 matrix, row by row. */
export function fillStiffness(c: Float64Array, at: number, out: Float64Array): void {
  out.fill(0);
  fillBar(out, 0, c[at + AXIAL] as number);
  fillBar(out, 3, c[at + TWIST] as number);
  fillPlane(out, 1, 5, c, at + Z_PLANE, 1);
  fillPlane(out, 2, 4, c, at + Y_PLANE, -1);
}

function fillBar(out: Float64Array, i: number, k: number): void {
  const j = i + 6;
  out[12 * i + i] = k;
  out[12 * j + j] = k;
  out[12 * i + j] = -k;
  out[12 * j + i] = -k;
}

function fillPlane(out: Float64Array, v: number, t: number, c: Float64Array, at: number, sign: number): void {
  const [shear, coupling] = [c[at] as number, sign * (c[at + 1] as number)];
  const [near, far] = [c[at + 2] as number, c[at + 3] as number];
  const put = (i: number, j: number, value: number): void => {
    out[12 * i + j] = value;
    out[12 * j + i] = value;
  };
  put(v, v, shear);
  put(v + 6, v + 6, shear);
  put(v, v + 6, -shear);
  put(v, t, coupling);
  put(v, t + 6, coupling);
  put(v + 6, t, -coupling);
  put(v + 6, t + 6, -coupling);
  put(t, t, near);
  put(t + 6, t + 6, near);
  put(t, t + 6, far);
}

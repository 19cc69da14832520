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
  const g = (i: number) => u[from + i] as number;
  const k = (i: number) => c[at + i] as number;
  const put = (i: number, value: number) => {
    f[to + i] = (f[to + i] as number) + value;
  };
  const axial = k(AXIAL) * (g(0) - g(6));
  const twist = k(TWIST) * (g(3) - g(9));
  const [v, w] = [g(1) - g(7), g(2) - g(8)];
  const shearY = k(2) * v + k(3) * (g(5) + g(11));
  const shearZ = k(6) * w - k(7) * (g(4) + g(10));
  put(0, axial);
  put(1, shearY);
  put(2, shearZ);
  put(3, twist);
  put(4, -k(7) * w + k(8) * g(4) + k(9) * g(10));
  put(5, k(3) * v + k(4) * g(5) + k(5) * g(11));
  put(6, -axial);
  put(7, -shearY);
  put(8, -shearZ);
  put(9, -twist);
  put(10, -k(7) * w + k(9) * g(4) + k(8) * g(10));
  put(11, k(3) * v + k(5) * g(5) + k(4) * g(11));
}

/** The full 12 × 12 matrix, row by row: the forces that each unit displacement asks for. */
export function stiffnessMatrix(c: Float64Array, at: number): Float64Array {
  const matrix = new Float64Array(144);
  const unit = new Float64Array(12);
  for (let column = 0; column < 12; column++) {
    unit.fill(0);
    unit[column] = 1;
    addElasticForces(c, at, unit, 0, matrix, column * 12); // rows and columns alike: the matrix is symmetric
  }
  return matrix;
}

import type { Shape } from "../member/shape.ts";
import { fillShape, newShape } from "../member/shape.ts";
import { shearParameter } from "../member/stiffness.ts";
import type { Member } from "../model.ts";

/** Gauss-Legendre rule of four points, exact to degree seven: products of two cubic shape functions have six. */
const INNER = Math.sqrt((3 - 2 * Math.sqrt(6 / 5)) / 7);
const OUTER = Math.sqrt((3 + 2 * Math.sqrt(6 / 5)) / 7);
const GAUSS: readonly (readonly [at: number, weight: number])[] = [
  [-OUTER, (18 - Math.sqrt(30)) / 36],
  [-INNER, (18 + Math.sqrt(30)) / 36],
  [INNER, (18 + Math.sqrt(30)) / 36],
  [OUTER, (18 - Math.sqrt(30)) / 36],
];

/** End components of bending along local y and along local z, with the sign of the rotation. */
const PLANES = [
  { at: [1, 5, 7, 11], sign: 1 },
  { at: [2, 4, 8, 10], sign: -1 },
] as const;

type FillVector = (out: Float64Array, xi: number) => void;

/** Adds ∫ factor(ξ) vᵀ v dx of a four-vector of functions in one plane. */
function addPlane(
  matrix: Float64Array,
  plane: 0 | 1,
  L: number,
  factor: (xi: number) => number,
  fill: FillVector,
): void {
  const { at, sign } = PLANES[plane];
  const values = new Float64Array(4);
  for (const [t, weight] of GAUSS) {
    const xi = (1 + t) / 2;
    fill(values, xi);
    const scale = (factor(xi) * weight * L) / 2;
    for (let i = 0; i < 4; i++) {
      for (let j = 0; j < 4; j++) {
        const turn = (i % 2 === 1 ? sign : 1) * (j % 2 === 1 ? sign : 1);
        const place = 12 * (at[i] as number) + (at[j] as number);
        const own = scale * turn * (values[i] as number) * (values[j] as number);
        matrix[place] = (matrix[place] as number) + own;
      }
    }
  }
}

function addBar(matrix: Float64Array, component: number, own: number, other: number): void {
  const [i, j] = [component, component + 6];
  for (const [row, column, value] of [
    [i, i, own],
    [j, j, own],
    [i, j, other],
    [j, i, other],
  ] as const) {
    matrix[12 * row + column] = (matrix[12 * row + column] as number) + value;
  }
}

/** Polar radius of gyration squared of the section, m², from its stiffnesses. */
const polarRadius2 = ({ EA, EIy, EIz }: Member): number => (EIy + EIz) / EA;

const shape: Shape = newShape();

/**
 * Consistent mass of a member, 12 × 12 by rows: bending on the exact static shapes (Archer 1963), axial and torsional
 * motion on linear ones. The rotary inertia of bending is left out: it lowers a first frequency by (π r/L)²/2.
 */
export function massMatrix(member: Member, L: number): Float64Array {
  const matrix = new Float64Array(144);
  const m = member.massPerLength;
  const planes = [
    [member.EIz, member.GAy],
    [member.EIy, member.GAz],
  ] as const;
  planes.forEach(([EI, GA], plane) => {
    addPlane(
      matrix,
      plane === 0 ? 0 : 1,
      L,
      () => m,
      (out, xi) => {
        fillShape(shape, EI, GA, L, xi);
        out.set(shape.lateral);
      },
    );
  });
  addBar(matrix, 0, (m * L) / 3, (m * L) / 6);
  const inertia = m * polarRadius2(member);
  addBar(matrix, 3, (inertia * L) / 3, (inertia * L) / 6);
  return matrix;
}

/** Slope of the axis for the four end displacements of one plane: the derivative of `lateral` in shape.ts. */
function fillSlope(out: Float64Array, EI: number, GA: number, L: number, xi: number): void {
  const phi = shearParameter(EI, GA, L);
  const mu = 1 / (1 + phi);
  out[0] = (mu / L) * (6 * xi * xi - 6 * xi - phi);
  out[1] = mu * (1 - 4 * xi + 3 * xi * xi + (phi / 2) * (1 - 2 * xi));
  out[2] = -(out[0] as number);
  out[3] = mu * (3 * xi * xi - 2 * xi - (phi / 2) * (1 - 2 * xi));
}

/**
 * Geometric stiffness of a member under the axial force N(ξ) (tension positive), 12 × 12 by rows: ∫ N (v'² + w'²) dx on the
 * static shapes (Przemieniecki, section 15.2; with shear the total slope, Engesser), and r² ∫ N φ'² dx for twist (Wagner).
 */
export function geometricMatrix(member: Member, L: number, N: (xi: number) => number): Float64Array {
  const matrix = new Float64Array(144);
  addPlane(matrix, 0, L, N, (out, xi) => fillSlope(out, member.EIz, member.GAy, L, xi));
  addPlane(matrix, 1, L, N, (out, xi) => fillSlope(out, member.EIy, member.GAz, L, xi));
  let mean = 0;
  for (const [t, weight] of GAUSS) mean += (weight / 2) * N((1 + t) / 2);
  const twist = (mean * polarRadius2(member)) / L;
  addBar(matrix, 3, twist, -twist);
  return matrix;
}

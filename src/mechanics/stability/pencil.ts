import type { Block } from "../assembly/blocks.ts";
import { assembleOn, scatter } from "../assembly/matrix.ts";
import type { System } from "../assembly/system.ts";
import { lowestPairs } from "../eigen/block-krylov.ts";
import type { Mechanism } from "../mechanism/bodies.ts";
import { factorise } from "../sparse/factorise.ts";
import type { Pivots } from "../sparse/pivots.ts";
import type { SymmetricMatrix } from "../sparse/symmetric-matrix.ts";

/** A mode of the frame. `displacements`: six a node, scaled to a largest translation of 1 m (or turn of 1 rad without any). */
export interface Mode {
  /** λ of K x = λ B x. */
  readonly lambda: number;
  readonly displacements: Float64Array;
  /** Relative residual of the pair in the energy norm; the relative error of λ is about its square. */
  readonly residual: number;
}

export type PencilModes =
  | { readonly kind: "modes"; readonly modes: readonly Mode[] }
  | { readonly kind: "mechanism"; readonly mechanisms: readonly Mechanism[] };

function scaled(full: Float64Array): Float64Array {
  let [move, turn] = [0, 0];
  full.forEach((value, f) => {
    if (f % 6 < 3) move = Math.max(move, Math.abs(value));
    else turn = Math.max(turn, Math.abs(value));
  });
  const size = move > 0 ? move : turn;
  return size > 0 ? full.map((value) => value / size) : full;
}

/** B on the pattern of K, so that both share one analysis. */
function sharing({ numbering, matrix }: System, share: readonly Block[]): SymmetricMatrix {
  const B = assembleOn(matrix, numbering, share);
  if (!B) throw new Error("the two matrices of an eigenproblem couple different freedoms");
  return B;
}

/** The signs of K − λ B: as many negative ones as there are eigenvalues in (0, λ) (Sylvester's law of inertia). */
function signsAt({ matrix, analysis }: System, B: SymmetricMatrix, lambda: number): Pivots {
  const value = matrix.value.map((k, i) => k - lambda * (B.value[i] as number));
  return factorise(analysis, { ...matrix, value }).pivots;
}

/** The lowest positive λ of K x = λ B x for a frame with closed links, and their modes. */
export function lowestModes(system: System, share: readonly Block[], count: number): PencilModes {
  const { numbering, matrix, factor } = system;
  if (system.mechanisms.length > 0) return { kind: "mechanism", mechanisms: system.mechanisms };
  const B = sharing(system, share);
  const countBelow = (lambda: number): number => signsAt(system, B, lambda).negative;
  const modes = lowestPairs(matrix, factor, B, count, countBelow).map(({ lambda, vector, residual }) => {
    const full = new Float64Array(numbering.unknownOf.length);
    scatter(numbering, vector, 0, full);
    return { lambda, displacements: scaled(full), residual };
  });
  return { kind: "modes", modes };
}

/** Whether K − λ B has no sign but plus, beyond doubt: then no eigenvalue lies in (0, λ]. */
export function noneUpTo(system: System, share: readonly Block[], lambda: number): boolean {
  const { negative, suspicious } = signsAt(system, sharing(system, share), lambda);
  return negative === 0 && suspicious.length === 0;
}

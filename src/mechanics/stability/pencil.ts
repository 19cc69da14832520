import type { Block } from "../assembly/blocks.ts";
import { assembleOn, scatter } from "../assembly/matrix.ts";
import type { System } from "../assembly/system.ts";
import { lowestPairs } from "../eigen/block-krylov.ts";
import { nearestPairs } from "../eigen/nearest-pairs.ts";
import type { Mechanism } from "../mechanism/bodies.ts";
import { type Factor, factorise } from "../sparse/factorise.ts";
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

/** K − λ B as a factor; it has as many negative pivots as there are eigenvalues in (0, λ) (Sylvester's law of inertia). */
function factorAt({ matrix, analysis }: System, B: SymmetricMatrix, lambda: number): Factor {
  return factorise(analysis, shifted(matrix, B, lambda));
}

function shifted(matrix: SymmetricMatrix, B: SymmetricMatrix, lambda: number): SymmetricMatrix {
  return { ...matrix, value: matrix.value.map((k, i) => k - lambda * (B.value[i] as number)) };
}

function modeOf({ numbering }: System, vector: Float64Array): Float64Array {
  const full = new Float64Array(numbering.unknownOf.length);
  scatter(numbering, vector, 0, full);
  return scaled(full);
}

/** This residual leaves an estimate of λ within a hundredth. */
const ROUGH = 0.1;

/** The lowest positive λ, roughly and uncounted, in ascending order: for cutting members and for a shift. Empty for a mechanism. */
export function roughLambdas(system: System, share: readonly Block[], count: number): readonly number[] {
  if (system.mechanisms.length > 0) return [];
  const { matrix, factor } = system;
  return lowestPairs(matrix, factor, sharing(system, share), count, () => 0, ROUGH).map(({ lambda }) => lambda);
}

/** Shares of an estimate of the lowest λ at which a shift is tried: as near as it may come without passing it. */
const SHIFTS = [0.97, 0.9];

interface Start {
  readonly sigma: number;
  readonly matrix: SymmetricMatrix;
  readonly factor: Factor;
}

/** K − σ B with σ close under the lowest λ: positive definite, which its factor shows, so that none lies below; else K itself. */
function startBelow(system: System, B: SymmetricMatrix, estimate: number): Start {
  for (const part of estimate > 0 ? SHIFTS : []) {
    const sigma = part * estimate;
    const factor = factorAt(system, B, sigma);
    const { negative, suspicious } = factor.pivots;
    if (negative === 0 && suspicious.length === 0) return { sigma, matrix: shifted(system.matrix, B, sigma), factor };
  }
  return { sigma: 0, matrix: system.matrix, factor: system.factor };
}

/**
 * The lowest positive λ of K x = λ B x for a frame with closed links, and their modes. Where many lie close together the space of
 * K⁻¹ B parts them slowly; that of (K − σ B)⁻¹ B, σ close under the lowest, does not: `estimate` of the lowest gives σ.
 */
export function lowestModes(system: System, share: readonly Block[], count: number, estimate = 0): PencilModes {
  if (system.mechanisms.length > 0) return { kind: "mechanism", mechanisms: system.mechanisms };
  const B = sharing(system, share);
  const { sigma, matrix, factor } = startBelow(system, B, estimate);
  const countBelow = (lambda: number): number => factorAt(system, B, sigma + lambda).pivots.negative;
  const modes = lowestPairs(matrix, factor, B, count, countBelow).map(({ lambda, vector, residual }) => ({
    lambda: sigma + lambda,
    displacements: modeOf(system, vector),
    residual,
  }));
  return { kind: "modes", modes };
}

export interface NearModes {
  readonly kind: "near";
  /** In ascending order of λ. */
  readonly modes: readonly Mode[];
  /** How many eigenvalues there are below the first of them. */
  readonly skipped: number;
}

/** By this share a shift moves that happens to lie on an eigenvalue. */
const ASIDE = 1e-5;

/** The λ of K x = λ M x nearest to `lambda` > 0, M positive semi-definite, for a frame with closed links, and their modes. */
export function nearestModes(
  system: System,
  share: readonly Block[],
  lambda: number,
  count: number,
): NearModes | { readonly kind: "mechanism"; readonly mechanisms: readonly Mechanism[] } {
  if (system.mechanisms.length > 0) return { kind: "mechanism", mechanisms: system.mechanisms };
  const M = sharing(system, share);
  let shift = lambda;
  let factor = factorAt(system, M, shift);
  while (factor.pivots.suspicious.length > 0) {
    shift *= 1 + ASIDE;
    factor = factorAt(system, M, shift);
  }
  const below = (at: number): number => (at > 0 ? factorAt(system, M, at).pivots.negative : 0);
  const pairs = nearestPairs(M, factor, shift, count, (distance) => below(shift + distance) - below(shift - distance));
  const modes = pairs
    .map(({ lambda: own, vector, residual }) => ({ lambda: own, displacements: modeOf(system, vector), residual }))
    .sort((a, b) => a.lambda - b.lambda);
  const lower = modes.filter((mode) => mode.lambda < shift).length;
  return { kind: "near", modes, skipped: factor.pivots.negative - lower };
}

/** Whether K − λ B has no sign but plus, beyond doubt: then no eigenvalue lies in (0, λ]. */
export function noneUpTo(system: System, share: readonly Block[], lambda: number): boolean {
  const { negative, suspicious } = factorAt(system, sharing(system, share), lambda).pivots;
  return negative === 0 && suspicious.length === 0;
}

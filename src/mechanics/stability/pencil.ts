import type { Block } from "../assembly/blocks.ts";
import type { FrameParts } from "../assembly/frame.ts";
import { assemble, scatter } from "../assembly/matrix.ts";
import type { System } from "../assembly/system.ts";
import { buildSystem } from "../assembly/system.ts";
import { lowestPairs } from "../eigen/block-krylov.ts";
import type { Mechanism } from "../mechanism/bodies.ts";
import type { StiffLink } from "../mechanism/find.ts";
import { factorise } from "../sparse/factorise.ts";

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

/** Zero-valued copies keep the pattern of B that of K, so that both share one analysis. */
function* emptied(blocks: readonly Block[]): Generator<Block> {
  const zeros = new Map<number, Float64Array>();
  for (const { freedoms, values } of blocks) {
    const zero = zeros.get(values.length) ?? new Float64Array(values.length);
    zeros.set(values.length, zero);
    yield { freedoms, values: zero };
  }
}

function* both(a: Iterable<Block>, b: Iterable<Block>): Generator<Block> {
  yield* a;
  yield* b;
}

function scaled(full: Float64Array): Float64Array {
  let [move, turn] = [0, 0];
  full.forEach((value, f) => {
    if (f % 6 < 3) move = Math.max(move, Math.abs(value));
    else turn = Math.max(turn, Math.abs(value));
  });
  const size = move > 0 ? move : turn;
  return size > 0 ? full.map((value) => value / size) : full;
}

/** The lowest positive λ of K x = λ B x for a frame with closed links, and their modes. */
export function lowestModes(
  parts: FrameParts,
  links: readonly StiffLink[],
  share: readonly Block[],
  count: number,
): PencilModes {
  const system: System = buildSystem(parts, links);
  const { numbering, matrix, factor, analysis } = system;
  if (system.mechanisms.length > 0) return { kind: "mechanism", mechanisms: system.mechanisms };
  const B = assemble(numbering, both(emptied(system.blocks), share));
  const countBelow = (lambda: number): number => {
    const value = matrix.value.map((k, i) => k - lambda * (B.value[i] as number));
    return factorise(analysis, { ...matrix, value }).pivots.negative;
  };
  const modes = lowestPairs(matrix, factor, B, count, countBelow).map(({ lambda, vector, residual }) => {
    const full = new Float64Array(numbering.unknownOf.length);
    scatter(numbering, vector, 0, full);
    return { lambda, displacements: scaled(full), residual };
  });
  return { kind: "modes", modes };
}

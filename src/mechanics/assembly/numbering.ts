import { MechanicsInputError } from "../errors.ts";
import type { FrameModel } from "../model.ts";

/** A freedom held by a support. */
export const HELD = -1;
/** A freedom that nothing is fastened to, such as the rotation of a node on which only hinges meet. */
export const IDLE = -2;

export interface Numbering {
  /** Unknown of each node freedom (6 · node + component), or HELD or IDLE. */
  readonly unknownOf: Int32Array;
  readonly freedomOf: Int32Array;
  readonly count: number;
}

/** Elastic supports as freedom and stiffness; fixed ones as flags. Throws MechanicsInputError. */
export function supports(model: FrameModel): {
  readonly fixed: Uint8Array;
  readonly elastic: ReadonlyMap<number, number>;
} {
  const fixed = new Uint8Array(6 * model.nodes.length);
  const elastic = new Map<number, number>();
  for (const { node, holds } of model.supports ?? []) {
    if (!model.nodes[node]) throw new MechanicsInputError(`a support names node ${node}, which does not exist`);
    holds.forEach((hold, i) => {
      const freedom = 6 * node + i;
      if (hold === "fixed") fixed[freedom] = 1;
      else if (hold !== "free") {
        if (!(hold >= 0 && Number.isFinite(hold)))
          throw new MechanicsInputError(`support stiffness ${hold} at node ${node}`);
        if (hold > 0) elastic.set(freedom, (elastic.get(freedom) ?? 0) + hold);
      }
    });
  }
  return { fixed, elastic };
}

export const sameNumbering = (a: Numbering, b: Numbering): boolean =>
  a.unknownOf.length === b.unknownOf.length && a.unknownOf.every((unknown, f) => unknown === b.unknownOf[f]);

/** Numbers the freedoms that are neither held nor left without anything fastened to them. */
export function number(fixed: Uint8Array, fastened: Uint8Array): Numbering {
  const unknownOf = new Int32Array(fixed.length);
  const freedoms: number[] = [];
  for (let f = 0; f < fixed.length; f++) {
    if (fixed[f]) unknownOf[f] = HELD;
    else if (!fastened[f]) unknownOf[f] = IDLE;
    else unknownOf[f] = freedoms.push(f) - 1;
  }
  return { unknownOf, freedomOf: Int32Array.from(freedoms), count: freedoms.length };
}

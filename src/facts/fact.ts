import type { Frame } from "../model/frame.ts";

/** Something known about a frame beyond what its author wrote: computed on demand, once, pure, shared by all rules. */
export interface Fact<out T> {
  readonly id: string;
  /** Computes the fact for one frame; use `factOf`, which remembers. */
  readonly compute: (known: never, frame: Frame) => T;
  readonly needs: Needs;
}

export type Needs = Readonly<Record<string, Fact<unknown>>>;
export type Known<N extends Needs> = { readonly [K in keyof N]: N[K] extends Fact<infer T> ? T : never };

/** Why a fact is not known: it, or one it needs, failed. */
export class FactFailed extends Error {
  override readonly name = "FactFailed";
  readonly fact: string;
  constructor(fact: string, cause: unknown) {
    super(`fact ${fact} failed: ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
    this.fact = fact;
  }
}

export function defineFact<T, const N extends Needs = Record<never, never>>(fact: {
  readonly id: string;
  readonly needs?: N;
  compute(known: Known<N>, frame: Frame): T;
}): Fact<T> {
  return Object.freeze({
    id: fact.id,
    needs: fact.needs ?? {},
    compute: fact.compute as (known: never, frame: Frame) => T,
  });
}

type Outcome = { readonly value: unknown } | { readonly failed: FactFailed };
const remembered = new WeakMap<Frame, Map<string, Outcome>>();

/**
 * The fact for this frame, computed at most once; its needs come first.
 * @throws FactFailed naming the fact that failed first, again on every later call.
 */
export function factOf<T>(fact: Fact<T>, frame: Frame): T {
  let outcomes = remembered.get(frame);
  if (!outcomes) {
    outcomes = new Map();
    remembered.set(frame, outcomes);
  }
  let outcome = outcomes.get(fact.id);
  if (!outcome) {
    outcomes.set(fact.id, { failed: new FactFailed(fact.id, "it needs itself") });
    outcome = compute(fact, frame);
    outcomes.set(fact.id, outcome);
  }
  if ("failed" in outcome) throw outcome.failed;
  return outcome.value as T;
}

function compute(fact: Fact<unknown>, frame: Frame): Outcome {
  try {
    const known = knownOf(fact.needs, frame);
    return { value: fact.compute(known as never, frame) };
  } catch (cause) {
    return { failed: cause instanceof FactFailed ? cause : new FactFailed(fact.id, cause) };
  }
}

/** All needs of a rule or fact under their names. */
export function knownOf<N extends Needs>(needs: N, frame: Frame): Known<N> {
  const known: Record<string, unknown> = {};
  for (const [name, need] of Object.entries(needs)) known[name] = factOf(need, frame);
  return known as Known<N>;
}

import type { Ref } from "../model/ref.ts";
import type { Quantity, Si } from "../model/units/quantity.ts";
import type { Within } from "./range.ts";

/** A named quantity with a standard value: how much is allowed unless house, frame or part say otherwise. */
export interface Criterion<Q extends Quantity = Quantity> {
  /** In kebab case and for ever, like "joint-gap": what house and frame files write. */
  readonly name: string;
  readonly quantity: Q;
  /**
   * What sets it: the frame alone, which it is judged of as a whole, or besides it single bars or single panels. Another part that sets
   * it changes nothing, and its author is told so. Left out: bars and panels alike.
   */
  readonly of?: "frame" | "bars" | "panels";
  /** With its unit, "0.5 mm", or a share of the span, "span / 300", or both: "span / 300, at least 1 mm". */
  readonly standard: string;
  /** Smallest and largest value that a house or frame may set, with their units; left out, anything above zero that is believable. */
  readonly within?: Within;
  readonly about: string;
  /** Clause of a standard, or "common practice". */
  readonly basis: string;
}

export type Source = "default" | "stock" | "house" | "frame" | "part" | "computed";

/** A criterion resolved for one part of one frame. */
export interface Limit<Q extends Quantity = Quantity> {
  readonly value: Si<Q>;
  readonly from: Source;
  readonly basis: string;
}

/** A criterion resolved for the frame; `at` gives what holds for one part, with the span (m) where it is a share of one. */
export interface Given<Q extends Quantity = Quantity> extends Limit<Q> {
  at(part: Ref, span?: number): Limit<Q>;
}

export type Criteria = Readonly<Record<string, Criterion>>;
export type GivenAll<C extends Criteria> = {
  readonly [K in keyof C]: C[K] extends Criterion<infer Q> ? Given<Q> : never;
};

export function defineCriterion<const Q extends Quantity>(criterion: Criterion<Q>): Criterion<Q> {
  return Object.freeze(criterion);
}

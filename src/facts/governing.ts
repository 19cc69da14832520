import { type Quantity, type Si, si } from "../model/units/quantity.ts";
import type { CombinationKind } from "./combinations.ts";
import type { Bound } from "./joint-stiffness.ts";
import type { View } from "./response.ts";

/** A value as it governs: under which combination and joint stiffness, and what it is for the other stiffnesses. */
export interface Governed<Q extends Quantity> {
  readonly measured: Si<Q>;
  readonly under: { readonly combination: string; readonly bound: Bound };
  readonly otherBounds?: Readonly<Record<string, Si<Q>>>;
}

interface Worst {
  readonly value: number;
  readonly view: View;
}

function worstBy(
  views: readonly View[],
  kinds: readonly CombinationKind[],
  value: (view: View) => number | undefined,
): ReadonlyMap<Bound, Worst> {
  const worst = new Map<Bound, Worst>();
  for (const view of views) {
    if (!kinds.includes(view.combination.kind)) continue;
    const found = value(view);
    const known = worst.get(view.bound);
    if (found !== undefined && (!known || found > known.value)) worst.set(view.bound, { value: found, view });
  }
  return worst;
}

const under = (worst: Worst): Governed<never>["under"] => ({
  combination: worst.view.combination.name,
  bound: worst.view.bound,
});

/** The largest value with typical joints, beside what it is with soft and with stiff ones: for what the eye and hand notice. */
export function governing<Q extends Quantity>(
  views: readonly View[],
  kinds: readonly CombinationKind[],
  quantity: Q,
  value: (view: View) => number | undefined,
): Governed<Q> | undefined {
  const worst = worstBy(views, kinds, value);
  const typical = worst.get("typical");
  if (!typical) return undefined;
  const otherBounds: Record<string, Si<Q>> = {};
  for (const [bound, { value: other }] of worst) if (bound !== "typical") otherBounds[bound] = si(other, quantity);
  return { measured: si(typical.value, quantity), under: under(typical), otherBounds };
}

/** The largest value with any joint stiffness: for strength, which takes the worst. */
export function worstOfAll<Q extends Quantity>(
  views: readonly View[],
  kinds: readonly CombinationKind[],
  quantity: Q,
  value: (view: View) => number | undefined,
): Governed<Q> | undefined {
  let most: Worst | undefined;
  for (const worst of worstBy(views, kinds, value).values()) if (!most || worst.value > most.value) most = worst;
  return most && { measured: si(most.value, quantity), under: under(most) };
}

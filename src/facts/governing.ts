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

/** The worst under one bound as it governs, beside the worst under the others. */
function beside<Q extends Quantity>(
  worst: ReadonlyMap<Bound, Worst>,
  governs: Bound,
  quantity: Q,
): Governed<Q> | undefined {
  const found = worst.get(governs);
  if (!found) return undefined;
  const others = [...worst].filter(([bound]) => bound !== governs);
  return {
    measured: si(found.value, quantity),
    under: { combination: found.view.combination.name, bound: governs },
    otherBounds: Object.fromEntries(others.map(([bound, { value }]) => [bound, si(value, quantity)])),
  };
}

/** The largest value with typical joints, beside what it is with soft and with stiff ones: for what the eye and hand notice. */
export function governing<Q extends Quantity>(
  views: readonly View[],
  kinds: readonly CombinationKind[],
  quantity: Q,
  value: (view: View) => number | undefined,
): Governed<Q> | undefined {
  return beside(worstBy(views, kinds, value), "typical", quantity);
}

/**
 * What governs of strength and service combinations against one limit, which strength combinations alone have to keep `divided`
 * times clear of; and what the limit is divided by for the one that does.
 */
export function governingOf<Q extends Quantity>(
  views: readonly View[],
  divided: number,
  quantity: Q,
  value: (view: View) => number | undefined,
): { readonly governed: Governed<Q>; readonly divided: number } | undefined {
  if (divided === 1) {
    const governed = governing(views, ["strength", "service"], quantity, value);
    return governed && { governed, divided };
  }
  const [strength, service] = (["strength", "service"] as const).map((kind) =>
    governing(views, [kind], quantity, value),
  );
  if (strength && (!service || strength.measured * divided >= service.measured)) return { governed: strength, divided };
  return service && { governed: service, divided: 1 };
}

/** The largest value with any joint stiffness, beside what it is with the others: for strength, which takes the worst. */
export function worstOfAll<Q extends Quantity>(
  views: readonly View[],
  kinds: readonly CombinationKind[],
  quantity: Q,
  value: (view: View) => number | undefined,
): Governed<Q> | undefined {
  const worst = worstBy(views, kinds, value);
  let governs: Bound = "typical";
  for (const [bound, { value: other }] of worst)
    if (other > (worst.get(governs)?.value ?? Number.NEGATIVE_INFINITY)) governs = bound;
  return beside(worst, governs, quantity);
}

/** The view in which a value governs. */
export function governingView(
  views: readonly View[],
  { under }: { readonly under: { readonly combination: string; readonly bound: string } },
): View | undefined {
  return views.find(({ combination, bound }) => combination.name === under.combination && bound === under.bound);
}

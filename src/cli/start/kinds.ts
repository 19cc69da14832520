import { bench } from "./bench.ts";
import { cart } from "./cart.ts";
import type { Kind } from "./drawing.ts";
import { guard } from "./guard.ts";
import type { UsualSize } from "./order.ts";
import { rack } from "./rack.ts";

interface Startable {
  readonly kind: Kind;
  readonly usual: UsualSize;
}

/** What `start` can draw, each with the size it takes where none is given. */
export const KINDS: Readonly<Record<"bench" | "guard" | "cart" | "rack", Startable>> = {
  bench: { kind: bench, usual: { "mm-N-kg": [1500, 750, 900], "in-lbf-lb": [60, 30, 36] } },
  guard: { kind: guard, usual: { "mm-N-kg": [1100, 1000, 1800], "in-lbf-lb": [42, 40, 72] } },
  cart: { kind: cart, usual: { "mm-N-kg": [900, 600, 850], "in-lbf-lb": [36, 24, 34] } },
  rack: { kind: rack, usual: { "mm-N-kg": [1800, 600, 2000], "in-lbf-lb": [72, 24, 78] } },
};

export type KindName = keyof typeof KINDS;

export function isKindName(word: string): word is KindName {
  return Object.hasOwn(KINDS, word);
}

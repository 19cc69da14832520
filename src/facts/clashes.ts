import type { Bounds3 } from "../geometry/bounds.ts";
import { boxBounds } from "../geometry/box.ts";
import { type Prism, prismFromBox } from "../geometry/prism.ts";
import { prismPenetration } from "../geometry/prism-penetration.ts";
import { overlappingPairs } from "../geometry/sweep-and-prune.ts";
import { type Ref, ref } from "../model/ref.ts";
import { bodies } from "./bodies.ts";
import { contacts, NO_DEPTH } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { placements } from "./placements.ts";

/** Two solid parts that take the same room. */
export interface Clash {
  readonly a: Ref;
  readonly b: Ref;
  /** How far they would have to part, m. */
  readonly depth: number;
}

interface Solid {
  readonly of: Ref;
  readonly prism: Prism;
  readonly bounds: Bounds3;
  /** Bars a leg is fastened to: it lies on their faces, or they are out of square, which bar.skewed tells. */
  readonly bars: readonly string[];
}

/**
 * Bars and the legs of brackets and plates that run into each other, by the separating-axis test on their envelopes.
 * Screws in bores, lugs and panels in slots are meant to share room and are not looked at; nor are gusset walls, nor legs on their own bars.
 */
export const clashes = defineFact<
  readonly Clash[],
  { bodies: typeof bodies; contacts: typeof contacts; placements: typeof placements }
>({
  id: "clashes",
  needs: { bodies, contacts, placements },
  compute({ bodies: all, contacts: touching, placements: placed }) {
    const worst = new Map<string, Clash>();
    const add = (a: Ref, b: Ref, depth: number): void => {
      const key = `${a.id} ${b.id}`;
      const known = worst.get(key);
      if (!known || depth > known.depth) worst.set(key, { a, b, depth });
    };
    for (const { bars, depth } of touching.clashes) add(ref("bar", bars[0]), ref("bar", bars[1]), depth);
    const solids: Solid[] = [];
    for (const body of all.values())
      if (body.prism) solids.push({ of: body.bar.ref, prism: body.prism, bounds: body.bounds, bars: [] });
    const barCount = solids.length;
    for (const connector of placed.connectors) {
      for (const box of connector.solids) {
        solids.push({
          of: connector.ref,
          prism: prismFromBox(box),
          bounds: boxBounds(box),
          bars: connector.holds.map((hold) => hold.bar),
        });
      }
    }
    for (const [i, j] of overlappingPairs(solids.map((solid) => solid.bounds))) {
      const [a, b] = [solids[i], solids[j]];
      // Pairs of bars are known already; two legs of one connector belong together.
      if (!a || !b || (i < barCount && j < barCount) || a.of.id === b.of.id) continue;
      if (a.bars.includes(b.of.id) || b.bars.includes(a.of.id)) continue;
      const { depth } = prismPenetration(a.prism, b.prism);
      if (depth > NO_DEPTH) add(a.of, b.of, depth);
    }
    return [...worst.values()];
  },
});

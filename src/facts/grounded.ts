import { defineFact } from "./fact.ts";
import { footing } from "./footing.ts";
import { structure } from "./structure.ts";

/** Which bars reach the floor by way of which. */
export interface Grounded {
  /** Whether `bar` reaches a foot only by way of `other`, which it is fastened to: it then hangs on it or stands on it, and holds it nowhere. */
  onlyBy(bar: string, other: string): boolean;
}

/** What a search from the floor knows of a bar: when it was come to, from where, and how near to the floor its branch reaches back. */
interface Reached {
  readonly turn: number;
  readonly by: string | undefined;
  back: number;
}

/**
 * Bars that cut others off from the floor: articulation points of the graph of what is fastened to what, by one search in depth from the
 * floor (Hopcroft and Tarjan, Communications of the ACM 16, 1973).
 */
export const grounded = defineFact<Grounded, { structure: typeof structure; footing: typeof footing }>({
  id: "grounded",
  needs: { structure, footing },
  compute({ structure: known, footing: feet }) {
    const beside = new Map<string, string[]>();
    const near = (bar: string): string[] => {
      const list = beside.get(bar) ?? [];
      beside.set(bar, list);
      return list;
    };
    for (const { bar, onto } of known.links) {
      near(bar).push(onto);
      near(onto).push(bar);
    }
    const footed = new Set(feet.flatMap(({ node }) => known.nodes[node]?.bar ?? []));
    const reached = new Map<string, Reached>();
    let turn = 0;
    const come = (bar: string, by: string | undefined): Reached => {
      turn += 1;
      // The floor itself is turn 0.
      const one = { turn, by, back: footed.has(bar) ? 0 : turn };
      reached.set(bar, one);
      return one;
    };
    for (const first of footed) {
      if (reached.has(first)) continue;
      come(first, undefined);
      const path = [{ bar: first, next: 0 }];
      for (let top = path.at(-1); top !== undefined; top = path.at(-1)) {
        const here = reached.get(top.bar) as Reached;
        const other = near(top.bar)[top.next];
        top.next += 1;
        if (other === undefined) {
          path.pop();
          const before = here.by === undefined ? undefined : reached.get(here.by);
          if (before) before.back = Math.min(before.back, here.back);
          continue;
        }
        const there = reached.get(other);
        if (there) {
          if (other !== here.by) here.back = Math.min(here.back, there.turn);
        } else {
          come(other, top.bar);
          path.push({ bar: other, next: 0 });
        }
      }
    }
    return {
      onlyBy(bar, other) {
        const through = reached.get(other);
        let one = reached.get(bar);
        if (!one || !through || one.turn < through.turn) return false;
        while (one && one.by !== other) one = one.by === undefined ? undefined : reached.get(one.by);
        return one !== undefined && one.back >= through.turn;
      },
    };
  },
});

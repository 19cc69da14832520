import { connections } from "./connections.ts";
import { defineFact } from "./fact.ts";

/** Bars that hang together, largest set first; a sound frame has one. */
export const islands = defineFact<readonly (readonly string[])[], { connections: typeof connections }>({
  id: "islands",
  needs: { connections },
  compute({ connections: known }, frame) {
    const parent = new Map<string, string>(frame.bars.map((bar) => [bar.ref.id, bar.ref.id]));
    const root = (bar: string): string => {
      let at = bar;
      for (let up = parent.get(at); up !== undefined && up !== at; up = parent.get(at)) {
        const above = parent.get(up) ?? up;
        parent.set(at, above);
        at = above;
      }
      return at;
    };
    for (const { holds } of known.all) {
      const held = holds.filter((hold) => hold.screws.length > 0);
      for (const hold of held) {
        const first = held[0];
        if (first) parent.set(root(hold.bar), root(first.bar));
      }
    }
    const sets = new Map<string, string[]>();
    for (const bar of frame.bars) {
      const top = root(bar.ref.id);
      const known = sets.get(top);
      if (known) known.push(bar.ref.id);
      else sets.set(top, [bar.ref.id]);
    }
    return [...sets.values()].sort((a, b) => b.length - a.length);
  },
});

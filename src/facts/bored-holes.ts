import { along, scale } from "../geometry/vector.ts";
import { faceNormal } from "./axes.ts";
import { bodies, onFace } from "./bodies.ts";
import { chooseFace } from "./face-choice.ts";
import { defineFact } from "./fact.ts";
import { frameMiddle } from "./frame-middle.ts";
import { alongToCut } from "./landing.ts";
import type { Bored } from "./placed.ts";
import { rodGap } from "./rods.ts";
import { screwedParts } from "./screwed-parts.ts";
import { standDirection, standings } from "./standings.ts";
import { faceDistance } from "./tubes.ts";

/** Two holes or shanks in one bar, and the metal between them, negative where they meet, m. */
export interface HolePair {
  readonly bar: string;
  readonly a: Bored;
  readonly b: Bored;
  readonly metal: number;
}

/** A hole drilled across a bar and how far its middle is from the nearer cut end, m. */
export interface EdgeHole {
  readonly bar: string;
  readonly hole: Bored;
  readonly toEnd: number;
}

export interface BoredHoles {
  readonly all: readonly Bored[];
  /** Those drilled into a bar from its side. */
  readonly drilled: readonly Bored[];
  readonly pairs: readonly HolePair[];
  readonly edges: readonly EdgeHole[];
}

/** Every hole and shank inside the bars: access holes, end screws, foot stems, key holes and holes drilled by hand. */
export const boredHoles = defineFact<
  BoredHoles,
  { bodies: typeof bodies; parts: typeof screwedParts; standings: typeof standings; middle: typeof frameMiddle }
>({
  id: "bored-holes",
  needs: { bodies, parts: screwedParts, standings, middle: frameMiddle },
  compute({ bodies: all, parts, standings: standing, middle }) {
    const list: Bored[] = parts.all.flatMap((connector) => connector.bored);
    const across = new Set<Bored>(list.filter((bored) => bored.what !== "end screw"));
    for (const body of all.values()) {
      for (const [i, hole] of body.bar.holes.entries()) {
        const face = chooseFace(body, hole.on, middle);
        if (!("is" in face)) continue;
        const top = onFace(body, face.is, body.reach[0] + hole.at, 0);
        const depth = hole.through ? 2 * faceDistance(body, face.is) : faceDistance(body, face.is);
        const bored: Bored = {
          bar: body.bar.ref.id,
          by: body.bar.ref,
          what: `hole ${i + 1}`,
          line: { from: top, to: along(top, faceNormal(body.axes, face.is), -depth) },
          radius: hole.diameter / 2,
        };
        list.push(bored);
        across.add(bored);
      }
    }
    for (const under of standing.all) {
      const { mount } = under.stand.part;
      const [bore] = under.body.bar.profile.bores;
      if (mount.by !== "stem" || !bore) continue;
      list.push({
        bar: under.body.bar.ref.id,
        by: under.stand.ref,
        what: "stem",
        line: { from: under.top, to: along(under.top, scale(standDirection(under), -1), mount.engagement) },
        radius: bore.diameter / 2,
      });
    }
    const byBar = new Map<string, Bored[]>();
    for (const bored of list) {
      const known = byBar.get(bored.bar);
      if (known) known.push(bored);
      else byBar.set(bored.bar, [bored]);
    }
    const pairs: HolePair[] = [];
    for (const [bar, holes] of byBar) {
      for (const [i, a] of holes.entries()) {
        for (const b of holes.slice(i + 1)) {
          // A key hole and the fastener it serves are one thing.
          if (a.by.id === b.by.id && a.by.kind !== "bar") continue;
          // A screw that reaches nothing of the bar makes no hole.
          const metal = rodGap(a, b);
          if (Number.isFinite(metal)) pairs.push({ bar, a, b, metal });
        }
      }
    }
    const edges: EdgeHole[] = [];
    for (const hole of across) {
      const body = all.get(hole.bar);
      if (!body || hole.what === "key hole") continue;
      edges.push({
        bar: hole.bar,
        hole,
        toEnd: Math.min(alongToCut(body, "from", hole.line.from), alongToCut(body, "to", hole.line.from)),
      });
    }
    return { all: list, drilled: [...across], pairs, edges };
  },
});

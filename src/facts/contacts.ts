import { faceContact } from "../geometry/face-contact.ts";
import { prismPenetration } from "../geometry/prism-penetration.ts";
import { overlappingPairs } from "../geometry/sweep-and-prune.ts";
import type { Vec3 } from "../geometry/vector.ts";
import type { EndName } from "../model/ref.ts";
import { type Body, bodies, type Side } from "./bodies.ts";
import { defineFact } from "./fact.ts";

/** Two sides of two bars that look at each other: how far apart, over what area. */
export interface Contact {
  readonly a: { readonly bar: string; readonly side: Side };
  readonly b: { readonly bar: string; readonly side: Side };
  /** Out of a, towards b. */
  readonly normal: Vec3;
  /** Distance at the middle of the shared area, negative where the bars run into each other, m. */
  readonly gap: number;
  readonly widestGap: number;
  /** m² */
  readonly area: number;
  /** Middle of the shared area, on a's side. */
  readonly middle: Vec3;
  /** Outline of the shared area, on a's side. */
  readonly overlap: readonly Vec3[];
}

export interface Contacts {
  readonly all: readonly Contact[];
  /** Contacts of a bar, always seen from it: it is `a`. */
  of(bar: string): readonly Contact[];
  /** What an end looks at, nearest first. */
  ofEnd(bar: string, end: EndName): readonly Contact[];
  /** Bars whose solids share space, with the depth of the overlap, m. */
  readonly clashes: readonly { readonly bars: readonly [string, string]; readonly depth: number }[];
}

/** Sides further apart than this are not about to touch, m: half the smallest profile. */
const REACH = 0.02;
/** Faces count as looking at each other within this angle, rad: 2°, well over a bad saw cut. */
const FACING = (2 * Math.PI) / 180;
/** Contacts closer than this bear on each other, m: flatness of an ordinary saw cut. */
export const TOUCH = 0.0005;
/** Overlaps below rounding are none, m. */
export const NO_DEPTH = 1e-7;

/** The same contact seen from the other bar. */
function turned(contact: Contact): Contact {
  const [x, y, z] = contact.normal;
  return { ...contact, a: contact.b, b: contact.a, normal: [-x, -y, -z] };
}

function between(a: Body, b: Body, into: Contact[]): void {
  for (const sideA of a.sides) {
    for (const sideB of b.sides) {
      const found = faceContact(sideA.face, sideB.face, FACING);
      if (!found || found.area === 0 || Math.abs(found.gap) > REACH) continue;
      into.push({
        a: { bar: a.bar.ref.id, side: sideA.side },
        b: { bar: b.bar.ref.id, side: sideB.side },
        normal: sideA.face.normal,
        gap: found.gap,
        widestGap: found.widestGap,
        area: found.area,
        middle: found.middle,
        overlap: found.overlap,
      });
    }
  }
}

/** Pairs of bars that are looked at: so many for each bar, and so many at least. A crowded real frame has a tenth of them. */
const PAIRS_A_BAR = 30;
const PAIRS = 2000;

/** Which sides of which bars look at each other from near by, and which bars run into each other. */
export const contacts = defineFact<Contacts, { bodies: typeof bodies }>({
  id: "contacts",
  needs: { bodies },
  compute({ bodies: all }) {
    const list = [...all.values()];
    const found: Contact[] = [];
    const clashes: { bars: readonly [string, string]; depth: number }[] = [];
    const most = PAIRS + PAIRS_A_BAR * list.length;
    const pairs = overlappingPairs(
      list.map((body) => body.bounds),
      REACH,
      most,
    );
    if (pairs.length > most)
      throw new Error(
        `a limit was hit: more than ${most} pairs of the ${list.length} bars lie over each other; are bars or copies drawn in one place?`,
      );
    for (const [i, j] of pairs) {
      const [a, b] = [list[i], list[j]];
      if (!a?.prism || !b?.prism) continue;
      const { depth } = prismPenetration(a.prism, b.prism);
      if (depth < -REACH) continue;
      if (depth > NO_DEPTH) clashes.push({ bars: [a.bar.ref.id, b.bar.ref.id], depth });
      between(a, b, found);
    }
    const byBar = new Map<string, Contact[]>();
    for (const contact of found) {
      for (const seen of [contact, turned(contact)]) {
        const known = byBar.get(seen.a.bar);
        if (known) known.push(seen);
        else byBar.set(seen.a.bar, [seen]);
      }
    }
    for (const of of byBar.values()) of.sort((p, q) => Math.abs(p.gap) - Math.abs(q.gap) || q.area - p.area);
    return {
      all: found,
      of: (bar) => byBar.get(bar) ?? [],
      ofEnd: (bar, end) => (byBar.get(bar) ?? []).filter((contact) => contact.a.side === end),
      clashes,
    };
  },
});

import { dot } from "../geometry/vector.ts";
import { up } from "./axes.ts";
import { type Body, bodies, cutStation } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { footing } from "./footing.ts";
import { structure } from "./structure.ts";

/** A stretch of a bar between two things that hold it, or past the last of them; stations from the cut from end, m. */
export interface Span {
  readonly kind: "between" | "overhang";
  readonly from: number;
  readonly to: number;
  /** On an overhang: the station that is held. */
  readonly held: number;
  readonly length: number;
}

/** A bar is steep beyond this: it then props what is level. */
const STEEP = Math.SQRT1_2;
/** An end that stands out past its last support by no more than this many section depths is no overhang. */
const STUB = 1.5;
/** Supports nearer to each other than this many section depths hold as one. */
const ONE_SUPPORT = 1;
/** Supports nearer than this lie on one another, m. */
const SAME_PLACE = 1e-6;

function supportsOf(
  body: Body,
  links: readonly { at: number; steep: boolean; own: boolean }[],
  feet: readonly number[],
  low: number,
  length: number,
): number[] {
  const steep = Math.abs(dot(body.axes.x, up)) > STEEP;
  const depth = 2 * Math.max(body.half.y, body.half.z);
  const found: number[] = [...feet.map((s) => s - low)];
  for (const link of links) {
    const at = link.at - low;
    const nearEnd = at < depth || at > length - depth;
    // A level bar is held where it ends and where something steep props it; a steep one by all it meets.
    if (link.own || steep || link.steep || (nearEnd && links.length <= 2)) found.push(at);
  }
  // A plate may reach past a bar's end, and a bar beside it may lie there: what it holds is the end.
  const within = found.map((s) => Math.min(Math.max(s, 0), length)).sort((a, b) => a - b);
  return within.filter((s, i) => {
    const apart = s - (within[i - 1] ?? -Infinity);
    return apart > ONE_SUPPORT * depth || (i === within.length - 1 && apart > SAME_PLACE);
  });
}

/** The physical spans of every bar: a bar that runs over three posts has two. */
export const spans = defineFact<
  ReadonlyMap<string, readonly Span[]>,
  { bodies: typeof bodies; structure: typeof structure; footing: typeof footing }
>({
  id: "spans",
  needs: { bodies, structure, footing },
  compute({ bodies: all, structure: known, footing: feet }) {
    const links = new Map<string, { at: number; steep: boolean; own: boolean }[]>();
    const note = (bar: string, at: number, other: string, own: boolean): void => {
      const body = all.get(other);
      const steep = body !== undefined && Math.abs(dot(body.axes.x, up)) > STEEP;
      const list = links.get(bar);
      if (list) list.push({ at, steep, own });
      else links.set(bar, [{ at, steep, own }]);
    };
    for (const link of known.links) {
      note(link.bar, link.stations[0], link.onto, true);
      note(link.onto, link.stations[1], link.bar, false);
    }
    const standing = new Map<string, number[]>();
    for (const { node } of feet) {
      const at = known.nodes[node];
      if (!at) continue;
      const list = standing.get(at.bar);
      if (list) list.push(at.station);
      else standing.set(at.bar, [at.station]);
    }
    const map = new Map<string, readonly Span[]>();
    for (const [id, body] of all) {
      if (!body.prism) continue;
      const low = cutStation(body, "from");
      const length = cutStation(body, "to") - low;
      const supports = supportsOf(body, links.get(id) ?? [], standing.get(id) ?? [], low, length);
      const stub = STUB * 2 * Math.max(body.half.y, body.half.z);
      const list: Span[] = [];
      const [first] = supports;
      const last = supports[supports.length - 1];
      if (first === undefined || last === undefined) {
        map.set(id, list);
        continue;
      }
      if (first > stub) list.push({ kind: "overhang", from: 0, to: first, held: first, length: first });
      for (const [i, to] of supports.entries()) {
        const from = supports[i - 1];
        if (from !== undefined) list.push({ kind: "between", from, to, held: from, length: to - from });
      }
      if (length - last > stub)
        list.push({ kind: "overhang", from: last, to: length, held: last, length: length - last });
      map.set(id, list);
    }
    return map;
  },
});

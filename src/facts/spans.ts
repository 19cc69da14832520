import { type Body, bodies, cutStation } from "./bodies.ts";
import { borneFirst } from "./borne-first.ts";
import { defineFact } from "./fact.ts";
import { depthOf, meetings } from "./meetings.ts";
import { supportsOf } from "./supports-of.ts";

/** A stretch of a bar between two things that hold it, or past the last of them; stations from the cut from end, m. */
export interface Span {
  readonly kind: "between" | "overhang";
  readonly from: number;
  readonly to: number;
  /** On an overhang: the station that is held. */
  readonly held: number;
  readonly length: number;
}

/** An end that stands out past its last support by no more than this many section depths is no overhang. */
const STUB = 1.5;

function spansOver(body: Body, supports: readonly number[]): readonly Span[] {
  const length = cutStation(body, "to") - cutStation(body, "from");
  const stub = STUB * depthOf(body);
  const [first, last] = [supports[0], supports.at(-1)];
  if (first === undefined || last === undefined) return [];
  const list: Span[] = [];
  if (first > stub) list.push({ kind: "overhang", from: 0, to: first, held: first, length: first });
  for (const [i, to] of supports.entries()) {
    const from = supports[i - 1];
    if (from !== undefined) list.push({ kind: "between", from, to, held: from, length: to - from });
  }
  if (length - last > stub) list.push({ kind: "overhang", from: last, to: length, held: last, length: length - last });
  return list;
}

const same = (a: Span, b: Span): boolean => a.kind === b.kind && a.from === b.from && a.to === b.to;

/**
 * The physical spans of every bar: a bar that runs over three posts has two. Where some of what holds it is borne by it in turn, or by what it
 * bears, the spans between what bears it in any case come besides: an arm has the rail that joins its tip to another's, and stands out
 * from its post all the same.
 */
export const spans = defineFact<
  ReadonlyMap<string, readonly Span[]>,
  { bodies: typeof bodies; meetings: typeof meetings; borne: typeof borneFirst }
>({
  id: "spans",
  needs: { bodies, meetings, borne: borneFirst },
  compute({ bodies: all, meetings: held, borne }) {
    const map = new Map<string, readonly Span[]>();
    for (const [bar, { feet, meetings: met }] of held) {
      const body = all.get(bar);
      if (!body) continue;
      const list = spansOver(body, supportsOf(body, [...feet, ...met.map(({ at }) => at)]));
      const whole = spansOver(body, supportsOf(body, borne.bears(bar)));
      map.set(bar, [...list, ...whole.filter((one) => !list.some((other) => same(one, other)))]);
    }
    return map;
  },
});

import { along, dot } from "../geometry/vector.ts";
import { up } from "./axes.ts";
import { type Body, bodies, cutStation } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { footing } from "./footing.ts";
import { type Link, structure } from "./structure.ts";

/** A stretch of a bar between two things that hold it, or past the last of them; stations from the cut from end, m. */
export interface Span {
  readonly kind: "between" | "overhang";
  readonly from: number;
  readonly to: number;
  /** On an overhang: the station that is held. */
  readonly held: number;
  readonly length: number;
}

/** A bar is steep beyond this: it then props what is level. Bars along each other beyond the second do not hold one another. */
const STEEP = Math.SQRT1_2;
const ALONG = 0.99;
/** An end that stands out past its last support by no more than this many section depths is no overhang. */
const STUB = 1.5;
/** Supports nearer to each other than this many section depths hold as one. */
const ONE_SUPPORT = 1;
/** Supports nearer than this lie on one another, m. */
const SAME_PLACE = 1e-6;

/** What a bar meets at a station. */
interface Meeting {
  readonly at: number;
  readonly other: string;
  /** The bar ends there; another ends on it; or both are held by a plate, a pivot, a hinge or a latch; or they lie along each other. */
  readonly kind: "ends" | "passed" | "held" | "along";
  /** The other props it: it is steep, or it lies under it. */
  readonly propped: boolean;
  /** Whether the other has its own end there. */
  readonly otherEnds: boolean;
}

const depthOf = (body: Body): number => 2 * Math.max(body.half.y, body.half.z);
const isSteep = (body: Body): boolean => Math.abs(dot(body.axes.x, up)) > STEEP;

/** Within one section depth of an end of the bar. */
function nearEnd(body: Body, at: number): boolean {
  const depth = depthOf(body);
  return at - cutStation(body, "from") < depth || cutStation(body, "to") - at < depth;
}

function meet(all: ReadonlyMap<string, Body>, link: Link, side: 0 | 1): Meeting | undefined {
  const [own, other] = side === 0 ? [link.bar, link.onto] : [link.onto, link.bar];
  const [body, met] = [all.get(own), all.get(other)];
  if (!body || !met) return undefined;
  const [at, there] = [link.stations[side], link.stations[1 - side] ?? 0];
  const level = (of: Body, station: number): number => along(of.bar.from, of.axes.x, station)[2];
  // By more than a quarter of the two sections: what lies beside it, or ends on its side, is not under it.
  const under = level(met, there) < level(body, at) - (depthOf(body) + depthOf(met)) / 4;
  const parallel = Math.abs(dot(body.axes.x, met.axes.x)) > ALONG;
  const kind = link.byEnd ? (side === 0 ? "ends" : "passed") : parallel ? "along" : "held";
  return { at, other, kind, propped: kind !== "along" && (isSteep(met) || under), otherEnds: nearEnd(met, there) };
}

/** What surely holds a bar: a steep one all that it meets, a level one its ends and what props it. */
const sure = (body: Body, { kind, propped }: Meeting): boolean =>
  kind !== "along" && (kind === "ends" || propped || isSteep(body));

/** Stations of the meetings that hold a bar. `sureOf` counts what surely holds a bar, its feet among them. */
function holding(body: Body, meetings: readonly Meeting[], feet: number, sureOf: (bar: string) => number): number[] {
  const own = sureOf(body.bar.ref.id);
  const holds = meetings.filter((one) => {
    if (sure(body, one)) return true;
    if (one.kind === "along" || !nearEnd(body, one.at)) return false;
    if (one.kind === "passed") return meetings.length <= 2;
    // At a corner the bar with less to stand on hangs on the other.
    return !one.otherEnds || own <= sureOf(one.other);
  });
  if (holds.length + feet > 0) return holds.map(({ at }) => at);
  const across = meetings.filter(({ kind }) => kind !== "along");
  return (across.length > 0 ? across : meetings).map(({ at }) => at);
}

function supportsOf(body: Body, stations: readonly number[]): number[] {
  const [low, high] = [cutStation(body, "from"), cutStation(body, "to")];
  const length = high - low;
  const depth = depthOf(body);
  // A plate may reach past a bar's end, and a bar beside it may lie there: what it holds is the end.
  const within = stations.map((s) => Math.min(Math.max(s - low, 0), length)).sort((a, b) => a - b);
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
    const meetings = new Map<string, Meeting[]>();
    for (const link of known.links)
      for (const side of [0, 1] as const) {
        const one = meet(all, link, side);
        const bar = side === 0 ? link.bar : link.onto;
        if (one) meetings.set(bar, [...(meetings.get(bar) ?? []), one]);
      }
    const standing = new Map<string, number[]>();
    for (const { node } of feet) {
      const at = known.nodes[node];
      if (!at) continue;
      const list = standing.get(at.bar);
      if (list) list.push(at.station);
      else standing.set(at.bar, [at.station]);
    }
    const sureOf = (bar: string): number => {
      const body = all.get(bar);
      const surely = body ? (meetings.get(bar) ?? []).filter((one) => sure(body, one)) : [];
      return surely.length + (standing.get(bar)?.length ?? 0);
    };
    const map = new Map<string, readonly Span[]>();
    for (const [id, body] of all) {
      if (!body.prism) continue;
      const low = cutStation(body, "from");
      const length = cutStation(body, "to") - low;
      const feetUnder = standing.get(id) ?? [];
      const held = holding(body, meetings.get(id) ?? [], feetUnder.length, sureOf);
      const supports = supportsOf(body, [...feetUnder, ...held]);
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

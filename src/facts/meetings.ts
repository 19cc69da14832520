import { along, dot } from "../geometry/vector.ts";
import { up } from "./axes.ts";
import { type Body, bodies, cutStation } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { footing } from "./footing.ts";
import { grounded } from "./grounded.ts";
import { type Link, structure } from "./structure.ts";

/** What a bar meets at a station. */
export interface Meeting {
  readonly at: number;
  readonly other: string;
  /** The bar ends there; another ends on it; or both are held by a plate, a pivot, a hinge or a latch; or they lie along each other. */
  readonly kind: "ends" | "passed" | "held" | "along";
  /** The other props it: it is steep, or it lies under it. */
  readonly propped: boolean;
  /** Whether the other has its own end there. */
  readonly otherEnds: boolean;
}

/** What holds a bar along its length; stations from the drawn from point, m. */
export interface Held {
  /** Where it stands on feet. */
  readonly feet: readonly number[];
  /** Where other bars may hold it. One that reaches the floor by way of this bar alone does not. */
  readonly meetings: readonly Meeting[];
}

/** A bar is steep beyond this: it then props what is level. Bars along each other beyond the second do not hold one another. */
const STEEP = Math.SQRT1_2;
const ALONG = 0.99;

export const depthOf = (body: Body): number => 2 * Math.max(body.half.y, body.half.z);
export const isSteep = (body: Body): boolean => Math.abs(dot(body.axes.x, up)) > STEEP;

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

/** The meetings that hold a bar. `sureOf` counts what surely holds a bar, its feet among them. */
function holding(
  body: Body,
  meetings: readonly Meeting[],
  feet: number,
  sureOf: (bar: string) => number,
): readonly Meeting[] {
  const own = sureOf(body.bar.ref.id);
  const holds = meetings.filter((one) => {
    if (sure(body, one)) return true;
    if (one.kind === "along" || !nearEnd(body, one.at)) return false;
    if (one.kind === "passed") return meetings.length <= 2;
    // At a corner the bar with less to stand on hangs on the other.
    return !one.otherEnds || own <= sureOf(one.other);
  });
  if (holds.length + feet > 0) return holds;
  const across = meetings.filter(({ kind }) => kind !== "along");
  return across.length > 0 ? across : meetings;
}

/** What holds every bar that has a section. */
export const meetings = defineFact<
  ReadonlyMap<string, Held>,
  { bodies: typeof bodies; structure: typeof structure; footing: typeof footing; grounded: typeof grounded }
>({
  id: "meetings",
  needs: { bodies, structure, footing, grounded },
  compute({ bodies: all, structure: known, footing: feet, grounded: floor }) {
    const met = new Map<string, Meeting[]>();
    for (const link of known.links)
      for (const side of [0, 1] as const) {
        const one = meet(all, link, side);
        const bar = side === 0 ? link.bar : link.onto;
        if (one && !floor.onlyBy(one.other, bar)) met.set(bar, [...(met.get(bar) ?? []), one]);
      }
    const standing = new Map<string, number[]>();
    for (const { node } of feet) {
      const at = known.nodes[node];
      if (at) standing.set(at.bar, [...(standing.get(at.bar) ?? []), at.station]);
    }
    const sureOf = (bar: string): number => {
      const body = all.get(bar);
      const surely = body ? (met.get(bar) ?? []).filter((one) => sure(body, one)) : [];
      return surely.length + (standing.get(bar)?.length ?? 0);
    };
    return new Map(
      [...all]
        .filter(([, body]) => body.prism)
        .map(([id, body]): [string, Held] => {
          const under = standing.get(id) ?? [];
          return [id, { feet: under, meetings: holding(body, met.get(id) ?? [], under.length, sureOf) }];
        }),
    );
  },
});

import type { Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import type { Connector } from "../model/stock/stock.ts";
import { type Body, bodies, cutStation } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { inTube } from "./tubes.ts";

/** A pivot, hinge, latch or tie, and how it lies to one of the bars it holds. */
export interface Fitting {
  /** The pivot, tie or door it belongs to. */
  readonly of: Ref;
  readonly part: Connector;
  readonly body: Body;
  /** From its axis to the bar, and how far from the axis its outermost screw sits, m; undefined for ties, which have no axis. */
  readonly lies: { readonly away: number; readonly reach: number } | undefined;
}

/** Distance of a point from the envelope of a bar as cut, m; 0 inside. */
function away(body: Body, point: Vec3): number {
  const [x, y, z] = inTube(body, point);
  const [from, to] = [cutStation(body, "from"), cutStation(body, "to")];
  const beyond = (at: number, low: number, high: number): number => Math.max(low - at, at - high, 0);
  return Math.hypot(beyond(x, from, to), beyond(y, -body.half.y, body.half.y), beyond(z, -body.half.z, body.half.z));
}

/** How far from its axis the outermost screw of a part sits, m. */
function reachOf(part: Connector): number {
  if (part.kind !== "pivot" && part.kind !== "hinge") return 0;
  return part.holes.reduce((most, { at }) => Math.max(most, Math.hypot(at[0], at[1])), 0);
}

/** Every pivot, hinge, latch and tie beside each bar it holds. */
export const fittings = defineFact<readonly Fitting[], { bodies: typeof bodies }>({
  id: "fittings",
  needs: { bodies },
  compute({ bodies: all }, frame) {
    const list: Fitting[] = [];
    const add = (of: Ref, part: Connector, bars: readonly string[], at?: Vec3): void => {
      for (const bar of bars) {
        const body = all.get(bar);
        if (!body) continue;
        list.push({ of, part, body, lies: at && { away: away(body, at), reach: reachOf(part) } });
      }
    };
    for (const { ref, part, bars } of frame.ties) add(ref, part, bars);
    // Whether bars that a tie holds where they cross lie face to face is looked at with all ties.
    for (const { ref, part, bars, at } of frame.pivots) add(ref, part, bars, part.kind === "side-tie" ? undefined : at);
    for (const { ref, hinges, latch } of frame.doors)
      for (const { part, bars, at } of latch ? [...hinges, latch] : hinges) add(ref, part, bars, at);
    return list;
  },
});

import { add, along, dot, length, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { InternalForces } from "../mechanics/member/fields.ts";
import { valueAt } from "../mechanics/piecewise.ts";
import type { Ref } from "../model/ref.ts";
import { type Body, bodies, cutStation } from "./bodies.ts";
import { type Combined, combinations, resultantOf } from "./combinations.ts";
import { TOUCH } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { footing } from "./footing.ts";
import { hanging } from "./hanging.ts";
import { linkAxes } from "./link-axes.ts";
import { placements } from "./placements.ts";
import { response, type View } from "./response.ts";
import { type Link, structure } from "./structure.ts";
import { usualViews } from "./usual-views.ts";

/** What one bar puts on another at a joint. Of the two it is told of the one that gives: the force goes the way of the loads. */
export interface Passing {
  readonly joint: Ref;
  readonly giver: string;
  readonly taker: string;
  /** m */
  readonly at: Vec3;
  /** Of the giver on the taker, global, N: what bears on the other bar, and what the fasteners hold. */
  readonly seat: Vec3;
  readonly held: Vec3;
  readonly by: "screws" | "pin" | "latch" | "tie";
}

/** A short stretch of a bar, as shares of its cut length, with the force across a cut in its middle, N. */
export interface Carried {
  readonly from: number;
  readonly to: number;
  readonly size: number;
  /** Along the bar, pull positive. */
  readonly axial: number;
}

/** How the loads of one combination run through the frame to the floor, joints typical. */
export interface LoadPath {
  readonly name: string;
  readonly combination: Combined;
  carriedBy(bar: string): readonly Carried[];
  /** The greatest force first; those too small to matter are left out. */
  readonly passings: readonly Passing[];
  /** What each foot puts on the floor, N. */
  readonly feet: readonly { readonly ref: Ref; readonly at: Vec3; readonly force: Vec3 }[];
  /** Sums of what the feet put on the floor, and of the loads, N. */
  readonly borne: Vec3;
  readonly applied: Vec3;
}

/** Forces passed that are less than this share of all loads are left out. */
const WORTH = 0.005;
/** Bars are looked at in stretches of about this length, m, and in no more of them a piece. */
const STRETCH = 0.12;
const STRETCHES = 8;
/** Paths that are told. Of a frame with more bars than this one is, its bars only cut where something is joined to them. */
const PATHS = 6;
const MANY_BARS = 400;

function carried(
  forces: InternalForces | undefined,
  body: Body,
  stations: readonly number[],
  most: number,
): readonly Carried[] {
  if (!forces) return [];
  const [start, end] = [cutStation(body, "from"), cutStation(body, "to")];
  const whole = end - start;
  const list: Carried[] = [];
  for (const [i, from] of stations.slice(0, -1).entries()) {
    const to = stations[i + 1] ?? from;
    const parts = Math.min(Math.max(Math.ceil((to - from) / STRETCH), 1), most);
    for (let k = 0; k < parts; k++) {
      const [a, b] = [from + ((to - from) * k) / parts, from + ((to - from) * (k + 1)) / parts];
      const at = (a + b) / 2 - start;
      const axial = valueAt(forces.N, at);
      const size = Math.hypot(axial, valueAt(forces.Vy, at), valueAt(forces.Vz, at));
      list.push({ from: (a - start) / whole, to: (b - start) / whole, size, axial });
    }
  }
  return list;
}

const byOf = (link: Link): Passing["by"] =>
  link.freeAbout ? "pin" : link.tiedAlong ? "tie" : link.connectors.length === 0 ? "latch" : "screws";

/** How what a bar's end puts on the bar it meets goes there: a push along the bar, and the weight of one that rests, bear. */
function seatedShare(force: Vec3, out: Vec3 | undefined, rests: boolean): Vec3 {
  if (!out) return [0, 0, 0];
  const push = Math.max(0, dot(force, out));
  const bearing = scale(out, push);
  return rests ? add(bearing, [0, 0, Math.min(0, force[2] - bearing[2])]) : bearing;
}

/**
 * How loads run through the frame: the force each stretch of a bar carries, what bars pass to each other at their joints, by bearing or
 * by fasteners, and what the feet bring to the floor (docs/sheet.md). One for each set of loads of use, the heaviest first.
 */
export const loadPaths = defineFact<
  readonly LoadPath[],
  {
    response: typeof response;
    structure: typeof structure;
    bodies: typeof bodies;
    footing: typeof footing;
    hanging: typeof hanging;
    placements: typeof placements;
    combinations: typeof combinations;
  }
>({
  id: "load-paths",
  needs: { response, structure, bodies, footing, hanging, placements, combinations },
  compute(
    {
      response: found,
      structure: known,
      bodies: all,
      footing: feet,
      hanging: hung,
      placements: placed,
      combinations: { cases },
    },
    frame,
  ) {
    if (found.kind !== "solved") return [];
    const rests = new Set(hung.flatMap((one) => (one.rests ? [one.joint.id] : [])));
    // Out of the end that touches the bar it meets.
    const outward = new Map<string, Vec3>();
    for (const { joint, contact } of placed.met) {
      const x = all.get(joint.bar)?.axes.x;
      if (x && contact.gap < TOUCH) outward.set(joint.ref.id, joint.end === "to" ? x : scale(x, -1));
    }
    const stationsOf = (bar: string): readonly number[] => {
      const pieces = known.piecesOf(bar).flatMap((i) => known.pieces[i] ?? []);
      return [...pieces.map(({ stations }) => stations[0]), ...pieces.slice(-1).map(({ stations }) => stations[1])];
    };
    const many = frame.bars.length > MANY_BARS;
    const pathOf = (view: View): LoadPath => {
      const applied = resultantOf(cases, view.combination.factors);
      const way = scale(applied, 1 / (length(applied) || 1));
      const passings = known.links.flatMap((link, i): readonly Passing[] => {
        const body = all.get(link.bar);
        if (!body) return [];
        const [fx, fy, fz] = view.link(i);
        const { x, y, z } = linkAxes(link, body.axes);
        // What the bar puts on the other: the opposite of what the joint puts on it.
        const force = along(along(scale(x, -fx), y, -fy), z, -fz);
        if (length(force) < WORTH * length(applied)) return [];
        const { joint, bar, onto, at } = link;
        const seat = seatedShare(force, outward.get(joint.id), rests.has(joint.id));
        const held = subtract(force, seat);
        const by = byOf(link);
        return dot(force, way) >= 0
          ? [{ joint, giver: bar, taker: onto, at, seat, held, by }]
          : [{ joint, giver: onto, taker: bar, at, seat: scale(seat, -1), held: scale(held, -1), by }];
      });
      const size = ({ seat, held }: Passing): number => length(add(seat, held));
      const borne = feet.map(({ ref, at }, i) => ({ ref, at, force: scale(view.reaction(i).force, -1) }));
      const lines = new Map<string, readonly Carried[]>();
      return {
        name: view.combination.name,
        combination: view.combination,
        carriedBy(bar) {
          const body = all.get(bar);
          let line = lines.get(bar);
          if (!line) {
            line = body?.prism ? carried(view.forces(bar), body, stationsOf(bar), many ? 1 : STRETCHES) : [];
            lines.set(bar, line);
          }
          return line;
        },
        passings: passings.sort((a, b) => size(b) - size(a)),
        feet: borne,
        borne: borne.reduce<Vec3>((sum, { force }) => add(sum, force), [0, 0, 0]),
        applied,
      };
    };
    const weight = ({ combination }: View): number => length(resultantOf(cases, combination.factors));
    return [...usualViews(found.views)]
      .map((view) => ({ view, weight: weight(view), push: view.combination.sideways ? 1 : 0 }))
      .sort((a, b) => a.push - b.push || b.weight - a.weight)
      .slice(0, many ? 1 : PATHS)
      .map(({ view }) => pathOf(view));
  },
});

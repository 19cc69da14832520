import { dot, scale, type Vec3 } from "../geometry/vector.ts";
import type { Stand } from "../model/frame.ts";
import type { EndName } from "../model/ref.ts";
import { up } from "./axes.ts";
import { type Body, bodies, cutPoint } from "./bodies.ts";
import { defineFact } from "./fact.ts";

/** A foot or caster under the end it carries. */
export interface Standing {
  readonly stand: Stand;
  readonly body: Body;
  readonly end: EndName;
  /** Where it meets the bar, m. */
  readonly top: Vec3;
  /** Diameter of end it covers, m. */
  readonly cover: number;
}

export interface Standings {
  readonly all: readonly Standing[];
  onEnd(bar: string, end: EndName): readonly Standing[];
}

/** The end that looks down most. */
function lowerEnd(body: Body): EndName {
  return dot(body.axes.x, up) > 0 ? "from" : "to";
}

/** Which end every foot and caster is under. */
export const standings = defineFact<Standings, { bodies: typeof bodies }>({
  id: "standings",
  needs: { bodies },
  compute({ bodies: all }, frame) {
    const list: Standing[] = [];
    for (const stand of frame.stands) {
      const body = all.get(stand.bar);
      if (!body) continue;
      const end = stand.end ?? lowerEnd(body);
      const { mount } = stand.part;
      const cover = mount.by === "plate" ? Math.hypot(mount.size[0], mount.size[1]) : stand.part.collar;
      list.push({ stand, body, end, top: cutPoint(body, end), cover });
    }
    const byEnd = new Map<string, Standing[]>();
    for (const standing of list) {
      const key = `${standing.body.bar.ref.id}/${standing.end}`;
      const known = byEnd.get(key);
      if (known) known.push(standing);
      else byEnd.set(key, [standing]);
    }
    return { all: list, onEnd: (bar, end) => byEnd.get(`${bar}/${end}`) ?? [] };
  },
});

/** Direction out of the bar at a stand. */
export function standDirection(standing: Standing): Vec3 {
  return scale(standing.body.axes.x, standing.end === "to" ? 1 : -1);
}

/** How far a stand points down: 1 under an upright bar, 0 out of the end of one that lies (cosine of its lean). */
export function downwards(standing: Standing): number {
  return -dot(standDirection(standing), up);
}

/** An anchored stand that points down by less than this (cosine, 45°) is on a wall or a ceiling. */
const DOWN = Math.SQRT1_2;

/** Whether it is anchored to what does not lie under its bar: a wall, a ceiling. */
export function offTheFloor(standing: Standing): boolean {
  return standing.stand.hold === "anchored" && downwards(standing) < DOWN;
}

import { distance, dot, type Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { up } from "./axes.ts";
import { bodies, cutPoint, cutStation } from "./bodies.ts";
import { TOUCH } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { offTheFloor } from "./standings.ts";
import { structure } from "./structure.ts";

/** A point where the frame meets the floor. */
export interface Foothold {
  readonly ref: Ref<"stand"> | Ref<"end">;
  readonly node: number;
  /** Where it touches the floor, m. */
  readonly at: Vec3;
  readonly hold: "rest" | "anchored" | "rolling";
  readonly brake: boolean;
  /** Anchored by a plate with several screws, so that the bar cannot turn there. */
  readonly clamped: boolean;
  /** N; undefined for a bare bar end. */
  readonly capacity: number | undefined;
}

/** Feet, casters and bare bar ends on the floor. */
export const footing = defineFact<readonly Foothold[], { structure: typeof structure; bodies: typeof bodies }>({
  id: "footing",
  needs: { structure, bodies },
  compute({ structure: known, bodies: all }, frame) {
    const list: Foothold[] = [];
    for (const { standing, node } of known.stands) {
      const { stand, top } = standing;
      // Anchored to a wall or a ceiling it is where it is drawn: the floor is not what holds it.
      const at: Vec3 = offTheFloor(standing) ? top : [top[0], top[1], Math.min(top[2], frame.floor.z)];
      list.push({
        ref: stand.ref,
        node,
        at,
        hold: stand.hold,
        brake: stand.brake,
        clamped: stand.hold === "anchored" && stand.part.mount.by === "plate",
        capacity: stand.part.capacity,
      });
    }
    for (const body of all.values()) {
      for (const end of ["from", "to"] as const) {
        const at = cutPoint(body, end);
        const looksDown = dot(body.cuts[end].plane.normal, up) < -0.999;
        if (!body.prism || !looksDown || Math.abs(at[2] - frame.floor.z) > TOUCH) continue;
        if (known.piecesOf(body.bar.ref.id).length === 0) continue;
        if (list.some((foothold) => distance(foothold.at, at) < 0.01)) continue;
        list.push({
          ref: body.bar.ends[end].ref,
          node: known.nodeAt(body.bar.ref.id, cutStation(body, end)),
          at,
          hold: "rest",
          brake: false,
          clamped: false,
          capacity: undefined,
        });
      }
    }
    return list;
  },
});

import { along, angleBetween, dot, normalise, scale } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { faceNormal } from "./axes.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { placements } from "./placements.ts";

/** How far a joint's two bars are out of line with each other. */
export interface Skew {
  readonly joint: Ref<"joint">;
  readonly bar: string;
  readonly onto: string;
  /** Between the ending bar and the square to the face it meets, rad. */
  readonly lean: number;
  /** Between the ending bar's faces and the slots of the face it meets, rad. */
  readonly twist: number;
}

const QUARTER = Math.PI / 2;

/** Angle to the nearest multiple of a right angle, rad. */
function offQuarter(angle: number): number {
  const rest = angle % QUARTER;
  return Math.min(rest, QUARTER - rest);
}

/** Lean and twist at every joint whose connectors need faces that line up: brackets, end fasteners and end screws. */
export const skews = defineFact<readonly Skew[], { bodies: typeof bodies; placements: typeof placements }>({
  id: "skews",
  needs: { bodies, placements },
  compute({ bodies: all, placements: placed }) {
    const list: Skew[] = [];
    for (const { joint, contact } of placed.met) {
      const body = all.get(joint.bar);
      const onto = all.get(contact.b.bar);
      const side = contact.b.side;
      if (!body || !onto || side === "from" || side === "to" || joint.connectors.length === 0) continue;
      const normal = faceNormal(onto.axes, side);
      const out = scale(body.axes.x, joint.end === "to" ? 1 : -1);
      const lean = angleBetween(out, scale(normal, -1));
      const inPlane = along(body.axes.y, normal, -dot(body.axes.y, normal));
      const flat = Math.hypot(...inPlane) < 1e-6 ? along(body.axes.z, normal, -dot(body.axes.z, normal)) : inPlane;
      const twist = offQuarter(angleBetween(normalise(flat), onto.axes.x));
      list.push({ joint: joint.ref, bar: joint.bar, onto: contact.b.bar, lean, twist });
    }
    return list;
  },
});

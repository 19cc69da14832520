import { cross, distance, dot, length, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import { type Body, bodies, cutPoint } from "./bodies.ts";
import type { Clamp } from "./clamping.ts";
import { defineFact } from "./fact.ts";
import { type JointForces, jointForces } from "./joint-forces.ts";
import { structure } from "./structure.ts";

/** A joint whose one screw on the bar it meets keeps it from turning by friction alone. */
export interface LoneJoint {
  readonly joint: JointForces;
  readonly clamp: Clamp;
  readonly bar: string;
  /** How far from the screw's axis a knock reaches the bar, over how many ends share it, m. */
  readonly lever: number;
}

/** Where a knock lands: the middle of a bar held twice, the free end of one held once. */
function knockedAt(body: Body, held: readonly Vec3[]): Vec3 {
  const [from, to] = [cutPoint(body, "from"), cutPoint(body, "to")];
  const [only, second] = held;
  if (only && !second) return distance(from, only) > distance(to, only) ? from : to;
  return scale([from[0] + to[0], from[1] + to[1], from[2] + to[2]], 0.5);
}

/** Joints that one screw without lugs holds on the bar they meet, and the lever of a knock about it. */
export const loneTurns = defineFact<
  readonly LoneJoint[],
  { joints: typeof jointForces; structure: typeof structure; bodies: typeof bodies }
>({
  id: "lone-turns",
  needs: { joints: jointForces, structure, bodies },
  compute({ joints, structure: { links }, bodies: all }) {
    const held = new Map<string, Vec3[]>();
    for (const { bar, onto, at } of links) for (const id of [bar, onto]) held.set(id, [...(held.get(id) ?? []), at]);
    return joints.flatMap((joint): LoneJoint[] => {
      const { link, clamps } = joint;
      const [connector, another] = link.connectors;
      const body = all.get(link.bar);
      const far = clamps.filter((clamp) => clamp.bar === link.onto);
      const [clamp] = far;
      if (!connector || another || !body || !clamp || far.length > 1) return [];
      if (connector.holds.some((hold) => hold.bar === link.onto && hold.lugs)) return [];
      const points = held.get(link.bar) ?? [];
      const knock = knockedAt(body, points);
      const away = subtract(knock, clamp.placed.seat);
      // Across the screw, and out to the face that is struck.
      const lever = length(cross(away, clamp.placed.axis)) + faceBeyond(body, clamp.placed.axis);
      return [{ joint, clamp, bar: link.bar, lever: lever / (points.length > 1 ? 2 : 1) }];
    });
  },
});

/** From the centreline to the face a knock strikes, where the bar runs along the screw. */
function faceBeyond(body: Body, axis: Vec3): number {
  return Math.abs(dot(body.axes.x, axis)) > Math.SQRT1_2 ? Math.max(body.half.y, body.half.z) : 0;
}

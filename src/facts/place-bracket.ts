import type { OrientedBox } from "../geometry/box.ts";
import { projectOnto } from "../geometry/plane.ts";
import { prismFromBox } from "../geometry/prism.ts";
import { add, along, cross, dot, normalise, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { ConnectorChoice } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import type { Bracket, ConnectorHole, FaceName, Stock } from "../model/stock/stock.ts";
import { faceAcross, faceNormal } from "./axes.ts";
import { type Body, onFace } from "./bodies.ts";
import { sitsInSlot } from "./landing.ts";
import { nutScrew } from "./nut-screw.ts";
import type { PlacedConnector, PlacedScrew } from "./placed.ts";
import { sideWalls } from "./side-walls.ts";

/** Two faces that meet at an inside corner, each with the bar it belongs to. */
export interface Corner {
  readonly a: { readonly body: Body; readonly face: FaceName };
  readonly b: { readonly body: Body; readonly face: FaceName };
  /** A point on, or over, the line on face a that the bracket's middle follows, m. */
  readonly on: Vec3;
}

/** Leg directions and the inside corner: leg a runs along `u` on face a, leg b along `v` on face b, widths along `t`. */
interface Pose {
  readonly corner: Vec3;
  readonly u: Vec3;
  readonly v: Vec3;
  readonly t: Vec3;
  readonly na: Vec3;
  readonly nb: Vec3;
}

function poseOf({ a, b, on: near }: Corner): Pose | undefined {
  const na = faceNormal(a.body.axes, a.face);
  const on = projectOnto({ point: onFace(a.body, a.face, 0, 0), normal: na }, near);
  const nb = faceNormal(b.body.axes, b.face);
  const line = cross(na, nb);
  if (dot(line, line) < 0.25) return undefined; // faces nearer to parallel than 30° make no inside corner
  const t = normalise(line);
  // Leg a leaves the corner away from face b within face a; leg b leaves it away from face a within face b.
  const u = normalise(cross(t, na));
  const v = normalise(cross(nb, t));
  const onB = onFace(b.body, b.face, 0, 0);
  const slope = dot(u, nb);
  const corner = along(on, u, dot(subtract(onB, on), nb) / slope);
  return { corner, u: slope > 0 ? u : scale(u, -1), v: dot(v, na) > 0 ? v : scale(v, -1), t, na, nb };
}

/** Puts a bracket into an inside corner. Undefined where the two faces make none. */
export function placeBracket(
  part: Bracket,
  choice: ConnectorChoice,
  joint: Ref<"joint">,
  where: Corner,
  stock: Stock,
): PlacedConnector | undefined {
  const pose = poseOf(where);
  if (!pose) return undefined;
  const side = dot(pose.t, faceAcross(where.a.body.axes, where.a.face)) < 0 ? scale(pose.t, -1) : pose.t;
  const origin = along(pose.corner, side, choice.shift);
  const screws: PlacedScrew[] = [];
  const leg = (
    holes: readonly ConnectorHole[],
    run: Vec3,
    normal: Vec3,
    thickness: number,
    body: Body,
    face: FaceName,
  ): void => {
    for (const hole of holes) {
      if (choice.omit.includes(hole.id)) continue;
      const point = along(along(origin, run, hole.at[0]), side, hole.at[1]);
      screws.push(
        nutScrew({
          joint,
          choice,
          hole: hole.id,
          body,
          face,
          seat: along(point, normal, thickness),
          axis: scale(normal, -1),
          grip: thickness,
          stock,
        }),
      );
    }
  };
  leg(part.legs.a.holes, pose.u, pose.na, part.legs.a.thickness, where.a.body, where.a.face);
  leg(part.legs.b.holes, pose.v, pose.nb, part.legs.b.thickness, where.b.body, where.b.face);
  const solid = (run: Vec3, normal: Vec3, size: { length: number; thickness: number }): OrientedBox => ({
    centre: add(along(origin, run, size.length / 2), scale(normal, size.thickness / 2)),
    axes: [run, normal, side],
    half: [size.length / 2, size.thickness / 2, part.width / 2],
  });
  const solids = [solid(pose.u, pose.na, part.legs.a), solid(pose.v, pose.nb, part.legs.b)];
  const heldBy = (body: Body): { point: Vec3; axis: Vec3 }[] =>
    screws
      .filter(
        (screw) =>
          screw.into.kind === "nut" && screw.into.landing.bar === body.bar.ref.id && sitsInSlot(screw.into.landing),
      )
      .map((screw) => ({ point: screw.seat, axis: screw.axis }));
  return {
    ref: choice.ref,
    joint,
    part,
    choice,
    holds: [where.a.body, where.b.body].map((body) => ({
      bar: body.bar.ref.id,
      screws: heldBy(body),
      lugs: part.lugs,
    })),
    solids,
    pieces: [...solids.map(prismFromBox), ...sideWalls(part, { origin, u: pose.u, v: pose.v, side })],
    screws,
    bored: [],
    inSlots: [],
  };
}

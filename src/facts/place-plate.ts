import { convexHull } from "../geometry/convex.ts";
import { convexPieces } from "../geometry/ears.ts";
import { projectOnto } from "../geometry/plane.ts";
import { bounds, signedArea } from "../geometry/polygon.ts";
import { platePrism } from "../geometry/prism.ts";
import { along, cross, dot, rotateAbout, scale, type Vec3 } from "../geometry/vector.ts";
import type { Fastening } from "../model/frame.ts";
import type { FaceName, JoiningPlate, Stock } from "../model/stock/stock.ts";
import { faceNames, faceNormal } from "./axes.ts";
import { type Body, onFace } from "./bodies.ts";
import { landOn, sitsInSlot } from "./landing.ts";
import { nutScrew } from "./nut-screw.ts";
import type { PlacedConnector, PlacedScrew } from "./placed.ts";
import { halfBreadth } from "./tubes.ts";

/** Faces lie in one plane within this distance (m) and angle (cosine, 1°): what a plate bridges without bending. */
const FLUSH = 0.0005;
const SAME_WAY = Math.cos(Math.PI / 180);

/** The face of a bar that lies in the plane of the plate. */
function flushFace(body: Body, point: Vec3, normal: Vec3): FaceName | undefined {
  return faceNames.find((face) => {
    const n = faceNormal(body.axes, face);
    return dot(n, normal) > SAME_WAY && Math.abs(dot(onFace(body, face, 0, 0), normal) - dot(point, normal)) < FLUSH;
  });
}

/** Puts a joining plate flat on the face of its first bar; every hole goes into whichever held bar lies under it. */
export function placePlate(
  part: JoiningPlate,
  fastening: Fastening,
  face: FaceName,
  held: readonly Body[],
  stock: Stock,
): PlacedConnector {
  const [first] = held;
  if (!first) throw new Error(`${fastening.ref.id} holds no bar`);
  const normal = faceNormal(first.axes, face);
  const at = projectOnto({ point: onFace(first, face, 0, 0), normal }, fastening.at);
  const u = rotateAbout(first.axes.x, normal, fastening.turn);
  const v = cross(normal, u);
  const flush = held.map((body) => ({ body, face: flushFace(body, at, normal) }));
  const screws: PlacedScrew[] = [];
  for (const hole of part.holes) {
    if (fastening.connector.omit.includes(hole.id)) continue;
    const point = along(along(at, u, hole.at[0]), v, hole.at[1]);
    let target: { body: Body; face: FaceName } | undefined;
    for (const { body, face: under } of flush) {
      if (!under) continue;
      const landing = landOn(body, under, point);
      if (landing.toEnd.distance >= 0 && Math.abs(landing.across) <= halfBreadth(body, under))
        target ??= { body, face: under };
    }
    const { body, face: under } = target ?? { body: first, face };
    screws.push(
      nutScrew({
        joint: fastening.ref,
        choice: fastening.connector,
        hole: hole.id,
        body,
        face: under,
        seat: along(point, normal, part.thickness),
        axis: scale(normal, -1),
        grip: part.thickness,
        stock,
      }),
    );
  }
  const box = bounds({ outer: part.outline, holes: [] });
  const lie = ([p, q]: readonly [number, number]): Vec3 => along(along(at, u, p), v, q);
  const ring = signedArea(part.outline) < 0 ? [...part.outline].reverse() : part.outline;
  const middle = along(along(at, u, (box.min[0] + box.max[0]) / 2), v, (box.min[1] + box.max[1]) / 2);
  return {
    ref: fastening.connector.ref,
    joint: fastening.ref,
    part,
    choice: fastening.connector,
    holds: held.map((body) => ({
      bar: body.bar.ref.id,
      screws: screws
        .filter((s) => s.into.kind === "nut" && s.into.landing.bar === body.bar.ref.id && sitsInSlot(s.into.landing))
        .map((s) => ({ point: s.seat, axis: s.axis })),
      lugs: false,
    })),
    // An L or a T is not convex: its envelope would run into bars that stand where it is cut away.
    solids:
      part.outline.length > 4
        ? []
        : [
            {
              centre: along(middle, normal, part.thickness / 2),
              axes: [u, v, normal],
              half: [(box.max[0] - box.min[0]) / 2, (box.max[1] - box.min[1]) / 2, part.thickness / 2],
            },
          ],
    outline: { normal, ring: ring.map(lie), hull: convexHull(part.outline).map(lie) },
    pieces: convexPieces(part.outline).map((piece) => platePrism(piece.map(lie), normal, part.thickness)),
    screws,
    bored: [],
    inSlots: [],
  };
}

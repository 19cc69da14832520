import { clipConvex } from "../geometry/convex.ts";
import { along, cross, dot, subtract, type Vec3 } from "../geometry/vector.ts";
import { faceNames, faceNormal } from "./axes.ts";
import { type Body, cutStation, onFace } from "./bodies.ts";
import type { PlacedConnector } from "./placed.ts";
import { halfBreadth } from "./tubes.ts";

/** Corners of the stretch of a bar's face that a joining plate lies on, m; the notch of an L or a T counts as filled. */
export function platePrint(plate: PlacedConnector, body: Body): readonly Vec3[] {
  const { outline } = plate;
  if (!outline) return [];
  const { normal, hull } = outline;
  const face = faceNames.reduce((best, name) =>
    dot(faceNormal(body.axes, name), normal) > dot(faceNormal(body.axes, best), normal) ? name : best,
  );
  const { x } = body.axes;
  const across = cross(normal, x);
  const origin = onFace(body, face, 0, 0);
  const half = halfBreadth(body, face);
  const [low, high] = [cutStation(body, "from"), cutStation(body, "to")];
  const flat = hull.map((point): [number, number] => {
    const from = subtract(point, origin);
    return [dot(from, x), dot(from, across)];
  });
  const strip: [number, number][] = [
    [low, -half],
    [high, -half],
    [high, half],
    [low, half],
  ];
  return clipConvex(flat, strip).map(([u, v]) => along(along(origin, x, u), across, v));
}

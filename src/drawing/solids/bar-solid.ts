import { faceAcross, faceNormal } from "../../facts/axes.ts";
import { type Body, onFace } from "../../facts/bodies.ts";
import { along, dot, subtract, type Vec3 } from "../../geometry/vector.ts";
import type { EndName } from "../../model/ref.ts";
import type { Slot } from "../../model/stock/stock.ts";
import type { Solid, Surface } from "./solid.ts";

/** Where the line through a point along the bar meets the cut of an end. */
function onCut({ cuts, axes }: Body, end: EndName, point: Vec3): Vec3 {
  const { plane } = cuts[end];
  const slope = dot(plane.normal, axes.x);
  return Math.abs(slope) < 1e-9 ? point : along(point, axes.x, dot(subtract(plane.point, point), plane.normal) / slope);
}

/** The opening of a slot between the two cuts. */
function slotSurface(body: Body, slot: Slot): Surface {
  const across = faceAcross(body.axes, slot.face);
  const edge = (side: number): readonly [Vec3, Vec3] => {
    const line = along(onFace(body, slot.face, 0, slot.across), across, (side * slot.opening) / 2);
    return [onCut(body, "from", line), onCut(body, "to", line)];
  };
  const [a, b] = [edge(-1), edge(1)];
  return { kind: "slot", normal: faceNormal(body.axes, slot.face), rings: [[a[0], a[1], b[1], b[0]]] };
}

/** The sawn end with the true outline of the profile. */
function sawnSurface(body: Body, end: EndName): Surface {
  const { region } = body.bar.profile;
  const at = ([y, z]: readonly [number, number]): Vec3 =>
    onCut(body, end, along(along(body.bar.from, body.axes.y, y), body.axes.z, z));
  const rings = [region.outer, ...region.holes].map((ring) => ring.map(at));
  return { kind: "sawn", normal: body.cuts[end].plane.normal, rings };
}

/** A bar: its four faces with their slots, and its two sawn ends. Undefined where the cuts leave nothing. */
export function barSolid(body: Body): Solid | undefined {
  if (!body.prism) return undefined;
  const surfaces: Surface[] = [];
  for (const { side, face } of body.sides) {
    if (side === "from" || side === "to") surfaces.push(sawnSurface(body, side));
    else surfaces.push({ kind: "skin", normal: face.normal, rings: [face.vertices] });
  }
  for (const slot of body.bar.profile.slots) if (!slot.closed) surfaces.push(slotSurface(body, slot));
  return { kind: "bar", of: body.bar.ref, with: [body.bar.ref.id], prism: body.prism, surfaces };
}

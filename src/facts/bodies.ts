import type { Bounds3 } from "../geometry/bounds.ts";
import { barPrism, type Face, type Prism, prismBounds } from "../geometry/prism.ts";
import { along, dot, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { EndName } from "../model/ref.ts";
import type { FaceName } from "../model/stock/stock.ts";
import { faceAcross, faceNames, faceNormal } from "./axes.ts";
import { type EndCut, endCuts } from "./end-cuts.ts";
import { defineFact } from "./fact.ts";
import { faceDistance, type Tube, tubeBox, tubes } from "./tubes.ts";

/** A bar as cut: the envelope of its section between its two cut ends. */
export interface Body extends Tube {
  readonly cuts: Readonly<Record<EndName, EndCut>>;
  /** Envelope solid; undefined where the cuts leave nothing. */
  readonly prism: Prism | undefined;
  readonly sides: readonly { readonly side: Side; readonly face: Face }[];
  readonly bounds: Bounds3;
  /** Ends of the longest fibre, counted along x from the drawn from point, m. */
  readonly reach: readonly [number, number];
  /** Length to be sawn: the long point, m. */
  readonly cutLength: number;
}

/** A side of a body: one of its four faces, or a cut end. */
export type Side = FaceName | EndName;

/** Longest overshoot an angled cut may need beyond the drawn point, in section sizes. */
const OVERSHOOT = 12;

/** Where along the bar (m from the drawn from point) the centreline meets the cut of an end. */
export function cutStation(body: Body, end: EndName): number {
  const { plane } = body.cuts[end];
  const slope = dot(plane.normal, body.axes.x);
  return Math.abs(slope) < 1e-12
    ? dot(subtract(plane.point, body.bar.from), body.axes.x)
    : dot(subtract(plane.point, body.bar.from), plane.normal) / slope;
}

/** Where the centreline is cut. */
export function cutPoint(body: Body, end: EndName): Vec3 {
  return along(body.bar.from, body.axes.x, cutStation(body, end));
}

/** The faces of the solid, each with the side it belongs to. */
function sidesOf(tube: Tube, cuts: Body["cuts"], prism: Prism): Body["sides"] {
  const named: { normal: Vec3; side: Side }[] = faceNames.map((side) => ({
    side,
    normal: faceNormal(tube.axes, side),
  }));
  for (const side of ["from", "to"] as const) named.push({ side, normal: cuts[side].plane.normal });
  return prism.faces.map((face) => {
    const match = named.reduce((a, b) => (dot(b.normal, face.normal) > dot(a.normal, face.normal) ? b : a));
    return { side: match.side, face };
  });
}

/** A point on a face: `station` along the bar from the drawn from point, `across` from the middle of the face, m. */
export function onFace(body: Body, face: FaceName, station: number, across: number): Vec3 {
  const base = along(along(body.bar.from, body.axes.x, station), faceNormal(body.axes, face), faceDistance(body, face));
  return along(base, faceAcross(body.axes, face), across);
}

function bodyOf(tube: Tube, from: EndCut, to: EndCut): Body {
  const size = 2 * Math.max(tube.half.y, tube.half.z);
  const prism = barPrism(tubeBox(tube, OVERSHOOT * size), [from.plane, to.plane]);
  let [low, high] = [Infinity, -Infinity];
  for (const vertex of prism?.vertices ?? []) {
    const x = dot(subtract(vertex, tube.bar.from), tube.axes.x);
    low = Math.min(low, x);
    high = Math.max(high, x);
  }
  const bounds = prism ? prismBounds(prism) : { min: tube.bar.from, max: tube.bar.from };
  return {
    ...tube,
    cuts: { from, to },
    prism,
    sides: prism ? sidesOf(tube, { from, to }, prism) : [],
    bounds,
    reach: prism ? [low, high] : [0, 0],
    cutLength: prism ? high - low : 0,
  };
}

/** Every bar as cut, by id, in the order of the file. */
export const bodies = defineFact<ReadonlyMap<string, Body>, { tubes: typeof tubes; endCuts: typeof endCuts }>({
  id: "bodies",
  needs: { tubes, endCuts },
  compute({ tubes: all, endCuts: cuts }) {
    const map = new Map<string, Body>();
    for (const [id, tube] of all) {
      const square = (end: EndName): EndCut => ({
        end: tube.bar.ends[end],
        plane: { point: tube.bar[end], normal: scale(tube.axes.x, end === "to" ? 1 : -1) },
      });
      map.set(id, bodyOf(tube, cuts.of(id, "from") ?? square("from"), cuts.of(id, "to") ?? square("to")));
    }
    return map;
  },
});

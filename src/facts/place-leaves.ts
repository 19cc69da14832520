import { projectOnto } from "../geometry/plane.ts";
import { prismFromBox } from "../geometry/prism.ts";
import { along, cross, dot, normalise, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { type Ref, ref } from "../model/ref.ts";
import type { ConnectorHole, FaceName, Pivot } from "../model/stock/stock.ts";
import { faceAcross, faceNames, faceNormal } from "./axes.ts";
import { type Body, onFace } from "./bodies.ts";
import { freeChoice } from "./free-choice.ts";
import { landOn, sitsInSlot } from "./landing.ts";
import { nutScrew } from "./nut-screw.ts";
import type { PlacedScrew, ScrewedPart } from "./placed.ts";

/** Leaves lie on faces in one plane: within this distance (m) and angle (cosine, 1°), which the pin's play takes up. */
const FLUSH = 0.001;
const SAME_WAY = Math.cos(Math.PI / 180);
/** An axis lies in the plane of the leaves, or square to it, within this sine: 3°. */
const SQUARE = Math.sin(Math.PI / 60);

/** A hinge, pivot or latch as the file has it. */
export interface Hung {
  readonly id: string;
  readonly joint: Ref;
  readonly part: Pivot;
  readonly bars: readonly [Body, Body];
  readonly at: Vec3;
  readonly axis: Vec3;
}

interface Plane {
  readonly faces: readonly [FaceName, FaceName];
  readonly normal: Vec3;
  /** From the axis point to the plane, m. */
  readonly away: number;
}

/** A pivot, hinge or latch of which the file does not say where its leaves lie. */
export interface Unplaced {
  readonly ref: Ref<"connector">;
  /** The pivot or door it belongs to. */
  readonly joint: Ref;
  readonly part: Pivot;
  readonly bars: readonly [Body, Body];
  /** The point of its axis, m. */
  readonly at: Vec3;
  /** The bars show no two faces in one plane near the axis; or the axis lies as near to two such planes. */
  readonly lack: "no plane" | "two planes";
}

/** The plane in which both bars show a face and its leaves can lie: the one nearest to the point of the axis; else what is lacking. */
function planeOf({ bars: [a, b], at, axis }: Hung): Plane | Unplaced["lack"] {
  const planes: Plane[] = [];
  for (const p of faceNames) {
    const normal = faceNormal(a.axes, p);
    const lean = Math.abs(dot(normal, axis));
    if (lean > SQUARE && lean < SAME_WAY) continue;
    const point = onFace(a, p, 0, 0);
    for (const q of faceNames) {
      if (dot(faceNormal(b.axes, q), normal) < SAME_WAY) continue;
      if (Math.abs(dot(subtract(onFace(b, q, 0, 0), point), normal)) > FLUSH) continue;
      planes.push({ faces: [p, q], normal, away: Math.abs(dot(subtract(at, point), normal)) });
    }
  }
  const [first, second] = planes.sort((p, q) => p.away - q.away);
  const reach = Math.min(a.half.y, a.half.z, b.half.y, b.half.z);
  if (!first || first.away > reach) return "no plane";
  return second && second.away - first.away < FLUSH ? "two planes" : first;
}

/** From the axis towards the bar, within the plane of the leaves: across an axis in that plane, along the bar where the axis is square to it. */
function towards({ at, axis }: Hung, body: Body, normal: Vec3): Vec3 {
  const centre = along(body.bar.from, body.axes.x, (body.reach[0] + body.reach[1]) / 2);
  const way = Math.abs(dot(normal, axis)) > SQUARE ? body.axes.x : normalise(cross(axis, normal));
  return dot(subtract(centre, at), way) < 0 ? scale(way, -1) : way;
}

/** The point of a face moved onto the line of its slot, where a leaf pushed along its bar would come to lie. */
function onSlot(body: Body, face: FaceName, point: Vec3): Vec3 {
  const { slot, across, off } = landOn(body, face, point);
  if (!slot || off > (slot.opening + slot.cavity) / 2) return point;
  return along(point, faceAcross(body.axes, face), slot.across - across);
}

/** A leaf is longer and broader than its holes by so many of their diameters. */
const RIM = 1;

/**
 * The leaves of a hinge, pivot or latch on the faces of their bars, with their screws. Holes of stock before its axis belong to the
 * first bar, those behind to the second; they are counted from the edge of a leaf, half the gap from the axis. Undefined without its screw.
 */
export function placeLeaves(frame: Frame, hung: Hung): ScrewedPart | Unplaced | undefined {
  const { id, joint, part, bars, at, axis } = hung;
  const screw = frame.stock.screws.get(part.screw);
  if (!screw) return undefined;
  const connector = ref("connector", id);
  const plane = planeOf(hung);
  if (typeof plane === "string") return { ref: connector, joint, part, bars, at, lack: plane };
  const { normal } = plane;
  const choice = freeChoice(frame, screw, bars);
  const leaves = bars.map((body, i) => {
    const face = plane.faces[i === 0 ? 0 : 1];
    const start = projectOnto({ point: onFace(body, face, 0, 0), normal }, at);
    const out = towards(hung, body, normal);
    const side = Math.abs(dot(normal, axis)) > SQUARE ? cross(normal, out) : normalise(axis);
    const holes = part.holes.filter((hole) => (hole.at[0] > 0 ? 1 : 0) === i);
    return { body, face, start, out, side, holes };
  });
  const screws: PlacedScrew[] = leaves.flatMap(({ body, face, start, out, side, holes }) =>
    holes.map((hole) => {
      const drawn = along(along(start, out, Math.abs(hole.at[0]) + part.gap / 2), side, hole.at[1]);
      return nutScrew({
        joint,
        choice: { ref: connector, screw, nut: choice.nut },
        hole: hole.id,
        body,
        face,
        seat: along(onSlot(body, face, drawn), normal, part.thickness),
        axis: scale(normal, -1),
        grip: part.thickness,
        stock: frame.stock,
      });
    }),
  );
  const most = (holes: readonly ConnectorHole[], i: 0 | 1): number =>
    Math.max(0, ...holes.map((hole) => Math.abs(hole.at[i]) + RIM * hole.diameter));
  const pieces = leaves
    .filter(({ holes }) => holes.length > 0)
    .map(({ start, out, side, holes }) => {
      const long = most(holes, 0) / 2;
      const centre = along(along(start, out, long + part.gap / 2), normal, part.thickness / 2);
      return prismFromBox({ centre, axes: [out, side, normal], half: [long, most(holes, 1), part.thickness / 2] });
    });
  return {
    ref: connector,
    joint,
    part,
    choice,
    holds: bars.map((body) => ({
      bar: body.bar.ref.id,
      screws: screws
        .filter(({ into }) => into.kind === "nut" && into.landing.bar === body.bar.ref.id && sitsInSlot(into.landing))
        .map(({ seat, axis: way }) => ({ point: seat, axis: way })),
      lugs: false,
    })),
    pieces,
    screws,
    bored: [],
    inSlots: [],
  };
}

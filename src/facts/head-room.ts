import { boundsOf } from "../geometry/bounds.ts";
import { boxPenetration, type OrientedBox } from "../geometry/box.ts";
import { capsuleToBox, closestPoints, type Segment } from "../geometry/segment.ts";
import { overlappingPairs } from "../geometry/sweep-and-prune.ts";
import { along, cross, dot, length, normalise, perpendicularPair, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Tool } from "../model/stock/stock.ts";
import { defineFact } from "./fact.ts";
import type { PlacedScrew } from "./placed.ts";
import { placements } from "./placements.ts";

/** A screw whose key, or head, comes near another screw's head. */
export interface HeadRoom {
  readonly screw: PlacedScrew;
  readonly other: PlacedScrew;
  /** Free length between the straight key on the one and the head of the other, m; negative where they meet. */
  readonly keyToHead: number;
  /** Free length between the two heads, m. */
  readonly headToHead: number;
}

/** Reach of the key where stock holds none of the size, m. */
const USUAL_REACH = 0.03;
/** Hexagon across corners over across flats. */
const CORNERS = 2 / Math.sqrt(3);
/** Heads further apart than this never matter to each other, m. */
const NEAR = 0.005;

function keyReach(tools: ReadonlyMap<string, Tool>, size: number): number {
  let reach = Infinity;
  for (const tool of tools.values()) {
    if (tool.kind === "hex-key" && Math.abs(tool.key - size) < 1e-5) reach = Math.min(reach, tool.shortArm);
  }
  return Number.isFinite(reach) ? reach : USUAL_REACH;
}

const headTop = (screw: PlacedScrew): Vec3 => along(screw.seat, screw.axis, -screw.screw.headHeight);

/** The head as a box whose one flat looks towards a point: exact for what comes from there. */
function headBox(screw: PlacedScrew, towards: Vec3): OrientedBox {
  const middle = along(screw.seat, screw.axis, -screw.screw.headHeight / 2);
  const way = subtract(towards, middle);
  const flat = along(way, screw.axis, -dot(way, screw.axis));
  const first = length(flat) < 1e-9 ? perpendicularPair(screw.axis)[0] : normalise(flat);
  const half = screw.screw.headDiameter / 2;
  return {
    centre: middle,
    axes: [screw.axis, first, cross(screw.axis, first)],
    half: [screw.screw.headHeight / 2, half, half],
  };
}

function headGap(a: PlacedScrew, b: PlacedScrew): number {
  const parallel = Math.abs(dot(a.axis, b.axis)) > 0.999;
  if (!parallel) return -boxPenetration(headBox(a, b.seat), headBox(b, a.seat)).depth;
  const apart = subtract(b.seat, a.seat);
  const beside = length(along(apart, a.axis, -dot(apart, a.axis))) - (a.screw.headDiameter + b.screw.headDiameter) / 2;
  const level = Math.abs(dot(apart, a.axis)) - Math.max(a.screw.headHeight, b.screw.headHeight);
  return Math.max(beside, level);
}

/**
 * How much room each screw's straight key has past the heads of its neighbours. The key is taken as its bit across corners,
 * straight out from the drive by the length of the short arm: what must be free to put any key in. Bars, brackets and the
 * swing of the arm are not looked at here.
 */
export const headRoom = defineFact<readonly HeadRoom[], { placements: typeof placements }>({
  id: "head-room",
  needs: { placements },
  compute({ placements: placed }, frame) {
    const screws = placed.connectors
      .flatMap((connector) => connector.screws)
      .filter((screw) => screw.screw.head !== "none");
    const keys = screws.map((screw) => {
      const reach = keyReach(frame.stock.tools, screw.screw.key);
      // A screw driven elsewhere than at its head is driven below the face: its key starts there.
      const own = screw.drive.point === screw.seat;
      const start = own ? headTop(screw) : screw.drive.point;
      const line: Segment = { from: start, to: along(start, screw.drive.axis, -reach) };
      return { line, radius: (screw.screw.key * CORNERS) / 2, own };
    });
    const bounds = screws.map((screw, i) => {
      const key = keys[i];
      const r = Math.max(screw.screw.headDiameter / 2, key?.radius ?? 0);
      const points = [screw.seat, headTop(screw), ...(key ? [key.line.from, key.line.to] : [])];
      return boundsOf(
        points.flatMap((p): Vec3[] => [
          [p[0] - r, p[1] - r, p[2] - r],
          [p[0] + r, p[1] + r, p[2] + r],
        ]),
      );
    });
    const list: HeadRoom[] = [];
    for (const [i, j] of overlappingPairs(bounds, NEAR)) {
      for (const [p, q] of [
        [i, j],
        [j, i],
      ] as const) {
        const [screw, other, key, otherKey] = [screws[p], screws[q], keys[p], keys[q]];
        if (!screw || !other || !key || !otherKey) continue;
        const nearest = closestPoints(key.line, { from: other.seat, to: headTop(other) });
        // Heads inside a bar's slot are in nobody's way.
        const keyToHead = otherKey.own ? capsuleToBox(key.line, key.radius, headBox(other, nearest.first)) : Infinity;
        const headToHead = key.own && otherKey.own ? headGap(screw, other) : Infinity;
        if (keyToHead < NEAR || headToHead < NEAR) list.push({ screw, other, keyToHead, headToHead });
      }
    }
    return list;
  },
});

import { difference } from "../geometry/clip.ts";
import { convexHull } from "../geometry/convex.ts";
import { bounds, containsPoint, distanceToEdge, type Region, type Ring } from "../geometry/polygon.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { GuardSide, Hazard } from "./guard-sides.ts";
import { BODY, OPENING_STEPS, type OpeningForm, type OpeningRow, openingRow } from "./reach-distances.ts";

/** A place in a side of a guard that a rod of a certain thickness passes. */
export interface Opening {
  readonly form: OpeningForm;
  /** It is wider than this, m. */
  readonly width: number;
  /** Whether a whole body passes. */
  readonly body: boolean;
  /** How far the zone lies behind it, m, and how far it must. */
  readonly distance: number;
  readonly needed: number;
  /** How long it is, m, and whether it goes down to the floor. */
  readonly length: number;
  readonly toFloor: boolean;
  /** Where the middle of a rod just wider than that passes, in the plane of the side, m. */
  readonly place: Region;
}

/** Wider than a step by this much counts as wider, m: rounding of coordinates. */
const ROUNDING = 2e-5;
/** Clear widths are told to this, m. */
const FINE = 1e-5;
/** How far past the edge of a side the floor is drawn, m. */
const BEYOND = 1;

const rectangle = (low: Vec2, high: Vec2): Region => ({
  outer: [low, [high[0], low[1]], high, [low[0], high[1]]],
  holes: [],
});

/** Where the middle of a square rod cannot go for a convex outline in its way. */
function grown({ outer }: Region, by: number): Region {
  const points = outer.flatMap(([x, y]): Vec2[] => [
    [x - by, y - by],
    [x + by, y - by],
    [x + by, y + by],
    [x - by, y + by],
  ]);
  return { outer: convexHull(points), holes: [] };
}

const edgesOf = (ring: Ring): readonly (readonly [Vec2, Vec2])[] =>
  ring.map((a, i) => [a, ring[(i + 1) % ring.length] ?? a] as const);

/** Distance in the plane from a region to a rectangle, m; 0 where they share a point. */
function apart(region: Region, low: Vec2, high: Vec2): number {
  const zone = rectangle(low, high);
  const rings = [region.outer, ...region.holes];
  if (rings.some((ring) => ring.some((point) => containsPoint(zone, point)))) return 0;
  if (zone.outer.some((point) => containsPoint(region, point))) return 0;
  let least = Infinity;
  for (const ring of rings)
    for (const [a, b] of edgesOf(ring)) {
      for (const corner of zone.outer) least = Math.min(least, distanceToEdge(corner, a, b));
      for (const [c, d] of edgesOf(zone.outer)) least = Math.min(least, distanceToEdge(a, c, d));
    }
  // Bands that cross without a corner in one another: a side through the middle of the zone.
  const { min, max } = bounds(region);
  const crosses = min[0] <= high[0] && max[0] >= low[0] && min[1] <= high[1] && max[1] >= low[1];
  return crosses && isBox(region) ? 0 : least;
}

const isBox = ({ outer, holes }: Region): boolean =>
  holes.length === 0 && outer.length === 4 && edgesOf(outer).every(([a, b]) => a[0] === b[0] || a[1] === b[1]);

/** What lies in the plane of a side, the floor with it. */
function coversOf(side: GuardSide): readonly Region[] {
  const floor = rectangle([side.low[0] - BEYOND, side.low[1] - BEYOND], [side.high[0] + BEYOND, side.low[1]]);
  return side.v === 2 ? [...side.covers, floor] : side.covers;
}

/** The row of the standard that an opening falls under: that of its clear width, where it asks for the same, else that of the rods that were tried, m. */
export function rowOf({ form, width, length, toFloor, needed }: Opening, clear: number): OpeningRow {
  const own = openingRow(form, clear, length, toFloor);
  return Math.abs(own.distance - needed) < FINE ? own : openingRow(form, width + ROUNDING, length, toFloor);
}

/** The thickest square rod that passes an opening, m, to a hundredth of a millimetre. */
export function clearWidth({ place, width }: Opening, side: GuardSide): number {
  const covers = coversOf(side);
  const { min, max } = bounds(place);
  let [low, high] = [width, width + ROUNDING + Math.min(max[0] - min[0], max[1] - min[1])];
  const passes = (rod: number): boolean => {
    const left = difference(
      [place],
      covers.map((cover) => grown(cover, rod / 2)),
    );
    return left.length > 0;
  };
  while (high - low > FINE / 10) {
    const middle = (low + high) / 2;
    if (passes(middle)) low = middle;
    else high = middle;
  }
  return Math.round(low / FINE) * FINE;
}

/** What passes a side of a guard, width by width, and how far the zone lies behind it. */
export function openingsOf(side: GuardSide, zone: Hazard): readonly Opening[] {
  const whole = rectangle(side.low, side.high);
  const upright = side.v === 2;
  const covers = coversOf(side);
  const face = side.sign > 0 ? zone.high[side.axis] : zone.low[side.axis];
  const behind = Math.abs(side.at - face);
  const low: Vec2 = [zone.low[side.u], zone.low[side.v]];
  const high: Vec2 = [zone.high[side.u], zone.high[side.v]];
  const found: Opening[] = [];
  for (const [i, step] of OPENING_STEPS.entries()) {
    const width = step + ROUNDING;
    const next = OPENING_STEPS[i + 1] ?? BODY.square;
    const pieces = difference(
      [whole],
      covers.map((cover) => grown(cover, width / 2)),
    );
    if (pieces.length === 0) break;
    for (const piece of pieces) {
      const { min, max } = bounds(piece);
      const [across, along] = [max[0] - min[0] + width, max[1] - min[1] + width];
      const form: OpeningForm = Math.max(across, along) <= next + 2 * ROUNDING ? "square" : "slot";
      const length = Math.max(across, along);
      const toFloor = upright && min[1] - width / 2 <= side.low[1] + ROUNDING;
      const needed = openingRow(form, width, length, toFloor).distance;
      const inPlane = Math.max(0, apart(piece, low, high) - width / 2);
      const body = step >= BODY.slot && length > BODY.square;
      const distance = Math.hypot(behind, inPlane);
      found.push({ form, width: step, body, distance, needed, length, toFloor, place: piece });
    }
  }
  return found;
}

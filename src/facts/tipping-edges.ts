import { cross2, subtract2, type Vec2, type Vec3 } from "../geometry/vector.ts";
import type { Stand } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import type { Foothold } from "./footing.ts";

/** A line on the floor that the frame can tip over. */
export interface TippingEdge {
  readonly feet: readonly [Ref, Ref];
  /** Where the line begins and ends, and the way into the frame square to it. */
  readonly from: Vec2;
  readonly to: Vec2;
  readonly inward: Vec2;
  /** Horizontal distance of a point inside the line, m. */
  inside(point: Vec3): number;
  /** How far inside the line the nearest foot that is not on it stands, m: so far it leans for the height of a bump under that foot. */
  readonly nearest: number;
}

/** How far the wheel of a swivel caster stands off its pin, as a share of its diameter (common practice: 0.3 to 0.4). */
const TRAIL = 0.35;
/** Feet nearer to a line than this stand on it, m. */
const ON_LINE = 1e-6;

interface Corner {
  readonly ref: Ref;
  readonly at: Vec2;
  /** How far it may come inward, m. */
  readonly trail: number;
}

/** Corners of the smallest convex outline, against the clock (Andrew's monotone chain). */
function outline(corners: readonly Corner[]): readonly Corner[] {
  const sorted = [...corners].sort((a, b) => a.at[0] - b.at[0] || a.at[1] - b.at[1]);
  const half = (list: readonly Corner[]): Corner[] => {
    const chain: Corner[] = [];
    for (const corner of list) {
      for (;;) {
        const [a, b] = [chain[chain.length - 2], chain[chain.length - 1]];
        if (!a || !b) break;
        const run = subtract2(b.at, a.at);
        if (cross2(run, subtract2(corner.at, a.at)) > ON_LINE * Math.hypot(run[0], run[1])) break;
        chain.pop();
      }
      chain.push(corner);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/**
 * The sides of the outline that the feet span; none when all stand in one line. A foot counts at the middle of its pad, a
 * caster at the middle of its wheel, a swivel caster with its wheel turned inward.
 */
export function tippingEdges(feet: readonly Foothold[], stands: readonly Stand[]): readonly TippingEdge[] {
  const parts = new Map(stands.map((stand) => [stand.ref.id, stand.part]));
  const corners = outline(
    feet.map(({ ref, at }) => {
      const part = parts.get(ref.id);
      const swivels = part?.kind === "caster" && part.swivel;
      return { ref, at: [at[0], at[1]], trail: swivels ? TRAIL * part.diameter : 0 };
    }),
  );
  if (corners.length < 3) return [];
  return corners.map((a, i): TippingEdge => {
    const b = corners[(i + 1) % corners.length] ?? a;
    const run = subtract2(b.at, a.at);
    const size = Math.hypot(run[0], run[1]);
    const inward: Vec2 = [-run[1] / size, run[0] / size];
    const from: Vec2 = [a.at[0] + inward[0] * a.trail, a.at[1] + inward[1] * a.trail];
    const to: Vec2 = [b.at[0] + inward[0] * b.trail, b.at[1] + inward[1] * b.trail];
    const line = subtract2(to, from);
    const reach = Math.hypot(line[0], line[1]);
    const inside: TippingEdge["inside"] = (point) => cross2(line, subtract2([point[0], point[1]], from)) / reach;
    const others = corners.filter((corner) => corner !== a && corner !== b);
    return {
      feet: [a.ref, b.ref],
      from,
      to,
      inward: [-line[1] / reach, line[0] / reach],
      inside,
      nearest: others.reduce((least, { at }) => Math.min(least, inside([at[0], at[1], 0])), Infinity),
    };
  });
}

import { dot, type Vec3 } from "../geometry/vector.ts";
import { type Body, cutPoint } from "./bodies.ts";

/** A bar carries a strip of panel that crosses it within its length and this much more, m. */
const BEYOND = 0.001;

/** A bar that carries a panel. */
export interface Support {
  readonly body: Body;
  /** Line of the bar in the plane of the panel. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** Bars as lines in the plane of two directions. */
export function supportLines(held: readonly Body[], [u, v]: readonly [Vec3, Vec3]): readonly Support[] {
  const flat = (p: Vec3): readonly [number, number] => [dot(p, u), dot(p, v)];
  return held.map((body) => ({ body, from: flat(cutPoint(body, "from")), to: flat(cutPoint(body, "to")) }));
}

/** Where a line at constant u (or v) meets a support: its other coordinate, or undefined. */
function crossing(support: Support, fixed: 0 | 1, value: number): number | undefined {
  const other = fixed === 0 ? 1 : 0;
  const [a, b] = [support.from[fixed], support.to[fixed]];
  const run = b - a;
  if (Math.abs(run) < 1e-9) return undefined;
  const t = (value - a) / run;
  const slack = BEYOND / Math.abs(run);
  if (t < -slack || t > 1 + slack) return undefined;
  return support.from[other] + t * (support.to[other] - support.from[other]);
}

interface Met {
  readonly support: Support;
  readonly at: number;
}

export interface Between {
  /** The two supports that carry a point along one of the directions, and whether it lies between them. */
  readonly low: Met;
  readonly high: Met;
  readonly inside: boolean;
}

/** The supports on both sides of a point along one of the two directions; past the last of them, the two nearest. */
export function between(supports: readonly Support[], fixed: 0 | 1, value: number, at: number): Between | undefined {
  const met: Met[] = [];
  for (const support of supports) {
    const found = crossing(support, fixed, value);
    if (found !== undefined) met.push({ support, at: found });
  }
  met.sort((a, b) => a.at - b.at);
  const over = met.findIndex((one) => one.at >= at);
  const inside = over > 0 || met[over]?.at === at;
  const i = Math.min(Math.max(over < 0 ? met.length - 1 : over, 1), met.length - 1);
  const [low, high] = [met[i - 1], met[i]];
  return low && high && high.at - low.at > 1e-9 ? { low, high, inside } : undefined;
}

/** Ends of the supports furthest out along a direction. */
function ends(supports: readonly Support[], along: 0 | 1): readonly [number, number] {
  const all = supports.flatMap(({ from, to }) => [from[along], to[along]]);
  return [Math.min(...all), Math.max(...all)];
}

/** A strip at a constant u (or v) over the two supports beside a place along it. */
export interface Strip {
  readonly fixed: 0 | 1;
  readonly value: number;
  readonly along: number;
  readonly found: Between;
}

/** Strips that bear a place past the ends of all supports: as far along them as these go. */
export function pastEnds(supports: readonly Support[], at: readonly [number, number]): readonly Strip[] {
  return ([1, 0] as const).flatMap((fixed): readonly Strip[] => {
    const [low, high] = ends(supports, fixed);
    const [along, value] = [at[1 - fixed] ?? 0, Math.min(Math.max(at[fixed], low), high)];
    const found = between(supports, fixed, value, along);
    return found ? [{ fixed, value, along, found }] : [];
  });
}

/** The support whose line is nearest to a point, and where on it that is, as a part of its length. */
export function nearestSupport(
  supports: readonly Support[],
  uv: readonly [number, number],
): { support: Support; t: number } | undefined {
  let best: { support: Support; t: number; distance: number } | undefined;
  for (const support of supports) {
    const [du, dv] = [support.to[0] - support.from[0], support.to[1] - support.from[1]];
    const square = du * du + dv * dv;
    const t =
      square > 0
        ? Math.min(1, Math.max(0, ((uv[0] - support.from[0]) * du + (uv[1] - support.from[1]) * dv) / square))
        : 0;
    const distance = Math.hypot(uv[0] - support.from[0] - t * du, uv[1] - support.from[1] - t * dv);
    if (!best || distance < best.distance) best = { support, t, distance };
  }
  return best;
}

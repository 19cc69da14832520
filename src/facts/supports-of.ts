import { type Body, cutStation } from "./bodies.ts";
import { depthOf } from "./meetings.ts";

/** Supports nearer to each other than this many section depths hold as one. */
const ONE_SUPPORT = 1;
/** Supports nearer than this lie on one another, m. */
const SAME_PLACE = 1e-6;

/** Where a bar is held, in order: stations from its cut from end, m, of what holds it at these from its drawn from point. */
export function supportsOf(body: Body, stations: readonly number[]): number[] {
  const [low, high] = [cutStation(body, "from"), cutStation(body, "to")];
  const length = high - low;
  const depth = depthOf(body);
  // A plate may reach past a bar's end, and a bar beside it may lie there: what it holds is the end.
  const within = stations.map((s) => Math.min(Math.max(s - low, 0), length)).sort((a, b) => a - b);
  return within.filter((s, i) => {
    const apart = s - (within[i - 1] ?? -Infinity);
    return apart > ONE_SUPPORT * depth || (i === within.length - 1 && apart > SAME_PLACE);
  });
}

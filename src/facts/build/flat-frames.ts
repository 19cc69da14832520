import { dot, midpoint, type Vec3 } from "../../geometry/vector.ts";
import { up } from "../axes.ts";
import { type Body, cutPoint } from "../bodies.ts";
import type { Connection } from "../connections.ts";

/** Middle lines this close to one plane lie in it, m: rails set off to one face of their posts still lie on one table. */
const ONE_PLANE = 0.005;
/** Bars square to a direction within this cosine lie flat: 1°. */
const FLAT = 0.0175;
/** Fewer bars than this are no frame. */
const LEAST = 3;

const centreOf = (body: Body): Vec3 => midpoint(cutPoint(body, "from"), cutPoint(body, "to"));

interface Pair {
  readonly bars: readonly [string, string];
  /** Screws that hold the less held of the two. */
  readonly screws: number;
}

/** Which bars are joined, and by how many screws. */
function pairsOf(connections: readonly Connection[]): readonly Pair[] {
  const found = new Map<string, { bars: readonly [string, string]; a: number; b: number }>();
  for (const { holds, declaredFree } of connections) {
    if (declaredFree) continue;
    for (const [i, p] of holds.entries()) {
      for (const q of holds.slice(i + 1)) {
        if (p.screws.length === 0 || q.screws.length === 0 || p.bar === q.bar) continue;
        const [first, second] = p.bar < q.bar ? [p, q] : [q, p];
        const key = JSON.stringify([first.bar, second.bar]);
        const known = found.get(key) ?? { bars: [first.bar, second.bar], a: 0, b: 0 };
        found.set(key, { ...known, a: known.a + first.screws.length, b: known.b + second.screws.length });
      }
    }
  }
  return [...found.values()].map(({ bars, a, b }) => ({ bars, screws: Math.min(a, b) }));
}

/** Sets of bars that hang together by pairs. */
function connected(bars: readonly string[], pairs: readonly Pair[]): readonly (readonly string[])[] {
  const next = new Map<string, string[]>(bars.map((bar) => [bar, []]));
  for (const {
    bars: [a, b],
  } of pairs) {
    if (!next.has(a) || !next.has(b)) continue;
    next.get(a)?.push(b);
    next.get(b)?.push(a);
  }
  const seen = new Set<string>();
  const sets: string[][] = [];
  for (const bar of bars) {
    if (seen.has(bar)) continue;
    const set: string[] = [];
    const queue = [bar];
    seen.add(bar);
    for (let at = queue.shift(); at !== undefined; at = queue.shift()) {
      set.push(at);
      for (const other of next.get(at) ?? []) {
        if (seen.has(other)) continue;
        seen.add(other);
        queue.push(other);
      }
    }
    sets.push(bars.filter((one) => set.includes(one)));
  }
  return sets;
}

interface Setting {
  readonly bodies: ReadonlyMap<string, Body>;
  readonly pairs: readonly Pair[];
  /** kg, of bars together with what is built in with them. */
  readonly massOf: (bars: readonly string[]) => number;
  readonly liftable: number;
}

/** Keeps its shape by itself: a closed ring of bars, or no joint that turns about a single screw. */
function keepsShape(set: readonly string[], pairs: readonly Pair[]): boolean {
  const inside = new Set(set);
  const own = pairs.filter(({ bars: [a, b] }) => inside.has(a) && inside.has(b));
  return own.length >= set.length || own.every((pair) => pair.screws > 1);
}

/** Flat frames square to one direction among some bars. */
function squareTo(normal: Vec3, bars: readonly string[], setting: Setting): readonly (readonly string[])[] {
  const planes: { at: number; bars: string[] }[] = [];
  for (const id of bars) {
    const body = setting.bodies.get(id);
    if (!body?.prism || Math.abs(dot(body.axes.x, normal)) > FLAT) continue;
    const at = dot(centreOf(body), normal);
    const plane = planes.find((one) => Math.abs(one.at - at) < ONE_PLANE);
    if (plane) plane.bars.push(id);
    else planes.push({ at, bars: [id] });
  }
  return planes
    .flatMap((plane) => connected(plane.bars, setting.pairs))
    .filter((set) => set.length >= LEAST && keepsShape(set, setting.pairs))
    .filter((set) => setting.massOf(set) <= setting.liftable);
}

/**
 * Flat frames to build on a table: of all directions, first the one whose upright frames take up most bars, few frames before
 * many; then what the bars left over make, level or upright.
 */
export function flatFrames(
  bars: readonly string[],
  connections: readonly Connection[],
  normals: readonly Vec3[],
  setting: Omit<Setting, "pairs">,
): readonly (readonly string[])[] {
  const full: Setting = { ...setting, pairs: pairsOf(connections) };
  const upright = normals.filter((normal) => Math.abs(dot(normal, up)) < FLAT);
  const found: (readonly string[])[] = [];
  let left = bars;
  for (let among: readonly Vec3[] = upright; ; among = normals) {
    let best: readonly (readonly string[])[] = [];
    const count = (sets: readonly (readonly string[])[]): number => sets.reduce((sum, set) => sum + set.length, 0);
    for (const normal of among) {
      const sets = squareTo(normal, left, full);
      if (count(sets) > count(best) || (count(sets) === count(best) && sets.length < best.length)) best = sets;
    }
    if (best.length === 0 && among === normals) return found;
    found.push(...best);
    const taken = new Set(best.flat());
    left = left.filter((bar) => !taken.has(bar));
  }
}

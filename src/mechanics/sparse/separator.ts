import { at } from "./at.ts";
import type { JointGraph } from "./joint-graph.ts";
import type { LevelStructure } from "./level-structure.ts";

/** A connected piece cut in two: no joint before is coupled to one after. */
export interface Cut {
  readonly before: Int32Array;
  readonly after: Int32Array;
  readonly separator: Int32Array;
}

const LEAST_SHARE = 0.3; // of the piece's weight on either side of the cut: keeps the halves comparable (measured)
const BEFORE = 0;
const SEPARATOR = 1;
const AFTER = 2;

/**
 * The lightest level that leaves a fair share on either side, thinned; undefined where the piece has no inner level.
 * `distance` holds the levels of the piece and is left changed.
 */
export function thinSeparator(
  graph: JointGraph,
  levels: LevelStructure,
  piece: Int32Array,
  label: number,
  distance: Int32Array,
): Cut | undefined {
  if (levels.levels < 3) return undefined;
  const level = lightestMiddle(graph, levels);
  const side = distance;
  for (const v of levels.joint) {
    const l = at(distance, v);
    side[v] = l < level ? BEFORE : l > level ? AFTER : SEPARATOR;
  }
  shift(graph, levels.joint, piece, label, side);
  const pick = (wanted: number): Int32Array => levels.joint.filter((v) => at(side, v) === wanted);
  const cut = { before: pick(BEFORE), after: pick(AFTER), separator: pick(SEPARATOR) };
  return cut.before.length === 0 || cut.after.length === 0 ? undefined : cut;
}

function lightestMiddle(graph: JointGraph, levels: LevelStructure): number {
  const weights: number[] = [];
  let total = 0;
  for (let l = 0; l < levels.levels; l++) {
    let weight = 0;
    for (let k = at(levels.start, l); k < at(levels.start, l + 1); k++) weight += at(graph.weight, at(levels.joint, k));
    weights.push(weight);
    total += weight;
  }
  let best = -1;
  let bestCost = Number.POSITIVE_INFINITY;
  let before = weights[0] as number;
  for (let l = 1; l < levels.levels - 1; l++) {
    const weight = weights[l] as number;
    const lesser = Math.min(before, total - before - weight) / total;
    // A lopsided cut is taken only where the piece offers no fairer one.
    const cost = weight / Math.min(1, lesser / LEAST_SHARE) ** 2;
    if (cost < bestCost) {
      best = l;
      bestCost = cost;
    }
    before += weight;
  }
  return best;
}

/** Moves separator joints to the side where they pull fewer into the separator than they free; both sides, until none does. */
function shift(graph: JointGraph, joints: Int32Array, piece: Int32Array, label: number, side: Int32Array): void {
  const load = [0, 0, 0];
  for (const v of joints) load[at(side, v)] = (load[at(side, v)] as number) + at(graph.weight, v);
  const least = LEAST_SHARE * ((load[0] as number) + (load[1] as number) + (load[2] as number));
  let queue = joints.filter((v) => at(side, v) === SEPARATOR);
  const tries = new Map<number, number>();
  while (queue.length > 0) {
    const touched: number[] = [];
    for (const v of queue) {
      if (at(side, v) !== SEPARATOR) continue;
      for (const to of [BEFORE, AFTER]) {
        const other = AFTER - to;
        let pulled = 0;
        for (let e = at(graph.start, v); e < at(graph.start, v + 1); e++) {
          const u = at(graph.neighbour, e);
          if (at(piece, u) === label && at(side, u) === other) pulled += at(graph.weight, u);
        }
        const gain = at(graph.weight, v) - pulled;
        const fairer = (load[to] as number) < (load[other] as number);
        const times = tries.get(v) ?? 0;
        const worth = gain > 0 || (gain === 0 && fairer && times < 2);
        if (!worth || (pulled > 0 && (load[other] as number) - pulled < least)) continue;
        tries.set(v, times + 1);
        side[v] = to;
        load[to] = (load[to] as number) + at(graph.weight, v);
        load[other] = (load[other] as number) - pulled;
        for (let e = at(graph.start, v); e < at(graph.start, v + 1); e++) {
          const u = at(graph.neighbour, e);
          if (at(piece, u) !== label) continue;
          if (at(side, u) === other) side[u] = SEPARATOR;
          if (at(side, u) === SEPARATOR) touched.push(u);
        }
        break;
      }
    }
    queue = Int32Array.from(touched);
  }
}

import { at } from "./at.ts";
import type { JointGraph } from "./joint-graph.ts";

/** Joints by distance from a root: level l is `joint[start[l]] … joint[start[l + 1] - 1]`. */
export interface LevelStructure {
  readonly joint: Int32Array;
  readonly start: Int32Array;
  readonly levels: number;
}

/** All joints v with `piece[v] === label` that hang together with the root, by distance; `distance` is overwritten for them. */
export function levelStructure(
  graph: JointGraph,
  root: number,
  piece: Int32Array,
  label: number,
  distance: Int32Array,
): LevelStructure {
  const joint: number[] = [root];
  const start: number[] = [0];
  const seen = ~label; // labels are ≥ 0, so their complement marks a joint of this piece as seen
  piece[root] = seen;
  distance[root] = 0;
  for (let from = 0; from < joint.length; ) {
    const until = joint.length;
    for (let k = from; k < until; k++) {
      const v = joint[k] as number;
      for (let e = at(graph.start, v); e < at(graph.start, v + 1); e++) {
        const u = at(graph.neighbour, e);
        if (at(piece, u) !== label) continue;
        piece[u] = seen;
        distance[u] = start.length;
        joint.push(u);
      }
    }
    start.push(until);
    from = until;
  }
  for (const v of joint) piece[v] = label;
  return { joint: Int32Array.from(joint), start: Int32Array.from(start), levels: start.length - 1 };
}

/**
 * Level structure from a joint at one end of a piece: go to a farthest joint of least degree as long as that gets farther.
 * George, Liu 1979, "An implementation of a pseudoperipheral node finder".
 */
export function fromOneEnd(
  graph: JointGraph,
  anywhere: number,
  piece: Int32Array,
  label: number,
  distance: Int32Array,
): LevelStructure {
  let best = levelStructure(graph, anywhere, piece, label, distance);
  for (;;) {
    let farthest = at(best.joint, best.joint.length - 1);
    for (let k = at(best.start, best.levels - 1); k < best.joint.length; k++) {
      const v = at(best.joint, k);
      if (degreeOf(graph, v) < degreeOf(graph, farthest)) farthest = v;
    }
    const next = levelStructure(graph, farthest, piece, label, distance);
    if (next.levels <= best.levels) return next;
    best = next;
  }
}

function degreeOf(graph: JointGraph, v: number): number {
  return at(graph.start, v + 1) - at(graph.start, v);
}

import { at } from "./at.ts";
import type { JointGraph } from "./joint-graph.ts";
import { fromOneEnd } from "./level-structure.ts";

/** Bandwidth-reducing order: George 1971, reversing Cuthill, McKee 1969. Best for long slender frames. */
export function reverseCuthillMcKee(graph: JointGraph): Int32Array {
  const { joints } = graph;
  const piece = new Int32Array(joints);
  const distance = new Int32Array(joints);
  const placed = new Uint8Array(joints);
  const order = new Int32Array(joints);
  const degree = (v: number): number => at(graph.start, v + 1) - at(graph.start, v);
  let filled = 0;
  for (let v = 0; v < joints; v++) {
    if (placed[v] === 1) continue;
    const root = at(fromOneEnd(graph, v, piece, 0, distance).joint, 0);
    placed[root] = 1;
    let next = filled;
    order[filled++] = root;
    while (next < filled) {
      const from = filled;
      const w = at(order, next++);
      for (let e = at(graph.start, w); e < at(graph.start, w + 1); e++) {
        const u = at(graph.neighbour, e);
        if (placed[u] === 1) continue;
        placed[u] = 1;
        order[filled++] = u;
      }
      order.subarray(from, filled).sort((a, b) => degree(a) - degree(b) || a - b);
    }
  }
  return order.reverse();
}

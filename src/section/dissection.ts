/** A graph: neighbours of node i are `neighbour[start[i]] … neighbour[start[i + 1] - 1]`. */
export interface Graph {
  readonly start: Int32Array;
  readonly neighbour: Int32Array;
}

/** Parts this small are eliminated as they come. */
const SMALL = 24;

/**
 * Nested dissection by coordinates: the nodes are halved across their longer extent again and again, and the nodes of one half that
 * touch the other are eliminated last (A. George, SIAM J. Numer. Anal. 10, 1973). Returns the nodes in order of elimination.
 */
export function dissect(graph: Graph, y: Float64Array, z: Float64Array): Int32Array {
  const order = Int32Array.from(graph.start.keys()).subarray(0, graph.start.length - 1);
  const side = new Int32Array(order.length);
  const parts: (readonly [number, number])[] = [[0, order.length]];
  for (let part = parts.pop(); part; part = parts.pop()) {
    const [from, to] = part;
    if (to - from <= SMALL) continue;
    const nodes = order.subarray(from, to);
    const along = extent(nodes, y) >= extent(nodes, z) ? y : z;
    nodes.sort((a, b) => (along[a] as number) - (along[b] as number) || a - b);
    const half = nodes.length >> 1;
    for (let i = 0; i < nodes.length; i++) side[nodes[i] as number] = i < half ? 1 : 2;
    const touches = (i: number) => {
      for (let p = graph.start[i] as number; p < (graph.start[i + 1] as number); p++)
        if ((side[graph.neighbour[p] as number] as number) === 2) return true;
      return false;
    };
    const near = nodes.slice(0, half);
    const separator = near.filter(touches);
    const rest = near.filter((i) => !touches(i));
    const far = nodes.slice(half);
    for (const i of nodes) side[i] = 0;
    nodes.set(rest);
    nodes.set(far, rest.length);
    nodes.set(separator, rest.length + far.length);
    parts.push([from, from + rest.length], [from + rest.length, from + rest.length + far.length]);
  }
  return order;
}

function extent(nodes: Int32Array, along: Float64Array): number {
  let low = Infinity;
  let high = -Infinity;
  for (const i of nodes) {
    low = Math.min(low, along[i] as number);
    high = Math.max(high, along[i] as number);
  }
  return high - low;
}

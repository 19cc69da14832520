/** The shortest ring in a directed graph: each node leads to the next, the last to the first. Undefined where there is none. */
export function shortestRing<T>(nodes: readonly T[], next: (node: T) => readonly T[]): readonly T[] | undefined {
  let best: readonly T[] | undefined;
  for (const start of nodes) {
    const from = new Map<T, T>();
    const queue = [start];
    let closed: T | undefined;
    for (let at = queue.shift(); at !== undefined && closed === undefined; at = queue.shift()) {
      for (const to of next(at)) {
        if (to === start) {
          closed = at;
          break;
        }
        if (from.has(to)) continue;
        from.set(to, at);
        queue.push(to);
      }
    }
    if (closed === undefined) continue;
    const ring: T[] = [];
    for (let at: T | undefined = closed; at !== undefined && at !== start; at = from.get(at)) ring.push(at);
    ring.push(start);
    ring.reverse();
    if (!best || ring.length < best.length) best = ring;
  }
  return best;
}

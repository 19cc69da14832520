/**
 * The strongly connected sets of a directed graph, without recursion (R. Tarjan, "Depth-first search and linear graph
 * algorithms", SIAM J. Computing 1, 1972). Sets come out before those that lead to them.
 */
export function strongComponents<T>(nodes: readonly T[], next: (node: T) => readonly T[]): readonly (readonly T[])[] {
  const index = new Map<T, number>();
  const low = new Map<T, number>();
  const open: T[] = [];
  const isOpen = new Set<T>();
  const sets: T[][] = [];
  const enter = (node: T): { node: T; rest: T[] } => {
    index.set(node, index.size);
    low.set(node, index.get(node) ?? 0);
    open.push(node);
    isOpen.add(node);
    return { node, rest: [...next(node)].reverse() };
  };
  const lower = (node: T, to: number): void => {
    low.set(node, Math.min(low.get(node) ?? to, to));
  };
  for (const root of nodes) {
    if (index.has(root)) continue;
    const path = [enter(root)];
    for (let at = path[path.length - 1]; at; at = path[path.length - 1]) {
      const to = at.rest.pop();
      if (to !== undefined) {
        if (!index.has(to)) path.push(enter(to));
        else if (isOpen.has(to)) lower(at.node, index.get(to) ?? 0);
        continue;
      }
      path.pop();
      const own = low.get(at.node) ?? 0;
      const above = path[path.length - 1];
      if (above) lower(above.node, own);
      if (own !== index.get(at.node)) continue;
      const set: T[] = [];
      for (let member = open.pop(); member !== undefined; member = open.pop()) {
        isOpen.delete(member);
        set.push(member);
        if (member === at.node) break;
      }
      sets.push(set.reverse());
    }
  }
  return sets;
}

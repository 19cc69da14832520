/** Parts that no chain of links within the set joins to its first, in order. */
export function scattered(parts: readonly string[], links: readonly (readonly [string, string])[]): readonly string[] {
  const inside = new Set(parts);
  const next = new Map<string, string[]>();
  for (const [a, b] of links) {
    if (!inside.has(a) || !inside.has(b)) continue;
    next.set(a, [...(next.get(a) ?? []), b]);
    next.set(b, [...(next.get(b) ?? []), a]);
  }
  const queue = parts.slice(0, 1);
  const reached = new Set(queue);
  for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
    for (const other of next.get(at) ?? []) {
      if (reached.has(other)) continue;
      reached.add(other);
      queue.push(other);
    }
  }
  return parts.filter((part) => !reached.has(part));
}

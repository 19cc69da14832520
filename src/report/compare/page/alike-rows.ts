/** Rows of a table of which the same is said, in the order of the first of each. */
export function alikeRows<T>(rows: readonly T[], said: (row: T) => string): readonly (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const row of rows) {
    const group = groups.get(said(row));
    if (group) group.push(row);
    else groups.set(said(row), [row]);
  }
  return [...groups.values()];
}

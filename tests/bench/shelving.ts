const BAY = { width: 900, depth: 400, height: 1800, levels: [200, 700, 1200, 1700] };

/** Bays whose shelving has about so many bars: six of the last posts and cross rails, and 14 a bay. */
export const baysFor = (bars: number): number => Math.max(1, Math.round((bars - 6) / 14));

/** A line of open shelving: two rows of posts, four levels of rails along and across, brackets below, trays as line loads. */
export function shelving(bays: number): { readonly bytes: Uint8Array; readonly bars: number } {
  const bars: object[] = [];
  const rails: string[] = [];
  const along: string[] = [];
  const rows = [0, BAY.depth];
  for (let i = 0; i <= bays; i++) {
    const x = BAY.width * i;
    for (const [row, y] of rows.entries()) {
      bars.push({ id: `post-${i}-${row}`, profile: "40x40-8", from: [x, y, 0], to: [x, y, BAY.height] });
      for (const [level, z] of BAY.levels.entries()) {
        if (i === bays) continue;
        const id = `rail-${i}-${row}-${level}`;
        bars.push({ id, profile: "40x40-8", from: [x, y, z], to: [x + BAY.width, y, z] });
        rails.push(id);
        along.push(id);
      }
    }
    for (const [level, z] of BAY.levels.entries()) {
      const id = `cross-${i}-${level}`;
      bars.push({ id, profile: "40x40-8", from: [x, 0, z], to: [x, BAY.depth, z] });
      rails.push(id);
    }
  }
  const file = {
    format: 1,
    title: `shelving of ${bays} bays`,
    units: "mm-N-kg",
    bars,
    joints: [{ bars: rails, by: [{ connector: "inside-bracket-40", on: "below" }] }],
    loads: [{ case: "trays", on: along, line: 0.15 }],
  };
  return { bytes: new TextEncoder().encode(JSON.stringify(file)), bars: bars.length };
}

import { dot } from "../geometry/vector.ts";
import type { Panel } from "../model/frame.ts";
import { defineFact } from "./fact.ts";
import { SAWN_WITHIN, SPARE } from "./panel-fits.ts";
import { planeAxes } from "./plane-axes.ts";
import { growthOf } from "./sheet-growth.ts";
import { type SlotEdge, type SlotPanel, slotPanels } from "./slot-panels.ts";

/** A panel of another outline than a rectangle, sawn to leave the usual room all round: what its edges keep. */
export interface ShapedFit {
  readonly panel: Panel;
  /** In the slot it leaves furthest when it is sawn small, has shrunk most and is pushed out of it as far as it goes, m. */
  readonly engaged: number;
  readonly leaves: SlotEdge;
}

type Pair = readonly [number, number];

/**
 * The furthest a body can be moved against a direction, where moving it along each of the normals is bounded: the least of
 * d·direction over all d with d·nᵢ ≤ roomᵢ, at a corner of that region. −Infinity where nothing bounds it.
 */
export function furthestBack(direction: Pair, normals: readonly Pair[], rooms: readonly number[]): number {
  let least = Infinity;
  for (const [i, a] of normals.entries()) {
    for (const [j, b] of normals.entries()) {
      const det = a[0] * b[1] - a[1] * b[0];
      if (j <= i || Math.abs(det) < 1e-9) continue;
      const [p, q] = [rooms[i] ?? 0, rooms[j] ?? 0];
      const d: Pair = [(p * b[1] - q * a[1]) / det, (q * a[0] - p * b[0]) / det];
      const inside = normals.every((n, k) => n[0] * d[0] + n[1] * d[1] <= (rooms[k] ?? 0) + 1e-12);
      if (inside) least = Math.min(least, direction[0] * d[0] + direction[1] * d[1]);
    }
  }
  return Number.isFinite(least) ? least : -Infinity;
}

function fitOf(slotPanel: SlotPanel, expansion: number, site: Parameters<typeof growthOf>[2]): ShapedFit | undefined {
  const { panel, normal, edges } = slotPanel;
  const growth = growthOf(panel.sheet, expansion, site);
  const [u, v] = planeAxes(normal);
  const normals = edges.map(({ outward }): Pair => [dot(outward, u), dot(outward, v)]);
  // The panel grows about its middle: the mean of the middles of its edges as far as the bars are cut.
  const middles = edges.map(({ body }): Pair => {
    const ends = [body.bar.from, body.bar.to];
    return [ends.reduce((s, p) => s + dot(p, u), 0) / 2, ends.reduce((s, p) => s + dot(p, v), 0) / 2];
  });
  const middle: Pair = [
    middles.reduce((s, p) => s + p[0], 0) / middles.length,
    middles.reduce((s, p) => s + p[1], 0) / middles.length,
  ];
  const from = normals.map(([a, b]) => a * middle[0] + b * middle[1]);
  const small = edges.map(({ floor }, i) => {
    const half = (floor - (from[i] ?? 0) - SPARE / 2) / (1 + growth.most) - SAWN_WITHIN / 2;
    return (half - SAWN_WITHIN / 2) * (1 - growth.least);
  });
  const rooms = edges.map(({ floor }, i) => floor - (from[i] ?? 0) - (small[i] ?? 0));
  let worst: ShapedFit | undefined;
  for (const [i, leaves] of edges.entries()) {
    const n = normals[i];
    if (!n) continue;
    const engaged = (small[i] ?? 0) + furthestBack(n, normals, rooms) - (leaves.mouth - (from[i] ?? 0));
    if (!worst || engaged < worst.engaged) worst = { panel, engaged, leaves };
  }
  return worst;
}

/** Panels that are no rectangles and have bars all round. */
export const shapedFits = defineFact<readonly ShapedFit[], { slotPanels: typeof slotPanels }>({
  id: "shaped-fits",
  needs: { slotPanels },
  compute({ slotPanels: { all } }, frame) {
    return all.flatMap((slotPanel) => {
      const { panel, rectangle, edges, slotless } = slotPanel;
      if (panel.held.kind !== "in-slot" || rectangle || slotless.length > 0 || edges.length < 3) return [];
      if (panel.held.edges.some((edge) => edge.kind === "free")) return [];
      const expansions = edges.map(({ body }) => frame.stock.materials.get(body.bar.profile.material)?.expansion ?? 0);
      const fit = fitOf(slotPanel, expansions.reduce((a, b) => a + b, 0) / expansions.length, frame.site);
      return fit && Number.isFinite(fit.engaged) ? [fit] : [];
    });
  },
});

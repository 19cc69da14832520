import { cornersWithin } from "../geometry/half-planes.ts";
import { bounds } from "../geometry/polygon.ts";
import { dot, length2, subtract2, type Vec2 } from "../geometry/vector.ts";
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
  /** As it is sawn: its corners, counter-clockwise, from a corner of the sheet it is cut from, whose first side lies along its longest edge, m. */
  readonly corners: readonly Vec2[];
  /** The least size of that sheet, m. */
  readonly size: readonly [number, number];
}

type Pair = readonly [number, number];

/** Corners moved and turned so that they fill a rectangle from its corner on, along the longest of their edges; and that rectangle. */
function laidOut(ring: readonly Vec2[]): Pick<ShapedFit, "corners" | "size"> {
  const edges = ring.map((from, i) => subtract2(ring[(i + 1) % ring.length] ?? from, from));
  const longest = edges.reduce<Vec2>((a, b) => (length2(b) > length2(a) + ALIKE ? b : a), [0, 0]);
  const first = edges.indexOf(longest);
  const [c, s] = [longest[0] / length2(longest), longest[1] / length2(longest)];
  const turned = [...ring.slice(first), ...ring.slice(0, first)].map(([x, y]): Vec2 => [c * x + s * y, c * y - s * x]);
  const { min, max } = bounds({ outer: turned, holes: [] });
  return { corners: turned.map((at) => subtract2(at, min)), size: [max[0] - min[0], max[1] - min[1]] };
}

/** Edges of lengths nearer to each other than this are alike, m. */
const ALIKE = 1e-6;

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
  const sawn = edges.map(({ floor }, i) => (floor - (from[i] ?? 0) - SPARE / 2) / (1 + growth.most) - SAWN_WITHIN / 2);
  const ring = cornersWithin(normals.map((out, i) => ({ out, reach: (from[i] ?? 0) + (sawn[i] ?? 0) })));
  if (ring.length === 0) return undefined;
  const small = sawn.map((half) => (half - SAWN_WITHIN / 2) * (1 - growth.least));
  const rooms = edges.map(({ floor }, i) => floor - (from[i] ?? 0) - (small[i] ?? 0));
  let worst: Omit<ShapedFit, "corners" | "size"> | undefined;
  for (const [i, leaves] of edges.entries()) {
    const n = normals[i];
    if (!n) continue;
    const engaged = (small[i] ?? 0) + furthestBack(n, normals, rooms) - (leaves.mouth - (from[i] ?? 0));
    if (!worst || engaged < worst.engaged) worst = { panel, engaged, leaves };
  }
  return worst && { ...worst, ...laidOut(ring) };
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

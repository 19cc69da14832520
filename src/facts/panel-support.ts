import { convexHull } from "../geometry/convex.ts";
import { dot, type Vec3 } from "../geometry/vector.ts";
import type { Panel } from "../model/frame.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { type LaidSheet, sheets } from "./sheets.ts";
import { slotPanels } from "./slot-panels.ts";

/** How a sheet that is only laid on bars lies on them. */
export interface LaidSupport {
  readonly panel: Panel;
  /** How far its middle lies inside the outline of what carries it, m; negative: it falls off by itself. */
  readonly inside: number;
}

/** How a sheet in slots is held: on which of its two pairs of opposite sides, for a rectangle. */
export interface SlotSupport {
  readonly panel: Panel;
  /** Sides in slots. */
  readonly held: number;
  /** Whether two of them lie across from each other. */
  readonly opposite: boolean;
}

export interface PanelSupports {
  readonly laid: readonly LaidSupport[];
  readonly slots: readonly SlotSupport[];
}

/** Bars up to so much lower than the highest still catch a sheet that tilts on it, m (common practice). */
const UNDER = 0.01;
/** A sheet that leans more than this (cosine) is held by more than its weight. */
const LEVEL = 0.9;

function laidSupport(sheet: LaidSheet, carriers: readonly (readonly Vec3[])[]): LaidSupport | undefined {
  const { panel, normal, corners } = sheet;
  if (normal[2] < LEVEL) return undefined;
  const [u, v] = sheet.axes;
  const flat = corners.map((corner) => [dot(corner, u), dot(corner, v)] as const);
  const [us, vs] = [flat.map(([a]) => a), flat.map(([, b]) => b)];
  const clamp = (value: number, among: readonly number[]): number =>
    Math.min(Math.max(value, Math.min(...among)), Math.max(...among));
  const top = dot(corners[0] ?? [0, 0, 0], normal);
  const under = carriers.flat().filter((point) => dot(point, normal) > top - UNDER);
  const hull = convexHull(under.map((point) => [clamp(dot(point, u), us), clamp(dot(point, v), vs)] as const));
  if (hull.length < 3) return undefined;
  const middle = [(Math.min(...us) + Math.max(...us)) / 2, (Math.min(...vs) + Math.max(...vs)) / 2] as const;
  let inside = Number.POSITIVE_INFINITY;
  for (const [i, a] of hull.entries()) {
    const b = hull[(i + 1) % hull.length] ?? a;
    const size = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (size === 0) continue;
    // The hull runs anticlockwise: what lies to the right of an edge is outside.
    const out = [(b[1] - a[1]) / size, (a[0] - b[0]) / size] as const;
    const past = (p: readonly [number, number]): number => (p[0] - a[0]) * out[0] + (p[1] - a[1]) * out[1];
    inside = Math.min(inside, -past(middle));
  }
  return { panel, inside };
}

/** What keeps sheets in their slots and, where they are only laid on bars, on them. Sheets screwed to faces are left out. */
export const panelSupports = defineFact<
  PanelSupports,
  { bodies: typeof bodies; sheets: typeof sheets; slotted: typeof slotPanels }
>({
  id: "panel-supports",
  needs: { bodies, sheets, slotted: slotPanels },
  compute({ bodies: all, sheets: lying, slotted }) {
    const laid = lying
      .filter(({ panel }) => panel.held.kind === "laid")
      .flatMap((sheet) => {
        const carriers = sheet.bars.map((bar) => all.get(bar)?.prism?.vertices ?? []);
        const found = laidSupport(sheet, carriers);
        return found ? [found] : [];
      });
    const slots = slotted.all.flatMap(({ panel, rectangle }): SlotSupport[] => {
      if (!rectangle) return [];
      const counts = rectangle.sides.map((pair) => pair.filter(({ kind }) => kind === "slot").length);
      return [{ panel, held: counts.reduce((a, b) => a + b, 0), opposite: counts.includes(2) }];
    });
    // A sheet on one bar spans no plane.
    for (const panel of slotted.planeless) {
      if (panel.held.kind !== "in-slot") continue;
      const held = panel.held.edges.filter(({ kind }) => kind === "bar").length;
      if (held === 1) slots.push({ panel, held, opposite: false });
    }
    return { laid, slots };
  },
});

import { corners as boxCorners } from "../geometry/box.ts";
import { along, dot, type Vec3 } from "../geometry/vector.ts";
import { type Ref, ref } from "../model/ref.ts";
import { type Body, bodies, onFace } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { placements } from "./placements.ts";
import { type PanelSide, type SlotPanel, slotPanels } from "./slot-panels.ts";
import { slotUse } from "./slot-use.ts";

type Range = readonly [number, number];

/** Something that takes room where a panel lies, within the panel's reach: along its first and second axis, m. */
export interface Obstacle {
  readonly by: Ref;
  readonly spans: readonly [Range, Range];
}

export interface PanelObstacles {
  readonly slotPanel: SlotPanel;
  /** From slot floor to slot floor along its axes, and the opening between the bars, m. */
  readonly reach: readonly [Range, Range];
  readonly opening: readonly [Range, Range];
  /** Fasteners, nuts, legs and heads. */
  readonly fittings: readonly Obstacle[];
  /** Other bars. */
  readonly bars: readonly Obstacle[];
}

/** What overlaps less than this only touches, m. */
const TOUCH = 1e-4;

function rangeOf(sides: readonly [PanelSide, PanelSide], deep: boolean): Range {
  const at = (side: PanelSide, way: 1 | -1): number =>
    side.kind === "free" ? side.at : way * (deep ? side.edge.floor : side.edge.mouth);
  return [at(sides[0], -1), at(sides[1], 1)];
}

const shadow = (points: readonly Vec3[], axis: Vec3): Range => {
  const all = points.map((point) => dot(point, axis));
  return [Math.min(...all), Math.max(...all)];
};

const overlap = (a: Range, b: Range): Range => [Math.max(a[0], b[0]), Math.min(a[1], b[1])];
const size = ([low, high]: Range): number => high - low;

/** Corners of the room something takes in a slot: along the bar, from one depth to another, as wide as the slot. */
function inSlotPoints(body: Body, edge: SlotPanel["edges"][number], from: number, to: number, depth: Range): Vec3[] {
  const out: Vec3[] = [];
  for (const station of [from, to])
    for (const deep of depth) out.push(along(onFace(body, edge.face, station, edge.slot.across), edge.outward, deep));
  return out;
}

/**
 * What stands where each rectangular panel lies: legs, plates and screw heads that reach into its sheet, what fills the slots of its
 * edges, and bars that cross it. Nuts lie under the lips, so a sheet that reaches no deeper than the lips passes them.
 */
export const panelObstacles = defineFact<
  readonly PanelObstacles[],
  { slotPanels: typeof slotPanels; placements: typeof placements; slotUse: typeof slotUse; bodies: typeof bodies }
>({
  id: "panel-obstacles",
  needs: { slotPanels, placements, slotUse, bodies },
  compute({ slotPanels: panels, placements: placed, slotUse: { occupants }, bodies: all }) {
    const solids: { by: Ref; points: readonly Vec3[] }[] = [];
    for (const connector of placed.connectors) {
      for (const box of connector.solids) solids.push({ by: connector.ref, points: boxCorners(box) });
      for (const { ref: by, seat, axis, screw, into } of connector.screws) {
        // The screw of an end fastener lies in its slot, and counts with it.
        if (screw.head === "none" || connector.part.kind === "end-fastener" || into.kind === "bore") continue;
        const half = screw.headDiameter / 2;
        const top = along(seat, axis, -screw.headHeight);
        const points = [seat, top].flatMap((middle) =>
          ([0, 1, 2] as const).flatMap((i) =>
            [-half, half].map((d): Vec3 => {
              const way: Vec3 = [i === 0 ? 1 : 0, i === 1 ? 1 : 0, i === 2 ? 1 : 0];
              const flat = along(way, axis, -dot(way, axis));
              return along(middle, flat, d);
            }),
          ),
        );
        solids.push({ by, points });
      }
    }
    return panels.all.flatMap((slotPanel): PanelObstacles[] => {
      const { rectangle, panel, normal, plane, edges, slotless } = slotPanel;
      // Where a bar at an edge has no slot the sheet reaches nowhere that is known: panel.misfit says so, and nothing of it is judged.
      if (!rectangle || slotless.length > 0) return [];
      const reach = [rangeOf(rectangle.sides[0], true), rangeOf(rectangle.sides[1], true)] as const;
      const opening = [rangeOf(rectangle.sides[0], false), rangeOf(rectangle.sides[1], false)] as const;
      const slab: Range = [plane - panel.sheet.thickness / 2, plane + panel.sheet.thickness / 2];
      const inPanel = (by: Ref, points: readonly Vec3[], within: readonly [Range, Range]): Obstacle[] => {
        const spans = [
          overlap(shadow(points, rectangle.axes[0]), within[0]),
          overlap(shadow(points, rectangle.axes[1]), within[1]),
        ] as const;
        return size(spans[0]) > TOUCH && size(spans[1]) > TOUCH ? [{ by, spans }] : [];
      };
      const crosses = (points: readonly Vec3[]): boolean => size(overlap(shadow(points, normal), slab)) > TOUCH;
      const fittings = solids.flatMap(({ by, points }) => (crosses(points) ? inPanel(by, points, reach) : []));
      for (const edge of edges) {
        for (const { bar, face, slot, by, what, from, to } of occupants) {
          if (bar !== edge.body.bar.ref.id || face !== edge.face || slot !== edge.slot.number) continue;
          const deep = edge.floor - edge.mouth;
          const depth: Range = [what === "nut" ? edge.slot.lip : 0, deep];
          if (size(depth) > TOUCH) fittings.push(...inPanel(by, inSlotPoints(edge.body, edge, from, to, depth), reach));
        }
      }
      const own = new Set(edges.map((edge) => edge.body));
      // A post between two rails stands where the sheet reaches into the slots of both.
      const bars = [...all.values()].flatMap((body) => {
        const points = body.prism?.vertices ?? [];
        return own.has(body) || points.length === 0 || !crosses(points)
          ? []
          : inPanel(ref("bar", body.bar.ref.id), points, reach);
      });
      return [{ slotPanel, reach, opening, fittings, bars }];
    });
  },
});

import { dot, type Vec3 } from "../geometry/vector.ts";
import type { PlateField } from "../mechanics/plates/levy.ts";
import type { Panel } from "../model/frame.ts";
import { type Body, bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { panelObstacles } from "./panel-obstacles.ts";
import { type LaidSheet, planeAxes, sheets } from "./sheets.ts";
import type { PanelSide } from "./slot-panels.ts";

/** The largest field of a panel between what holds it, as a plate. */
export interface PanelField {
  readonly panel: Panel;
  readonly normal: Vec3;
  /** Lengths in m: its supported pair of edges is `span` apart. */
  readonly field: PlateField;
  /** The shortest way between two edges that hold it, m. */
  readonly across: number;
}

type Range = readonly [number, number];

/** Bars within this cosine of an axis of the panel run along it: 1°. */
const ALONG = Math.cos(Math.PI / 180);

/** A field from what holds it along each of its two axes: how many sides, and how far from one to the other, m. */
function fieldOf(held: readonly [number, number], size: Range): PlateField | undefined {
  const [u, v] = held;
  if (u < 2 && v < 2) return undefined;
  const first = u === 2 && (v < 2 || size[0] <= size[1]);
  const other = first ? v : u;
  const [span, width] = first ? size : [size[1], size[0]];
  return {
    span,
    width,
    edges: [other > 0 ? "supported" : "free", other > 1 ? "supported" : "free"],
  };
}

function fielded(panel: Panel, normal: Vec3, field: PlateField | undefined): PanelField[] {
  if (!field) return [];
  const square = field.edges.every((edge) => edge === "supported");
  return [{ panel, normal, field, across: square ? Math.min(field.span, field.width) : field.span }];
}

/** Along one axis of a laid sheet: the widest gap between bars that cross it, or the longer way from a lone bar to an end. */
function gapsOf(bars: readonly Range[], ends: Range): { readonly held: number; readonly size: number } {
  const sorted = [...bars].sort((a, b) => a[0] - b[0]);
  const [first] = sorted;
  if (!first) return { held: 0, size: ends[1] - ends[0] };
  if (sorted.length === 1) return { held: 1, size: Math.max(first[0] - ends[0], ends[1] - first[1]) };
  const gaps = sorted.slice(1).map((bar, i) => bar[0] - (sorted[i]?.[1] ?? bar[0]));
  return { held: 2, size: Math.max(...gaps) };
}

function laidField(sheet: LaidSheet, all: ReadonlyMap<string, Body>): PlateField | undefined {
  const axes = planeAxes(sheet.normal);
  const lines: [Range[], Range[]] = [[], []];
  for (const id of sheet.bars) {
    const body = all.get(id);
    if (!body?.prism) continue;
    const along = axes.findIndex((axis) => Math.abs(dot(axis, body.axes.x)) > ALONG);
    // A bar at an angle, or one that stands under the sheet on its end, makes no line.
    if (along < 0) continue;
    const across = axes[1 - along] as Vec3;
    const reach = body.prism.vertices.map((vertex) => dot(vertex, across));
    lines[1 - along]?.push([Math.min(...reach), Math.max(...reach)]);
  }
  const [u, v] = axes.map((axis, i) => {
    const ends = sheet.corners.map((corner) => dot(corner, axis));
    return gapsOf(lines[i as 0 | 1], [Math.min(...ends), Math.max(...ends)]);
  });
  return u && v && u.size > 0 && v.size > 0 ? fieldOf([u.held, v.held], [u.size, v.size]) : undefined;
}

const heldSides = (sides: readonly [PanelSide, PanelSide]): number =>
  sides.filter((side) => side.kind === "slot").length;

/** Fields of panels in slots, from face to face of the bars; and of sheets on bars, their widest field between bars. */
export const panelFields = defineFact<
  readonly PanelField[],
  { bodies: typeof bodies; obstacles: typeof panelObstacles; sheets: typeof sheets }
>({
  id: "panel-fields",
  needs: { bodies, obstacles: panelObstacles, sheets },
  compute({ bodies: all, obstacles, sheets: laid }) {
    return [
      ...obstacles.flatMap(({ slotPanel: { panel, normal, rectangle }, opening }) => {
        if (!rectangle) return [];
        const [u, v] = opening.map(([low, high]) => high - low);
        const held = [heldSides(rectangle.sides[0]), heldSides(rectangle.sides[1])] as const;
        return fielded(panel, normal, fieldOf(held, [u ?? 0, v ?? 0]));
      }),
      ...laid.flatMap((sheet) => fielded(sheet.panel, sheet.normal, laidField(sheet, all))),
    ];
  },
});

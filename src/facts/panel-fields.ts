import { dot, type Vec3 } from "../geometry/vector.ts";
import type { PlateField } from "../mechanics/plates/levy.ts";
import type { Overhang } from "../mechanics/plates/overhang.ts";
import type { Panel } from "../model/frame.ts";
import { type Body, bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { panelObstacles } from "./panel-obstacles.ts";
import { type LaidSheet, sheets } from "./sheets.ts";
import type { PanelSide } from "./slot-panels.ts";

/** The largest field of a panel between what holds it, as a plate. */
export interface PanelField {
  readonly panel: Panel;
  readonly normal: Vec3;
  /** Lengths in m: its supported pair of edges is `span` apart. */
  readonly field: PlateField;
  /** The shortest way between two edges that hold it, m. */
  readonly across: number;
  /** Where it reaches out past all that holds it. */
  readonly overhangs: readonly Overhang[];
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

function fielded(
  panel: Panel,
  normal: Vec3,
  field: PlateField | undefined,
  overhangs: readonly Overhang[] = [],
): PanelField[] {
  if (!field) return [];
  const square = field.edges.every((edge) => edge === "supported");
  return [{ panel, normal, field, across: square ? Math.min(field.span, field.width) : field.span, overhangs }];
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

/** How far a bar reaches over the two axes of a sheet. */
type Reach = readonly [Range, Range];

/** Bars under a sheet by the axis that they cross. */
function linesUnder(sheet: LaidSheet, all: ReadonlyMap<string, Body>): readonly [readonly Reach[], readonly Reach[]] {
  const { axes } = sheet;
  const lines: [Reach[], Reach[]] = [[], []];
  for (const id of sheet.bars) {
    const body = all.get(id);
    if (!body?.prism) continue;
    const along = axes.findIndex((axis) => Math.abs(dot(axis, body.axes.x)) > ALONG);
    // A bar at an angle, or one that stands under the sheet on its end, makes no line.
    if (along < 0) continue;
    const vertices = body.prism.vertices;
    const reach = (axis: Vec3): Range => {
      const places = vertices.map((vertex) => dot(vertex, axis));
      return [Math.min(...places), Math.max(...places)];
    };
    lines[1 - along]?.push([reach(axes[0]), reach(axes[1])]);
  }
  return lines;
}

const endsOf = (sheet: LaidSheet, axis: Vec3): Range => {
  const ends = sheet.corners.map((corner) => dot(corner, axis));
  return [Math.min(...ends), Math.max(...ends)];
};

/** Shorter ones are the play of sawing, m. */
const LEAST_OVERHANG = 0.005;

/** Where a sheet reaches past the bars that cross an axis, and past the ends of two bars that run along it. */
function overhangsOf(sheet: LaidSheet, lines: readonly [readonly Reach[], readonly Reach[]]): readonly Overhang[] {
  return ([0, 1] as const).flatMap((i) => {
    const [low, high] = endsOf(sheet, sheet.axes[i]);
    const crossing = lines[i].map((reach) => reach[i]);
    const beside = lines[1 - i] ?? [];
    const sides = beside.map((reach) => reach[1 - i] as Range);
    const between = sides.length > 1 ? gapsOf(sides, [0, 0]).size : Infinity;
    // Seen from either end alike: places counted towards that end.
    return ([1, -1] as const).flatMap((way): Overhang[] => {
      const towards = ([a, b]: Range): Range => (way > 0 ? [a, b] : [-b, -a]);
      const end = way > 0 ? high : -low;
      const bars = crossing.map(towards).sort((a, b) => b[1] - a[1]);
      const along = beside.map((reach) => towards(reach[i]));
      // The sheet spans from side to side as far as all the bars along it reach.
      const carried = along.length > 1 ? Math.min(...along.map(([, reach]) => reach)) : -Infinity;
      const root = Math.max(bars[0]?.[1] ?? -Infinity, carried);
      const next = bars.find(([, far]) => far < root - LEAST_OVERHANG)?.[1] ?? Math.max(...along.map(([a]) => a));
      const length = end - root;
      if (!Number.isFinite(root) || !(next < root) || length < LEAST_OVERHANG) return [];
      return [{ length, back: root - next, between }];
    });
  });
}

function laidField(sheet: LaidSheet, lines: readonly [readonly Reach[], readonly Reach[]]): PlateField | undefined {
  const [u, v] = sheet.axes.map((axis, i) =>
    gapsOf(
      lines[i as 0 | 1].map((reach) => reach[i as 0 | 1]),
      endsOf(sheet, axis),
    ),
  );
  return u && v && u.size > 0 && v.size > 0 ? fieldOf([u.held, v.held], [u.size, v.size]) : undefined;
}

const heldSides = (sides: readonly [PanelSide, PanelSide]): number =>
  sides.filter((side) => side.kind === "slot").length;

/** Fields of panels in slots, from face to face of the bars; and of sheets on bars, their widest field between bars, with what hangs over. */
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
      ...laid.flatMap((sheet) => {
        const lines = linesUnder(sheet, all);
        return fielded(sheet.panel, sheet.normal, laidField(sheet, lines), overhangsOf(sheet, lines));
      }),
    ];
  },
});

import type { LaidSheet } from "../../facts/sheets.ts";
import type { PanelSide, SlotPanel } from "../../facts/slot-panels.ts";
import { extrude } from "../../geometry/extrude.ts";
import { add, along, cross, dot, scale, type Vec3 } from "../../geometry/vector.ts";
import type { Panel } from "../../model/frame.ts";
import { type Solid, skins } from "./solid.ts";

/** Sides whose directions are nearer to one line than this sine meet in no corner. */
const PARALLEL = 1e-6;

function solid(panel: Panel, bars: readonly string[], corners: readonly Vec3[], normal: Vec3): Solid {
  const prism = extrude(corners, scale(normal, panel.sheet.thickness));
  return { kind: "panel", of: panel.ref, with: bars, prism, surfaces: skins(prism) };
}

/** A sheet that lies on bars. */
export function laidSolid({ panel, bars, corners, normal }: LaidSheet): Solid {
  return solid(panel, bars, corners, normal);
}

/** A line that bounds what is seen of a panel: `out` points away from it, `at` is how far out the line lies, m. */
interface Bound {
  readonly out: Vec3;
  readonly at: number;
}

/** The bounds of a panel, once round; a side with a free end bounds it only where it is a rectangle. */
function boundsOf({ rectangle, edges, panel }: SlotPanel, normal: Vec3): readonly Bound[] | undefined {
  if (rectangle) {
    const [[u0, u1], [v0, v1]] = rectangle.sides;
    const [u, v] = rectangle.axes;
    const bound = (axis: Vec3, way: 1 | -1, side: PanelSide): Bound => ({
      out: scale(axis, way),
      at: side.kind === "slot" ? side.edge.mouth : side.at * way,
    });
    return [bound(u, -1, u0), bound(v, -1, v0), bound(u, 1, u1), bound(v, 1, v1)];
  }
  if (panel.held.kind !== "in-slot" || panel.held.edges.length !== edges.length) return undefined;
  const first = edges[0]?.outward;
  if (!first) return undefined;
  const across = cross(normal, first);
  const turn = (out: Vec3): number => Math.atan2(dot(out, across), dot(out, first));
  return edges.map(({ outward, mouth }) => ({ out: outward, at: mouth })).sort((a, b) => turn(a.out) - turn(b.out));
}

/** Where two bounds of a plane meet, in the plane through the origin. */
function corner(a: Bound, b: Bound): Vec3 | undefined {
  const c = dot(a.out, b.out);
  const det = 1 - c * c;
  if (det < PARALLEL) return undefined;
  return add(scale(a.out, (a.at - c * b.at) / det), scale(b.out, (b.at - c * a.at) / det));
}

/** A panel in slots, as far as it is seen between the faces of its bars. Undefined where they leave no opening. */
export function slottedSolid(slotted: SlotPanel): Solid | undefined {
  const { panel, normal, plane, edges } = slotted;
  const bounds = boundsOf(slotted, normal);
  if (!bounds || bounds.length < 3) return undefined;
  const corners = bounds
    .map((bound, i) => corner(bound, bounds[(i + 1) % bounds.length] ?? bound))
    .filter((point) => point !== undefined);
  if (corners.length !== bounds.length) return undefined;
  // Each corner lies within the other bounds, else the sides run past each other and leave no opening.
  if (corners.some((point) => bounds.some(({ out, at }) => dot(point, out) > at + 1e-6))) return undefined;
  const back = plane - panel.sheet.thickness / 2;
  return solid(
    panel,
    edges.map(({ body }) => body.bar.ref.id),
    corners.map((point) => along(point, normal, back)),
    normal,
  );
}

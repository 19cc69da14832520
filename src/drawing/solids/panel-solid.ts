import { type Body, cutPoint } from "../../facts/bodies.ts";
import { type LaidSheet, planeAxes } from "../../facts/sheets.ts";
import { extrude } from "../../geometry/extrude.ts";
import { add, along, cross, dot, midpoint, normalise, scale, subtract, type Vec3 } from "../../geometry/vector.ts";
import type { Panel } from "../../model/frame.ts";
import { type Solid, skins } from "./solid.ts";

/** Bars whose axes are nearer to each other than this cosine run the same way. */
const SAME_WAY = 0.9;

function solid(panel: Panel, bars: readonly string[], corners: readonly Vec3[], normal: Vec3): Solid {
  const prism = extrude(corners, scale(normal, panel.sheet.thickness));
  return { kind: "panel", of: panel.ref, with: bars, prism, surfaces: skins(prism) };
}

/** A sheet that lies on bars. */
export function laidSolid({ panel, bars, corners, normal }: LaidSheet): Solid {
  return solid(panel, bars, corners, normal);
}

/** Out of the plane the bars round a panel lie in; undefined where they make none. */
function planeOf([first, ...others]: readonly Body[]): Vec3 | undefined {
  for (const other of first ? others : []) {
    const along = Math.abs(dot(first?.axes.x ?? other.axes.x, other.axes.x)) > SAME_WAY;
    const across = along ? subtract(cutPoint(other, "from"), cutPoint(first ?? other, "from")) : other.axes.x;
    const normal = cross(first?.axes.x ?? other.axes.x, across);
    if (dot(normal, normal) > 1e-12) return normalise(normal);
  }
  return undefined;
}

/** A panel in the slots of the bars round it, as far as it is seen between them. Undefined where they leave no opening. */
export function slottedSolid(panel: Panel, held: readonly Body[]): Solid | undefined {
  const normal = planeOf(held);
  if (!normal) return undefined;
  const [u, v] = planeAxes(normal);
  const middles = held.map((body) => midpoint(cutPoint(body, "from"), cutPoint(body, "to")));
  const centre = scale(middles.reduce(add, [0, 0, 0]), 1 / middles.length);
  const low = [Infinity, Infinity];
  const high = [-Infinity, -Infinity];
  const edges: { axis: 0 | 1; at: number }[] = [];
  for (const [i, body] of held.entries()) {
    const axis = Math.abs(dot(body.axes.x, u)) > Math.abs(dot(body.axes.x, v)) ? 1 : 0;
    const across = axis === 0 ? u : v;
    for (const end of ["from", "to"] as const) {
      const at = dot(cutPoint(body, end), axis === 0 ? v : u);
      low[1 - axis] = Math.min(low[1 - axis] ?? 0, at);
      high[1 - axis] = Math.max(high[1 - axis] ?? 0, at);
    }
    const half = Math.abs(dot(across, body.axes.y)) * body.half.y + Math.abs(dot(across, body.axes.z)) * body.half.z;
    const line = dot(middles[i] ?? centre, across);
    edges.push({ axis, at: line < dot(centre, across) ? line + half : line - half });
  }
  for (const { axis, at } of edges) {
    if (at < dot(centre, axis === 0 ? u : v)) low[axis] = at;
    else high[axis] = at;
  }
  const [[u0 = 0, v0 = 0], [u1 = 0, v1 = 0]] = [low, high];
  if (!(u1 > u0 && v1 > v0)) return undefined;
  const plane = dot(centre, normal) - panel.sheet.thickness / 2;
  const corner = (a: number, b: number): Vec3 => along(along(scale(normal, plane), u, a), v, b);
  const corners = [corner(u0, v0), corner(u1, v0), corner(u1, v1), corner(u0, v1)];
  return solid(
    panel,
    held.map((body) => body.bar.ref.id),
    corners,
    normal,
  );
}

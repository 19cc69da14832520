import { add, dot, scale, type Vec3 } from "../geometry/vector.ts";
import type { Panel, Triple } from "../model/frame.ts";
import { type Body, bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { type Axes, sheetAxes } from "./sheet-axes.ts";
import { sheetNormal } from "./sheet-normal.ts";

/** A sheet that lies on the faces or ends of bars: the rectangle it covers, in the plane it touches. */
export interface LaidSheet {
  readonly panel: Panel;
  /** Out of the bars, into the sheet. */
  readonly normal: Vec3;
  /** The ways its sides run, in the plane. */
  readonly axes: Axes;
  /** Four corners in the plane of contact, m. */
  readonly corners: readonly [Vec3, Vec3, Vec3, Vec3];
  /** Along its axes, m. */
  readonly size: readonly [number, number];
  readonly bars: readonly string[];
}

function laidSheet(
  panel: Panel,
  held: readonly Body[],
  side: Triple,
  overhang: readonly [number, number, number, number],
): LaidSheet | undefined {
  const on = sheetNormal(side, held);
  const axes = sheetAxes(on, held);
  const [u, v] = axes;
  let [u0, u1, v0, v1, top] = [Infinity, -Infinity, Infinity, -Infinity, -Infinity];
  for (const body of held) {
    for (const vertex of body.prism?.vertices ?? []) {
      u0 = Math.min(u0, dot(vertex, u));
      u1 = Math.max(u1, dot(vertex, u));
      v0 = Math.min(v0, dot(vertex, v));
      v1 = Math.max(v1, dot(vertex, v));
      top = Math.max(top, dot(vertex, on));
    }
  }
  if (!(u1 > u0 && v1 > v0)) return undefined;
  const [a0, a1, b0, b1] = [u0 - overhang[0], u1 + overhang[1], v0 - overhang[2], v1 + overhang[3]];
  const corner = (a: number, b: number): Vec3 => add(add(scale(u, a), scale(v, b)), scale(on, top));
  return {
    panel,
    normal: on,
    axes,
    corners: [corner(a0, b0), corner(a1, b0), corner(a1, b1), corner(a0, b1)],
    size: [a1 - a0, b1 - b0],
    bars: held.map((body) => body.bar.ref.id),
  };
}

/** Every sheet laid on bars or screwed to their faces. */
export const sheets = defineFact<readonly LaidSheet[], { bodies: typeof bodies }>({
  id: "sheets",
  needs: { bodies },
  compute({ bodies: all }, frame) {
    const list: LaidSheet[] = [];
    for (const panel of frame.panels) {
      if (panel.held.kind === "in-slot") continue;
      const held = panel.held.bars.map((id) => all.get(id)).filter((body) => body !== undefined);
      const sheet = laidSheet(panel, held, panel.held.on, panel.held.overhang);
      if (sheet) list.push(sheet);
    }
    return list;
  },
});

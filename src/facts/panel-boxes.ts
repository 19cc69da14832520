import type { OrientedBox } from "../geometry/box.ts";
import { add, along, midpoint, scale, type Vec3 } from "../geometry/vector.ts";
import type { Panel } from "../model/frame.ts";
import { defineFact } from "./fact.ts";
import { shapedOutline } from "./shaped-outline.ts";
import { type LaidSheet, sheets } from "./sheets.ts";
import { type SidePair, type SlotPanel, slotPanels } from "./slot-panels.ts";

/** A bar whose slot takes an edge of a panel, and the way out of the panel to it. */
interface Seat {
  readonly bar: string;
  readonly out: Vec3;
}

/** Where a panel comes to lie. */
export interface PanelBox {
  readonly panel: Panel;
  /** Out of its plane. */
  readonly normal: Vec3;
  /** Undefined where the bars round it make no rectangle. */
  readonly box: OrientedBox | undefined;
  /** Its corners in the middle of its thickness, in order; empty where the bars round it shut nothing in. */
  readonly outline: readonly Vec3[];
  /** Of a panel in slots; none of one that lies on bars. */
  readonly seats: readonly Seat[];
}

/** A panel stays this far from what bounds it, m: common practice for expansion. */
const ROOM = 0.001;

/** From where to where it reaches along an axis, m. */
function reach([low, high]: SidePair): readonly [number, number] {
  return [
    (low.kind === "slot" ? -low.edge.floor : low.at) + ROOM,
    (high.kind === "slot" ? high.edge.floor : high.at) - ROOM,
  ];
}

/** Corners of a panel in the middle of its thickness. */
const cornersOf = ({ centre, axes, half }: OrientedBox): readonly Vec3[] =>
  (
    [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ] as const
  ).map(([a, b]) => along(along(centre, axes[0], a * half[0]), axes[1], b * half[1]));

function inSlots(slotPanel: SlotPanel): PanelBox {
  const { panel, normal, plane, edges, rectangle } = slotPanel;
  const seats = edges.map(({ body, outward }): Seat => ({ bar: body.bar.ref.id, out: outward }));
  const shaped = { panel, normal, box: undefined, outline: shapedOutline(slotPanel, ROOM), seats };
  if (!rectangle) return shaped;
  const [u, v] = rectangle.axes;
  const [[u0, u1], [v0, v1]] = [reach(rectangle.sides[0]), reach(rectangle.sides[1])];
  if (!(u1 > u0 && v1 > v0)) return shaped;
  const centre = add(add(scale(u, (u0 + u1) / 2), scale(v, (v0 + v1) / 2)), scale(normal, plane));
  const half = [(u1 - u0) / 2, (v1 - v0) / 2, panel.sheet.thickness / 2] as const;
  const box: OrientedBox = { centre, axes: [u, v, normal], half };
  return { panel, normal, box, outline: cornersOf(box), seats };
}

function laid(sheet: LaidSheet): PanelBox {
  const [u, v] = sheet.axes;
  const { thickness } = sheet.panel.sheet;
  const centre = along(midpoint(sheet.corners[0], sheet.corners[2]), sheet.normal, thickness / 2);
  const half = [sheet.size[0] / 2, sheet.size[1] / 2, thickness / 2] as const;
  const box: OrientedBox = { centre, axes: [u, v, sheet.normal], half };
  return { panel: sheet.panel, normal: sheet.normal, box, outline: cornersOf(box), seats: [] };
}

/** Every panel as a box, to slot depth where its edges run in slots, by id. */
export const panelBoxes = defineFact<
  ReadonlyMap<string, PanelBox>,
  { sheets: typeof sheets; slotted: typeof slotPanels }
>({
  id: "panel-boxes",
  needs: { sheets, slotted: slotPanels },
  compute({ sheets: lying, slotted }) {
    return new Map([...lying.map(laid), ...slotted.all.map(inSlots)].map((box) => [box.panel.ref.id, box] as const));
  },
});

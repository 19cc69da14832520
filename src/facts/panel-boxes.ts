import type { OrientedBox } from "../geometry/box.ts";
import { add, along, cross, dot, midpoint, normalise, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Panel } from "../model/frame.ts";
import { faceNames, faceNormal } from "./axes.ts";
import { type Body, bodies, cutPoint } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { panelShares } from "./panel-shares.ts";
import { type LaidSheet, planeAxes, sheets } from "./sheets.ts";
import { faceDistance } from "./tubes.ts";

/** A bar whose slot takes an edge of a panel, and the way from the middle of the panel to it. */
export interface Seat {
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
  /** Of a panel in slots; none of one that lies on bars. */
  readonly seats: readonly Seat[];
}

/** Bars nearer to parallel than this cosine run along one edge: 11°. */
const ALONG = 0.98;
/** A panel stays this far from the floor of its slots, m: common practice for expansion. */
const FLOOR_GAP = 0.001;

const centreOf = (body: Body): Vec3 => midpoint(cutPoint(body, "from"), cutPoint(body, "to"));

/** How far out of the middle line of a bar, on the side that looks along `inward`, the edge of a panel lies, m. */
function edgeFrom(body: Body, inward: Vec3): number {
  const face = faceNames.reduce((a, b) =>
    dot(faceNormal(body.axes, b), inward) > dot(faceNormal(body.axes, a), inward) ? b : a,
  );
  const slot = body.bar.profile.slots.find((one) => one.face === face && !one.closed);
  return faceDistance(body, face) - (slot ? slot.depth - FLOOR_GAP : 0);
}

interface Edge {
  readonly low: number;
  readonly high: number;
}

/** From where to where the panel reaches along `across`, between bars square to it or to the ends of bars along it. */
function reach(square: readonly Body[], parallel: readonly Body[], across: Vec3): Edge {
  const at = (body: Body): number => dot(centreOf(body), across);
  const ends = parallel.map((body) => {
    const [a, b] = [dot(cutPoint(body, "from"), across), dot(cutPoint(body, "to"), across)];
    return [Math.min(a, b), Math.max(a, b)] as const;
  });
  const [free0, free1] = [Math.max(...ends.map((e) => e[0])), Math.min(...ends.map((e) => e[1]))];
  const places = square.map(at);
  const [first, last] = [Math.min(...places), Math.max(...places)];
  const middle = square.length > 1 && last - first > 0.001 ? (first + last) / 2 : (free0 + free1) / 2;
  let [low, high] = [-Infinity, Infinity];
  for (const body of square) {
    if (at(body) < middle) low = Math.max(low, at(body) + edgeFrom(body, across));
    else high = Math.min(high, at(body) - edgeFrom(body, scale(across, -1)));
  }
  return { low: low === -Infinity ? free0 : low, high: high === Infinity ? free1 : high };
}

function inSlots(panel: Panel, normal: Vec3, held: readonly Body[]): PanelBox {
  const [first] = held;
  const u = first ? normalise(first.axes.x) : normal;
  const v = cross(normal, u);
  const alongU = held.filter((body) => Math.abs(dot(body.axes.x, u)) > ALONG);
  const alongV = held.filter((body) => Math.abs(dot(body.axes.x, v)) > ALONG);
  const square = first !== undefined && alongU.length + alongV.length === held.length;
  const middleOf = (bodies: readonly Body[]): Vec3 =>
    scale(
      bodies.reduce((sum, body) => add(sum, centreOf(body)), [0, 0, 0] as Vec3),
      1 / Math.max(1, bodies.length),
    );
  let middle = middleOf(held);
  let box: OrientedBox | undefined;
  if (square) {
    const [du, dv] = [reach(alongV, alongU, u), reach(alongU, alongV.length > 0 ? alongV : alongU, v)];
    const plane = dot(middle, normal);
    const at = (a: Edge): number => (a.low + a.high) / 2;
    middle = add(add(scale(u, at(du)), scale(v, at(dv))), scale(normal, plane));
    const half = [(du.high - du.low) / 2, (dv.high - dv.low) / 2, panel.sheet.thickness / 2] as const;
    if (half.every((h) => h > 0 && Number.isFinite(h))) box = { centre: middle, axes: [u, v, normal], half };
  }
  const seats = held.map((body): Seat => {
    const across = cross(body.axes.x, normal);
    const towards = dot(subtract(centreOf(body), middle), across) < 0 ? scale(across, -1) : across;
    return { bar: body.bar.ref.id, out: towards };
  });
  return { panel, normal, box, seats };
}

function laid(sheet: LaidSheet): PanelBox {
  const [u, v] = planeAxes(sheet.normal);
  const { thickness } = sheet.panel.sheet;
  const centre = along(midpoint(sheet.corners[0], sheet.corners[2]), sheet.normal, thickness / 2);
  const half = [sheet.size[0] / 2, sheet.size[1] / 2, thickness / 2] as const;
  return { panel: sheet.panel, normal: sheet.normal, box: { centre, axes: [u, v, sheet.normal], half }, seats: [] };
}

/** Every panel as a box, to slot depth where its edges run in slots, by id. */
export const panelBoxes = defineFact<
  ReadonlyMap<string, PanelBox>,
  { bodies: typeof bodies; sheets: typeof sheets; shares: typeof panelShares }
>({
  id: "panel-boxes",
  needs: { bodies, sheets, shares: panelShares },
  compute({ bodies: all, sheets: lying, shares }, frame) {
    const boxes = new Map<string, PanelBox>();
    for (const panel of frame.panels) {
      const { id } = panel.ref;
      const sheet = lying.find((one) => one.panel === panel);
      const normal = shares.get(id)?.normal;
      if (sheet) boxes.set(id, laid(sheet));
      else if (panel.held.kind === "in-slot" && normal) {
        const held = panel.held.edges.flatMap((edge) => {
          const body = edge.kind === "bar" ? all.get(edge.bar) : undefined;
          return body?.prism ? [body] : [];
        });
        boxes.set(id, inSlots(panel, normal, held));
      }
    }
    return boxes;
  },
});

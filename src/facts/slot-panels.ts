import { angleBetween, dot, normalise, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Panel, PanelEdge } from "../model/frame.ts";
import type { FaceName, Slot } from "../model/stock/stock.ts";
import { faceNames, faceNormal } from "./axes.ts";
import { type Body, bodies, onFace } from "./bodies.ts";
import { chooseSlots } from "./face-choice.ts";
import { defineFact } from "./fact.ts";
import { panelNormal } from "./panel-normal.ts";
import { type EdgeRing, edgeRing, inwardOf } from "./panel-ring.ts";
import { planeAxes } from "./plane-axes.ts";
import type { Question } from "./question.ts";

/** One edge of a panel in the slot of a bar. */
export interface SlotEdge {
  readonly body: Body;
  readonly face: FaceName;
  readonly slot: Slot;
  /** In the panel's plane, out of the panel towards the bar. */
  readonly outward: Vec3;
  /** How far the bar's face stands out along `outward`, and how far the panel may reach: slot floor or strip, m. */
  readonly mouth: number;
  readonly floor: number;
  /** Distance of the slot's line from the plane the panel lies in, m. */
  readonly off: number;
  /** By how much the slot looks away from the panel, rad. */
  readonly turned: number;
}

/** A side of a rectangular panel: in a slot, or free and reaching so far along its axis, m. */
export type PanelSide =
  | { readonly kind: "slot"; readonly edge: SlotEdge }
  | { readonly kind: "free"; readonly at: number };

/** A panel held in slots and where its edges lie. */
export interface SlotPanel {
  readonly panel: Panel;
  readonly normal: Vec3;
  /** Along the normal, m: the plane that most of the slots lie in. */
  readonly plane: number;
  readonly edges: readonly SlotEdge[];
  /** Its axes and, towards − and + of each, its sides; undefined where it is no rectangle. */
  readonly rectangle:
    | { readonly axes: readonly [Vec3, Vec3]; readonly sides: readonly [SidePair, SidePair] }
    | undefined;
  /** Bars that have no open slot towards the panel. */
  readonly slotless: readonly string[];
}
export type SidePair = readonly [PanelSide, PanelSide];

export interface SlotPanels {
  readonly all: readonly SlotPanel[];
  /** Panels whose bars span no plane. */
  readonly planeless: readonly Panel[];
  readonly questions: readonly Question[];
}

/** Slots this near to each other's plane are one plane where a bar offers several, m. */
const SAME_PLANE = 0.001;
/** Bars this near to square or parallel bound a rectangle: 0.5°. */
const SQUARE = Math.sin(Math.PI / 360);

function open(body: Body, face: FaceName): readonly Slot[] {
  return body.bar.profile.slots.filter((slot) => slot.face === face && !slot.closed);
}

/** How deep a panel's edge reaches into a slot, m: to its floor, or to the bottom of a strip made for it. */
export function slotDepth(panel: Panel, body: Body, slot: Slot): number {
  const gasket = panel.held.kind === "in-slot" ? panel.held.gasket : undefined;
  return gasket?.slotSize === body.bar.profile.slotSize ? Math.min(gasket.depth, slot.depth) : slot.depth;
}

interface Facing {
  readonly body: Body;
  readonly edge: Extract<PanelEdge, { kind: "bar" }>;
  readonly inward: Vec3;
  readonly face: FaceName;
  readonly slots: readonly Slot[];
}

function heightOf(facing: Facing, slot: Slot, normal: Vec3): number {
  return dot(onFace(facing.body, facing.face, 0, slot.across), normal);
}

/** The plane of the panel: that of the bars with one slot to choose from, or of the middle of all. */
function planeOf(facings: readonly Facing[], normal: Vec3): number {
  const sure = facings.flatMap((facing) => {
    const [only, second] = facing.slots;
    return only && !second ? [heightOf(facing, only, normal)] : [];
  });
  const heights =
    sure.length > 0 ? sure : facings.flatMap((facing) => facing.slots.map((slot) => heightOf(facing, slot, normal)));
  const sorted = [...heights].sort((a, b) => a - b);
  const [low, high] = [
    sorted[Math.floor((sorted.length - 1) / 2)] ?? 0,
    sorted[Math.ceil((sorted.length - 1) / 2)] ?? 0,
  ];
  // Of an even number the two middle ones: where they differ, the one that more slots share.
  const near = (at: number): number => heights.filter((height) => Math.abs(height - at) < SAME_PLANE).length;
  return near(high) > near(low) ? high : low;
}

function edgeOf(panel: Panel, facing: Facing, slot: Slot, normal: Vec3, plane: number): SlotEdge {
  const { body, face, inward } = facing;
  const point = onFace(body, face, 0, slot.across);
  const outward = scale(inward, -1);
  const mouth = dot(point, outward);
  return {
    body,
    face,
    slot,
    outward,
    mouth,
    floor: mouth + slotDepth(panel, body, slot),
    off: Math.abs(dot(point, normal) - plane),
    turned: angleBetween(faceNormal(body.axes, face), inward),
  };
}

/** How far bars beside a free side reach along an axis: the sheet runs on as far as all of them hold it. */
function freeSide(beside: readonly Body[], axis: Vec3, way: 1 | -1): number {
  const reaches = beside.map((body) => {
    const ends = (body.prism?.vertices ?? [body.bar.from, body.bar.to]).map((point) => dot(point, axis));
    return way > 0 ? Math.max(...ends) : Math.min(...ends);
  });
  return way > 0 ? Math.min(...reaches) : Math.max(...reaches);
}

function rectangleOf(ring: EdgeRing, edges: ReadonlyMap<Body, SlotEdge>, normal: Vec3): SlotPanel["rectangle"] {
  if (ring.length !== 4) return undefined;
  const first = ring.find((side) => side !== undefined);
  if (!first) return undefined;
  const [u, v] = planeAxes(normal);
  const firstAxis = first.axes.x;
  const bySide = Math.abs(dot(firstAxis, u)) >= Math.abs(dot(firstAxis, v)) - 1e-9;
  const towards = bySide ? u : v;
  const own = normalise(scale(firstAxis, dot(firstAxis, towards) < 0 ? -1 : 1));
  const other = normalise(subtract(bySide ? v : u, scale(own, dot(bySide ? v : u, own))));
  const axes: readonly [Vec3, Vec3] = bySide ? [own, other] : [other, own];
  for (const [i, body] of ring.entries()) {
    if (!body) continue;
    const along = Math.abs(dot(body.axes.x, (i - ring.indexOf(first)) % 2 === 0 ? own : other));
    if (Math.sqrt(Math.max(0, 1 - along * along)) > SQUARE) return undefined;
  }
  const sideOf = (axis: Vec3, way: 1 | -1): PanelSide => {
    for (const edge of edges.values()) {
      const towards = dot(edge.outward, axis) * way;
      if (towards > 0.5) return { kind: "slot", edge };
    }
    const beside = [...edges.values()]
      .filter((edge) => Math.abs(dot(edge.outward, axis)) < 0.5)
      .map((edge) => edge.body);
    const all = beside.length > 0 ? beside : [...edges.keys()];
    return { kind: "free", at: freeSide(all, axis, way) };
  };
  const pair = (axis: Vec3): SidePair => [sideOf(axis, -1), sideOf(axis, 1)];
  return { axes, sides: [pair(axes[0]), pair(axes[1])] };
}

/** Every panel held in slots: which slot of which face each edge sits in, and how far it may reach. */
export const slotPanels = defineFact<SlotPanels, { bodies: typeof bodies }>({
  id: "slot-panels",
  needs: { bodies },
  compute({ bodies: all }, frame) {
    const list: SlotPanel[] = [];
    const planeless: Panel[] = [];
    const questions: Question[] = [];
    for (const panel of frame.panels) {
      if (panel.held.kind !== "in-slot") continue;
      const ring = edgeRing(panel.held.edges, all);
      const held = ring.filter((body) => body !== undefined);
      const normal = panelNormal(held);
      if (!normal) {
        planeless.push(panel);
        continue;
      }
      const facings: Facing[] = [];
      const slotless: string[] = [];
      for (const edge of panel.held.edges) {
        if (edge.kind === "free") continue;
        const body = all.get(edge.bar);
        if (!body) continue;
        const inward = inwardOf(ring, body, normal);
        const face = faceNames.reduce((a, b) =>
          dot(faceNormal(body.axes, b), inward) > dot(faceNormal(body.axes, a), inward) ? b : a,
        );
        const slots = open(body, face);
        if (slots.length === 0) slotless.push(edge.bar);
        else if (edge.slot === undefined) facings.push({ body, edge, inward, face, slots });
        else {
          const answer = chooseSlots(body, face, edge.slot);
          if ("is" in answer)
            facings.push({ body, edge, inward, face, slots: answer.is.filter((slot) => !slot.closed) });
          else questions.push({ at: panel.ref, ...answer });
        }
      }
      const plane = planeOf(facings, normal);
      const edges = new Map<Body, SlotEdge>();
      for (const facing of facings) {
        const [nearest] = [...facing.slots].sort(
          (a, b) => Math.abs(heightOf(facing, a, normal) - plane) - Math.abs(heightOf(facing, b, normal) - plane),
        );
        if (nearest) edges.set(facing.body, edgeOf(panel, facing, nearest, normal, plane));
        else slotless.push(facing.edge.bar);
      }
      list.push({
        panel,
        normal,
        plane,
        edges: [...edges.values()],
        rectangle: rectangleOf(ring, edges, normal),
        slotless,
      });
    }
    return { all: list, planeless, questions };
  },
});

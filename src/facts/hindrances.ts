import { boundsOf, boundsOverlap } from "../geometry/bounds.ts";
import { boxBounds, type OrientedBox } from "../geometry/box.ts";
import { prismFromBox } from "../geometry/prism.ts";
import { prismPenetration } from "../geometry/prism-penetration.ts";
import { along, distance, dot, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import type { Connector } from "../model/stock/stock.ts";
import { type Body, bodies } from "./bodies.ts";
import { type Contacts, contacts } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { type PanelBox, panelBoxes } from "./panel-boxes.ts";
import type { ScrewedPart } from "./placed.ts";
import { screwCovers } from "./screw-covers.ts";
import { screwedParts } from "./screwed-parts.ts";
import { type SlotEnds, slotEnds } from "./slot-ends.ts";

/** Why one part keeps another from being moved away. */
export type Hinders =
  | "bears" // they touch face to face
  | "panel in slot"
  | "in the way" // of a panel drawn out along its slots, of a sheet put in, of a screw's head in a slot
  | "head in slot" // an end screw's head runs in the other's slot
  | "covered"; // the screws that join them cannot be reached

/** A part that cannot be moved some ways because of another. */
export interface Hindrance {
  readonly part: string;
  readonly by: string;
  readonly why: Hinders;
  /** Whether it stops a move along a unit vector. */
  readonly stops: (way: Vec3) => boolean;
  /** Screws out of reach, where those are why. */
  readonly screws?: readonly Ref<"screw">[];
  /** A careful hand may get round it: it orders the work, but never makes it impossible. */
  readonly soft?: boolean;
  /** It counts only while of each of these lists at least one part is there. */
  readonly while: readonly (readonly string[])[];
}

export interface Hindrances {
  readonly all: readonly Hindrance[];
  /** Directions of the bars and square to them, each once, most frequent first. */
  readonly axes: readonly Vec3[];
  /** Ways a part may be taken off: both ways along the axes, upwards first, downwards last. */
  readonly ways: readonly Vec3[];
}

/** Sides this close count as bearing on each other, m. */
const NEAR = 0.001;
/** Sine under which a move slides along a face: a little over the 2° within which faces count as facing. */
const SLIDES = 0.04;
/** Axes along which moves are looked at, at most: frames have a few; those with many differ little between them. */
const AXES = 13;
/** Directions are one within this: of the cosine between them, or of their coordinates. */
const SAME_AXIS = 1e-4;
/** A panel drawn out is stopped by what it enters deeper than this, m. */
const GRAZE = 0.001;

/** Connectors whose every screw holds both bars; those of others hold one bar each. */
const BOTH_HELD: ReadonlySet<Connector["kind"]> = new Set(["end-fastener", "end-screw", "side-tie"]);

const never: readonly (readonly string[])[] = [];
const always = (): boolean => true;

/**
 * Bars a panel meets when it is moved one way. Of a bar that its outline already runs into, the panel must be cut away: there
 * it meets the bar only with what of it lies behind the bar.
 */
function* met(
  all: ReadonlyMap<string, Body>,
  box: OrientedBox,
  axis: 0 | 1 | 2,
  sign: number,
  run: number,
): Generator<string> {
  const way = scale(box.axes[axis], sign);
  const half: [number, number, number] = [...box.half];
  half[axis] += run / 2;
  const swept: OrientedBox = { centre: along(box.centre, way, run / 2), axes: box.axes, half };
  const [still, moved, bounds] = [prismFromBox(box), prismFromBox(swept), boxBounds(swept)];
  const behind = dot(box.centre, way) - box.half[axis];
  for (const [bar, body] of all) {
    if (!body.prism || !boundsOverlap(body.bounds, bounds)) continue;
    if (prismPenetration(body.prism, moved).depth < GRAZE) continue;
    const least = Math.min(...body.prism.vertices.map((vertex) => dot(vertex, way)));
    if (least > behind + GRAZE || prismPenetration(body.prism, still).depth < GRAZE) yield bar;
  }
}

/** A sheet that lies on bars: not through them, and straight in from above or from a side that is open. */
function* ofSheet(
  { panel, normal, box }: PanelBox,
  all: ReadonlyMap<string, Body>,
  span: number,
): Generator<Hindrance> {
  if (panel.held.kind === "in-slot") return;
  const { id } = panel.ref;
  for (const bar of panel.held.bars) {
    yield { part: id, by: bar, why: "bears", stops: (way) => dot(way, normal) < -SLIDES, while: never };
    yield { part: bar, by: id, why: "bears", stops: (way) => dot(way, normal) > SLIDES, while: never };
  }
  if (!box) return;
  for (const [axis, sign] of [
    [2, 1],
    [0, 1],
    [0, -1],
    [1, 1],
    [1, -1],
  ] as const) {
    const way = scale(box.axes[axis], sign);
    for (const bar of met(all, box, axis, sign, span))
      yield { part: id, by: bar, why: "in the way", stops: (d) => dot(d, way) > 1 - SLIDES, soft: true, while: never };
  }
}

/** A panel in slots: not out of its plane, not into a slot's floor, and along its slots only as far as nothing is in the way. */
function* ofPanel({ panel, normal, box, seats }: PanelBox, all: ReadonlyMap<string, Body>): Generator<Hindrance> {
  const { id } = panel.ref;
  const across = (way: Vec3): boolean => Math.abs(dot(way, normal)) > SLIDES;
  const why = "panel in slot";
  for (const { bar, out } of seats) {
    yield { part: id, by: bar, why, stops: (way) => across(way) || dot(way, out) > SLIDES, while: never };
    yield { part: bar, by: id, why, stops: (way) => across(way) || dot(way, out) < -SLIDES, while: never };
  }
  if (!box) return;
  const own = new Set(seats.map((seat) => seat.bar));
  for (const axis of [0, 1] as const) {
    // Only while slots on both sides guide it: out of one slot it comes by its depth alone.
    const guides = seats.filter((seat) => Math.abs(dot(seat.out, box.axes[axis])) < SLIDES).map((seat) => seat.bar);
    if (guides.length === 0) continue;
    for (const sign of [1, -1]) {
      const way = scale(box.axes[axis], sign);
      for (const bar of met(all, box, axis, sign, 2 * box.half[axis])) {
        if (own.has(bar)) continue;
        yield { part: id, by: bar, why: "in the way", stops: (d) => dot(d, way) > 1 - SLIDES, while: [guides] };
      }
    }
  }
}

/** Bars joined by screws that something covers on both sides stay together until it is gone. */
function* ofCovers(connector: ScrewedPart, of: (screw: string) => readonly string[]): Generator<Hindrance> {
  const both = connector.part !== undefined && BOTH_HELD.has(connector.part.kind);
  const sides = connector.holds.map(({ bar }) => {
    const own = connector.screws.filter(({ into }) => (both || into.kind !== "nut" ? true : into.landing.bar === bar));
    const covered = own.filter((screw) => of(screw.ref.id).length > 0).map((screw) => screw.ref);
    return { bar, held: own.length > 0, covered, covers: [...new Set(covered.flatMap((screw) => of(screw.id)))] };
  });
  for (const a of sides) {
    for (const b of sides) {
      if (a === b || !a.held || !b.held || a.covers.length === 0 || b.covers.length === 0) continue;
      const screws = [...new Set([...a.covered, ...b.covered])];
      yield { part: a.bar, by: b.bar, why: "covered", screws, stops: always, while: [a.covers, b.covers] };
    }
  }
}

/** The head of an end screw in a slot runs along it, or comes out of it as the screw is turned out of its bar. */
function* ofHead(
  connector: ScrewedPart,
  all: ReadonlyMap<string, Body>,
  touching: Contacts,
  slots: SlotEnds,
): Generator<Hindrance> {
  if (connector.part?.kind !== "end-screw" || connector.part.head !== "in-slot") return;
  const [own, onto] = connector.holds;
  const [screw] = connector.screws;
  const [head] = connector.inSlots;
  const body = onto && all.get(onto.bar);
  if (!own || !onto || !screw || !head || !body) return;
  const slot = body.axes.x;
  const stops = (way: Vec3): boolean =>
    Math.abs(dot(way, slot)) < 1 - SLIDES && Math.abs(dot(way, screw.axis)) < 1 - SLIDES;
  yield { part: own.bar, by: onto.bar, why: "head in slot", stops, while: never };
  yield { part: onto.bar, by: own.bar, why: "head in slot", stops, while: never };
  // Bars that stand on the same face, and whatever closes the slot.
  const met = touching.of(onto.bar).filter((contact) => contact.a.side === head.face && contact.b.bar !== own.bar);
  for (const sign of [1, -1]) {
    const way = scale(slot, sign);
    const runs = (d: Vec3): boolean => dot(d, way) > 1 - SLIDES;
    const back = (d: Vec3): boolean => dot(d, way) < SLIDES - 1;
    const past = met.filter((contact) => sign * dot(subtract(contact.middle, screw.seat), slot) > 0);
    const closing = slots.closing(onto.bar, head.face, head.slot, sign > 0 ? "to" : "from");
    const others = [
      ...past.map((contact) => contact.b.bar),
      ...closing.filter((r) => r.kind !== "stand").map((r) => r.id),
    ];
    for (const by of new Set(others)) {
      if (by === own.bar) continue;
      yield { part: own.bar, by, why: "in the way", stops: runs, while: never };
      yield { part: by, by: own.bar, why: "in the way", stops: back, while: [[onto.bar]] };
    }
  }
}

/** An axis with the sign it is known by: the greatest of its coordinates is positive, of like ones the last. */
function knownBy(axis: Vec3): Vec3 {
  const most = Math.max(...axis.map(Math.abs));
  const greatest = axis.findLast((part) => Math.abs(part) > most - SAME_AXIS) ?? 1;
  return greatest < 0 ? scale(axis, -1) : axis;
}

/**
 * The directions the bars run and square to them: most frequent first, of like ones that along which the most length of bar runs, then
 * upright before level and by place.
 */
function axesOf(bars: Iterable<Body>): readonly Vec3[] {
  const found: { axis: Vec3; count: number; run: number }[] = [];
  for (const { axes, cutLength } of bars) {
    for (const axis of [axes.x, axes.y, axes.z]) {
      const run = axis === axes.x ? cutLength : 0;
      const known = found.find((one) => Math.abs(dot(one.axis, axis)) > 1 - SAME_AXIS);
      if (known) {
        known.count += 1;
        known.run += run;
      } else found.push({ axis: knownBy(axis), count: 1, run });
    }
  }
  const later = (a: Vec3, b: Vec3): number => {
    const i = ([2, 0, 1] as const).find((one) => Math.abs(a[one] - b[one]) > SAME_AXIS);
    return i === undefined ? 0 : b[i] - a[i];
  };
  return found
    .sort((a, b) => b.count - a.count || (Math.abs(b.run - a.run) > NEAR ? b.run - a.run : later(a.axis, b.axis)))
    .slice(0, AXES)
    .map(({ axis }) => axis);
}

/** Both ways along each axis: up before level, level before down. */
function waysOf(axes: readonly Vec3[]): readonly Vec3[] {
  const steep = (way: Vec3): number => (way[2] > 0.5 ? 0 : way[2] < -0.5 ? 2 : 1);
  return axes.flatMap((axis) => [axis, scale(axis, -1)]).sort((a, b) => steep(a) - steep(b));
}

/** Further than this no part of the frame is from another, m. */
function spanOf(bars: Iterable<Body>): number {
  const corners = [...bars].flatMap(({ bounds }) => [bounds.min, bounds.max]);
  if (corners.length === 0) return 0;
  const { min, max } = boundsOf(corners);
  return distance(min, max);
}

/**
 * Which part keeps which from being moved away, and which ways: the blocking relation of planning an assembly by taking it
 * apart (R. H. Wilson, J.-C. Latombe, "Geometric reasoning about mechanical assembly", Artificial Intelligence 71, 1994),
 * for small moves along the axes of the bars, and for panels over their whole run in the slots.
 */
export const hindrances = defineFact<
  Hindrances,
  {
    bodies: typeof bodies;
    contacts: typeof contacts;
    parts: typeof screwedParts;
    panels: typeof panelBoxes;
    covers: typeof screwCovers;
    slots: typeof slotEnds;
  }
>({
  id: "hindrances",
  needs: { bodies, contacts, parts: screwedParts, panels: panelBoxes, covers: screwCovers, slots: slotEnds },
  compute({ bodies: all, contacts: touching, parts, panels, covers, slots }) {
    const list: Hindrance[] = [];
    for (const { a, b, normal, gap } of touching.all) {
      if (gap > NEAR) continue;
      list.push({ part: a.bar, by: b.bar, why: "bears", stops: (way) => dot(way, normal) > SLIDES, while: never });
      list.push({ part: b.bar, by: a.bar, why: "bears", stops: (way) => dot(way, normal) < -SLIDES, while: never });
    }
    const span = spanOf(all.values());
    for (const panel of panels.values()) list.push(...ofSheet(panel, all, span), ...ofPanel(panel, all));
    for (const connector of parts.all)
      list.push(...ofCovers(connector, covers.of), ...ofHead(connector, all, touching, slots));
    const axes = axesOf(all.values());
    return { all: list, axes, ways: waysOf(axes) };
  },
});

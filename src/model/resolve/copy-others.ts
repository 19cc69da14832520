import type { Door, Group, Load, Mass, Panel, PanelEdge, Stand, Triple, Zone } from "../frame.ts";
import { ref } from "../ref.ts";
import { quote } from "../text/quote.ts";
import { copyId, type Instance, renamed } from "./copies.ts";
import { moveFace, moveSlot } from "./copy-bars.ts";
import { type BarsById, nameCopy, standCopyId } from "./copy-joints.ts";
import { moveAxis, movePoint, moveSizes, moveVector, type Placement } from "./placement.ts";
import { triple } from "./values.ts";
import { cross, lengthOf, minus, unit } from "./vectors.ts";
import { refuse, type Work } from "./work.ts";

/** The two in-plane axes of a panel, x before y before z, by its normal: all but the one that is most square to it. */
function inPlane(normal: Triple): readonly [number, number] {
  const [x, y, z] = [Math.abs(normal[0]), Math.abs(normal[1]), Math.abs(normal[2])];
  if (z >= x && z >= y) return [0, 1];
  return y >= x ? [0, 2] : [1, 2];
}

/** A normal of the plane that the bars round a panel lie in. */
function normalOf(panel: Panel, bars: BarsById): Triple | undefined {
  if (panel.held.kind !== "in-slot") return panel.held.on;
  let first: Triple | undefined;
  for (const edge of panel.held.edges) {
    const bar = edge.kind === "bar" ? bars.get(edge.bar) : undefined;
    if (bar === undefined) continue;
    const along = unit(minus(bar.to, bar.from));
    first ??= along;
    const square = cross(first, along);
    if (lengthOf(square) > 0.5) return square;
  }
  return undefined;
}

interface InPlaneMove {
  /** Whether what was along the first axis now is along the second. */
  readonly swaps: boolean;
  /** Whether the sense along each axis, as drawn, turns round. */
  readonly flips: readonly [boolean, boolean];
}

/** Where the in-plane axes of a panel come to lie; undefined when that is on no axes. */
function inPlaneMove(normal: Triple, placement: Placement): InPlaneMove | undefined {
  const from = inPlane(normal);
  const to = inPlane(moveVector(placement, normal));
  const flips: boolean[] = [];
  let swaps = false;
  for (const axis of from) {
    const moved = moveVector(placement, [axis === 0 ? 1 : 0, axis === 1 ? 1 : 0, axis === 2 ? 1 : 0]);
    const lands = moved.findIndex((value) => Math.abs(value) === 1);
    if (lands !== to[0] && lands !== to[1]) return undefined;
    if (axis === from[0]) swaps = lands === to[1];
    flips.push((moved[lands] ?? 1) < 0);
  }
  return { swaps, flips: [flips[0] ?? false, flips[1] ?? false] };
}

type Overhang = readonly [number, number, number, number];

function moveOverhang([a, b, c, d]: Overhang, { swaps, flips }: InPlaneMove): Overhang {
  const first = flips[0] ? [b, a] : [a, b];
  const second = flips[1] ? [d, c] : [c, d];
  const [low, high] = swaps ? [second, first] : [first, second];
  return Object.freeze([low[0] ?? 0, low[1] ?? 0, high[0] ?? 0, high[1] ?? 0] as const);
}

function swapped<T>(pair: readonly [T, T] | undefined, move: InPlaneMove): readonly [T, T] | undefined {
  return pair === undefined || !move.swaps ? pair : Object.freeze([pair[1], pair[0]] as const);
}

function copyEdge(edge: PanelEdge, bars: BarsById, instance: Instance): PanelEdge {
  if (edge.kind === "free") return edge;
  const slot = edge.slot && moveSlot(edge.slot, undefined, bars.get(edge.bar), instance);
  return Object.freeze({ kind: "bar", bar: renamed(instance, edge.bar), ...(slot === undefined ? {} : { slot }) });
}

const NOTHING_MOVED: InPlaneMove = { swaps: false, flips: [false, false] };

/** Whether a panel says nothing that depends on which of its sides is which. */
function isEven({ held, size, notches }: Panel): boolean {
  const overhang = held.kind === "in-slot" ? [0] : held.overhang;
  const even = (pair: readonly [number, number] | undefined): boolean => pair === undefined || pair[0] === pair[1];
  return overhang.every((one) => one === overhang[0]) && even(size) && even(notches);
}

export function copyPanel(work: Work, panel: Panel, bars: BarsById, instance: Instance): Panel | undefined {
  const { placement } = instance;
  const normal = placement.shifts ? undefined : normalOf(panel, bars);
  let move: InPlaneMove | undefined = NOTHING_MOVED;
  if (!placement.shifts && !isEven(panel)) move = normal === undefined ? undefined : inPlaneMove(normal, placement);
  if (move === undefined) {
    const found = `panel "${quote(panel.ref.id)}" with sides that differ, turned off the axes`;
    refuse(work, "panel-off-axes", instance.pointer, {
      found,
      expected: "a turn by right angles",
      mend: "draw this panel",
    });
    return undefined;
  }
  const { held } = panel;
  const size = swapped(panel.size, move);
  const notches = swapped(panel.notches, move);
  const { size: _size, notches: _notches, ...rest } = panel;
  return Object.freeze({
    ...rest,
    ref: Object.freeze(ref("panel", panel.ref.id + instance.suffix)),
    held:
      held.kind === "in-slot"
        ? Object.freeze({
            ...held,
            edges: Object.freeze(held.edges.map((edge) => copyEdge(edge, bars, instance))),
          })
        : Object.freeze({
            ...held,
            bars: Object.freeze(held.bars.map((bar) => renamed(instance, bar))),
            on: moveVector(placement, held.on),
            overhang: moveOverhang(held.overhang, move),
          }),
    ...(size === undefined ? {} : { size }),
    ...(notches === undefined ? {} : { notches }),
  });
}

export function copyMass(mass: Mass, instance: Instance): Mass {
  const { placement } = instance;
  return Object.freeze({
    ...mass,
    ref: Object.freeze(ref("mass", mass.ref.id + instance.suffix)),
    centre: movePoint(placement, mass.centre),
    ...(mass.box === undefined ? {} : { box: moveSizes(placement, mass.box) }),
    on: Object.freeze(mass.on.map((id) => renamed(instance, id))),
    ...(mass.slides === undefined
      ? {}
      : { slides: Object.freeze({ ...mass.slides, by: moveVector(placement, mass.slides.by) }) }),
  });
}

type Fitting = Door["hinges"][number];

function copyFitting(fitting: Fitting, instance: Instance): Fitting {
  const [own, other] = fitting.bars;
  return Object.freeze({
    part: fitting.part,
    bars: Object.freeze([renamed(instance, own), renamed(instance, other)] as const),
    at: movePoint(instance.placement, fitting.at),
  });
}

export function copyDoor(door: Door, instance: Instance): Door {
  return Object.freeze({
    ...door,
    ref: Object.freeze(ref("door", door.ref.id + instance.suffix)),
    bars: Object.freeze(door.bars.map((bar) => renamed(instance, bar))),
    panels: Object.freeze(door.panels.map((panel) => renamed(instance, panel))),
    axis: moveAxis(instance.placement, door.axis),
    hinges: Object.freeze(door.hinges.map((hinge) => copyFitting(hinge, instance))),
    ...(door.latch === undefined ? {} : { latch: copyFitting(door.latch, instance) }),
  });
}

export function copyLoad(work: Work, load: Load, bars: BarsById, instance: Instance): Load {
  const { placement } = instance;
  const id = copyId(load.ref.id, instance);
  nameCopy(work, load.ref.id, id, instance);
  const first = load.on.map((on) => bars.get(on)).find((bar) => bar !== undefined);
  const moved = load.amount.kind === "moment" ? moveAxis : moveVector;
  return Object.freeze({
    ...load,
    ref: Object.freeze(ref("load", id)),
    on: Object.freeze(load.on.map((on) => renamed(instance, on))),
    direction: moved(placement, load.direction),
    ...(load.face === undefined ? {} : { face: moveFace(load.face, first, instance) }),
  });
}

export function copyGroup(group: Group, stands: ReadonlyMap<string, Stand>, instance: Instance): Group {
  const parts = group.parts.map((id) => {
    const stand = stands.get(id);
    return stand !== undefined && instance.ids.has(stand.bar) ? standCopyId(stand, instance) : renamed(instance, id);
  });
  return Object.freeze({
    ref: Object.freeze(ref("group", group.ref.id + instance.suffix)),
    parts: Object.freeze(parts),
    built: group.built,
  });
}

/** A zone's copy: the box round the moved one. */
export function copyZone(zone: Zone, instance: Instance): Zone {
  const { low, high } = zone;
  const size = moveSizes(instance.placement, minus(high, low));
  const middle = movePoint(instance.placement, [
    (low[0] + high[0]) / 2,
    (low[1] + high[1]) / 2,
    (low[2] + high[2]) / 2,
  ]);
  return Object.freeze({
    ...zone,
    ref: Object.freeze(ref("zone", zone.ref.id + instance.suffix)),
    low: triple(middle[0] - size[0] / 2, middle[1] - size[1] / 2, middle[2] - size[2] / 2),
    high: triple(middle[0] + size[0] / 2, middle[1] + size[1] / 2, middle[2] + size[2] / 2),
  });
}

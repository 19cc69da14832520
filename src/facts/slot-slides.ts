import { dot, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { endRef, type Ref } from "../model/ref.ts";
import type { Body } from "./bodies.ts";
import { alongToCut } from "./landing.ts";
import type { Obstacle } from "./obstacles.ts";
import type { PlacedConnector, ScrewedPart } from "./placed.ts";

/** Something that can be moved along a slot with all that is fastened by it. */
export interface Slide {
  /** The fastening, or the bar whose ends it is fastened by. */
  readonly moves: Ref<"joint"> | Ref<"bar">;
  /** Along the bar whose slot it moves in, towards its to end. */
  readonly way: Vec3;
  readonly along: string;
  /** How far it can go either way with its nuts well on the bar, m: from at most 0, to at least 0. */
  readonly from: number;
  readonly to: number;
  /** Connectors that move, and the bar that does. */
  readonly connectors: readonly PlacedConnector[];
  readonly bar: string | undefined;
}

/** Bars run the same way within this cosine: 1°; and square to each other within this: 1° as well. */
const SAME_WAY = Math.cos(Math.PI / 180);
const SQUARE = Math.sin(Math.PI / 180);
/** A nut keeps so many slot openings from the cut end of its bar. */
export const OFF_THE_END = 1.5;

/** How far the nuts in the bars that stay can go along a way before they come near an end, m. */
function roomOnBars(
  connectors: readonly PlacedConnector[],
  stays: ReadonlySet<string>,
  way: Vec3,
  all: ReadonlyMap<string, Body>,
): readonly [number, number] {
  let [from, to] = [-Infinity, Infinity];
  for (const { screws } of connectors) {
    for (const { into } of screws) {
      if (into.kind !== "nut" || !stays.has(into.landing.bar)) continue;
      const { point, slot, bar } = into.landing;
      const body = all.get(bar);
      if (!body) continue;
      const keep = OFF_THE_END * (slot?.opening ?? 0);
      const [back, on] = [alongToCut(body, "from", point) - keep, alongToCut(body, "to", point) - keep];
      const forward = dot(body.axes.x, way) > 0;
      from = Math.max(from, Math.min(0, forward ? -back : -on));
      to = Math.min(to, Math.max(0, forward ? on : back));
    }
  }
  return [from, to];
}

function ofFastening(connector: PlacedConnector, all: ReadonlyMap<string, Body>): Slide | undefined {
  const held = connector.holds.flatMap(({ bar }) => all.get(bar) ?? []);
  const [first] = held;
  if (!first) return undefined;
  const way = first.axes.x;
  if (held.some((body) => Math.abs(dot(body.axes.x, way)) < SAME_WAY)) return undefined;
  const stays = new Set(held.map((body) => body.bar.ref.id));
  const [from, to] = roomOnBars([connector], stays, way, all);
  return {
    moves: connector.joint,
    way,
    along: first.bar.ref.id,
    from,
    to,
    connectors: [connector],
    bar: undefined,
  };
}

/** A bar and the connectors of its ends, where all of them are fastened to bars that run one way and nothing else is fastened to it. */
function ofBar(
  bar: string,
  frame: Frame,
  placed: readonly PlacedConnector[],
  all: ReadonlyMap<string, Body>,
): Slide | undefined {
  const own = all.get(bar);
  const joints = new Set(frame.joints.filter((joint) => joint.bar === bar).map((joint) => joint.ref.id));
  const holding = placed.filter((connector) => connector.holds.some((hold) => hold.bar === bar));
  if (!own || holding.length === 0 || holding.some(({ joint }) => !joints.has(joint.id))) return undefined;
  const others = new Set(holding.flatMap(({ holds }) => holds.map((hold) => hold.bar)));
  others.delete(bar);
  const onto = [...others].flatMap((id) => all.get(id) ?? []);
  const way = onto[0]?.axes.x;
  const along = onto[0]?.bar.ref.id;
  if (!way || along === undefined || Math.abs(dot(own.axes.x, way)) > SQUARE) return undefined;
  if (onto.some((body) => Math.abs(dot(body.axes.x, way)) < SAME_WAY)) return undefined;
  const [from, to] = roomOnBars(holding, others, way, all);
  return { moves: { kind: "bar", id: bar }, way, along, from, to, connectors: holding, bar };
}

/** What has to be moved, and how it can be, to move a connector along a slot; undefined where it cannot go anywhere. */
export function slideOf(
  connector: ScrewedPart,
  frame: Frame,
  placed: readonly PlacedConnector[],
  all: ReadonlyMap<string, Body>,
): Slide | undefined {
  const joint = frame.joints.find(({ ref }) => ref.id === connector.joint.id);
  if (joint) return ofBar(joint.bar, frame, placed, all);
  const fastened = placed.find(({ ref }) => ref.id === connector.ref.id);
  return fastened && ofFastening(fastened, all);
}

/** Whether an obstacle moves with a slide. */
export function movesWith({ connectors, bar }: Slide, { part }: Obstacle): boolean {
  return part.id === bar || connectors.some(({ ref }) => ref.id === part.id);
}

/** The end towards which a move goes. */
export const towards = ({ along }: Slide, move: number): Ref<"end"> => endRef(along, move > 0 ? "to" : "from");

import { type Bounds3, boundsOf, boundsOverlap } from "../geometry/bounds.ts";
import { prismBounds, shifted } from "../geometry/prism.ts";
import { prismPenetration } from "../geometry/prism-penetration.ts";
import { add, scale, type Vec3 } from "../geometry/vector.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { type HandWidths, handFits } from "./hand-room.ts";
import type { Obstacle } from "./obstacles.ts";
import type { ScrewedPart } from "./placed.ts";
import { placements } from "./placements.ts";
import { movesWith, type Slide, slideOf } from "./slot-slides.ts";
import { type ToolRoom, toolRoom } from "./tool-room.ts";
import { serves, tryWay } from "./tool-trial.ts";
import { reachBounds } from "./tool-ways.ts";

/** A move along a slot that lets a tool and the hand on it do. */
export interface Shift {
  readonly slide: Slide;
  /** Along the slide's way, m; whole millimetres. */
  readonly move: number;
}

/** Moves are looked for this far either way, m, five millimetres at a time, and in the first five that do to the millimetre. */
const FURTHEST = 0.15;
const FINE = 0.001;
const STEP = 5;
const ROUNDING = 1e-6;
/** What is moved may run this much deeper into something than it does already, m. */
const DEEPER = 1e-4;
/** Connectors of one frame that a move is looked for: where more are wrong, the drawing is. */
const SEARCHES = 6;

function movedThing(thing: Obstacle, by: Vec3): Obstacle {
  const prism = shifted(thing.prism, by);
  const { round } = thing;
  return {
    ...thing,
    prism,
    bounds: prismBounds(prism),
    ...(round ? { round: { ...round, from: add(round.from, by), to: add(round.to, by) } } : {}),
  };
}

/** A box that has been wherever it may be moved. */
function swept({ min, max }: Bounds3, { way, from, to }: Slide): Bounds3 {
  const moves = [Math.max(from, -FURTHEST), Math.min(to, FURTHEST)].map((move) => scale(way, move));
  return boundsOf(moves.flatMap((by) => [add(min, by), add(max, by)]));
}

/** A screw of what is moved: what moves with it, and what stays wherever it goes. */
interface Mover {
  readonly room: ToolRoom;
  readonly own: readonly Obstacle[];
  readonly still: readonly Obstacle[];
}

function moverOf(room: ToolRoom, slide: Slide): Mover {
  const things = room.around(swept(reachBounds(room), slide));
  const own = things.filter((thing) => movesWith(slide, thing));
  return { room, own, still: things.filter((thing) => !movesWith(slide, thing)) };
}

/** Whether a tool and the hand on it do at a screw that was moved. */
function does({ room, own, still }: Mover, by: Vec3, asked: HandWidths): boolean {
  const socket = { ...room.socket, mouth: add(room.socket.mouth, by) };
  const bounds = reachBounds({ socket, ways: room.ways });
  const near = [...own.map((thing) => movedThing(thing, by)), ...still].filter((thing) =>
    boundsOverlap(thing.bounds, bounds),
  );
  return room.ways.some((way) => {
    const trial = tryWay(way, socket, near);
    return serves(trial) && handFits(trial, socket, near, asked);
  });
}

/** Whether what is moved runs no deeper into anything than it does where it is. */
function runsFree(movers: readonly Mover[], by: Vec3): boolean {
  const depth = (a: Obstacle, b: Obstacle): number => Math.max(0, prismPenetration(a.prism, b.prism).depth);
  return movers.every(({ own, still }) =>
    own.every((thing) => {
      const moved = movedThing(thing, by);
      return still.every((other) => depth(moved, other) <= depth(thing, other) + DEEPER);
    }),
  );
}

/** The least move, in whole millimetres, after which every screw does; undefined where none within reach helps. */
function leastMove(slide: Slide, movers: readonly Mover[], asked: HandWidths): number | undefined {
  const frees = (steps: number): boolean => {
    const by = scale(slide.way, steps * FINE);
    return movers.every((mover) => does(mover, by, asked)) && runsFree(movers, by);
  };
  const room = (free: number): number => Math.floor(Math.min(free, FURTHEST) / FINE + ROUNDING);
  const ways = [
    { sign: 1, most: room(slide.to) },
    { sign: -1, most: room(-slide.from) },
  ];
  for (let before = 0; ways.some(({ most }) => most > before); before += STEP) {
    for (const { sign, most } of ways) {
      const far = Math.min(before + STEP, most);
      if (far <= before || !frees(sign * far)) continue;
      let least = before + 1;
      while (least < far && !frees(sign * least)) least += 1;
      return sign * least * FINE;
    }
  }
  return undefined;
}

/** Finds the least move of a connector along its slot that frees its screws for tool and hand; looked for once a connector, and only when asked. */
export interface ToolShifts {
  shiftOf(connector: ScrewedPart, asked: HandWidths): Shift | undefined;
}

/**
 * Moves that free screws. A connector of a fastening moves along its bars where they all run one way; one of a bar's end takes the bar
 * and its other end along. All screws of the connector must then be reached, and those that move with it and were reached before.
 */
export const toolShifts = defineFact<
  ToolShifts,
  { toolRoom: typeof toolRoom; placements: typeof placements; bodies: typeof bodies }
>({
  id: "tool-shifts",
  needs: { toolRoom, placements, bodies },
  compute({ toolRoom: rooms, placements: { connectors }, bodies: all }, frame) {
    const found = new Map<string, Shift | undefined>();
    const search = (connector: ScrewedPart, asked: HandWidths): Shift | undefined => {
      const slide = slideOf(connector, frame, connectors, all);
      if (!slide) return undefined;
      const moving = new Set(slide.connectors.map(({ ref }) => ref.id));
      const movers = rooms
        .filter(
          (room) =>
            room.best && moving.has(room.connector.ref.id) && (room.connector === connector || serves(room.best)),
        )
        .map((room) => moverOf(room, slide));
      const move = leastMove(slide, movers, asked);
      return move === undefined ? undefined : { slide, move };
    };
    return {
      shiftOf(connector, asked) {
        const key = `${connector.ref.id} ${asked.fingers} ${asked.fist}`;
        if (!found.has(key) && found.size < SEARCHES) found.set(key, search(connector, asked));
        return found.get(key);
      },
    };
  },
});

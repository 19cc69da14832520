import { type Bounds3, boundsOverlap } from "../geometry/bounds.ts";
import { overlappingPairs } from "../geometry/sweep-and-prune.ts";
import type { Frame } from "../model/frame.ts";
import { type Body, bodies } from "./bodies.ts";
import { buildOrder } from "./build-order.ts";
import { defineFact } from "./fact.ts";
import { type Obstacle, obstacles } from "./obstacles.ts";
import type { PlacedScrew, ScrewedPart } from "./placed.ts";
import { screwedParts } from "./screwed-parts.ts";
import { type Socket, socketOf } from "./sockets.ts";
import { type Standing, standingOf } from "./tool-standing.ts";
import type { Task } from "./tool-task.ts";
import { bestTrial, serves, type Trial } from "./tool-trial.ts";
import { inTurn } from "./tool-turns.ts";
import { ballWays, reachBounds, type Way, waysFor } from "./tool-ways.ts";

/** What room a screw has for tools when it is tightened. */
export interface ToolRoom {
  readonly connector: ScrewedPart;
  readonly screw: PlacedScrew;
  readonly socket: Socket;
  /** The first way of the kit that serves, or else the one that comes nearest; undefined where no tool of the kit fits. */
  readonly best: Trial | undefined;
  /** All ways of the kit that fit. */
  readonly ways: readonly Way[];
  /** Ball ends of the kit, which also go in tilted. */
  readonly balls: readonly Way[];
  /** What is there when it is tightened, and what comes later, within reach of the tools. */
  readonly near: readonly Obstacle[];
  readonly later: readonly Obstacle[];
  /** What stands within a box when it is tightened. */
  readonly around: (box: Bounds3) => readonly Obstacle[];
  /** The same at the moment its connector is put on, before others of that step: it may be tightened then as well. */
  readonly early: () => ToolRoom;
}

/** What of the frame stands in a box, seen from a task. */
type Around = (box: Bounds3, goesFirst: boolean) => readonly Obstacle[];

function roomOf(task: Task, goesFirst: boolean, look: Around, early: () => ToolRoom): ToolRoom {
  const { connector, socket, ways, balls, around } = task;
  const near = goesFirst ? around.there : [...around.there, ...around.beside];
  const later = goesFirst ? [...around.beside, ...around.later] : around.later;
  return {
    connector,
    screw: socket.screw,
    socket,
    best: bestTrial(socket, ways, near),
    ways,
    balls,
    near,
    later,
    around: (box) => look(box, goesFirst),
    early,
  };
}

function earlyRoomOf(task: Task, look: Around): ToolRoom {
  const room = roomOf(task, true, look, () => room);
  return room;
}

/** Every screw with the tools that fit it and all that is within their reach. */
function reachable(
  connectors: readonly ScrewedPart[],
  things: readonly Obstacle[],
  all: ReadonlyMap<string, Body>,
  frame: Frame,
) {
  const found: {
    connector: ScrewedPart;
    socket: Socket;
    ways: readonly Way[];
    balls: readonly Way[];
    within: Obstacle[];
  }[] = [];
  for (const connector of connectors) {
    for (const screw of connector.screws) {
      const socket = socketOf(connector, screw, all);
      if (!socket) continue;
      const ways = waysFor(frame.stock.tools, socket, connector.choice?.torque ?? 0);
      found.push({ connector, socket, ways, balls: ballWays(frame.stock.tools, socket), within: [] });
    }
  }
  const bounds = [...things.map((thing) => thing.bounds), ...found.map(reachBounds)];
  for (const [i, j] of overlappingPairs(bounds)) {
    const [thing, one] = [things[i], found[j - things.length]];
    if (thing && one && thing.of.id !== one.socket.screw.ref.id) one.within.push(thing);
  }
  return found;
}

/**
 * Room for tools at every screw of the connectors that can be placed, among the parts that stand at the step it is tightened; where
 * nothing serves then, at the step its connector is put on, when it may be tightened as well.
 */
export const toolRoom = defineFact<
  readonly ToolRoom[],
  {
    bodies: typeof bodies;
    parts: typeof screwedParts;
    obstacles: typeof obstacles;
    order: typeof buildOrder;
  }
>({
  id: "tool-room",
  needs: { bodies, parts: screwedParts, obstacles, order: buildOrder },
  compute({ bodies: all, parts, obstacles: things, order }, frame) {
    const standing = standingOf(order);
    const found = reachable(parts.all, things, all, frame);
    const taskAt = (
      { connector, socket, ways, balls, within }: (typeof found)[number],
      step: number | undefined,
    ): Task => {
      const around: Record<Standing, Obstacle[]> = { there: [], beside: [], later: [] };
      for (const thing of within) around[standing({ connector, step }, thing)].push(thing);
      return { connector, socket, ways, balls, around };
    };
    const looksFrom =
      ({ connector, socket }: (typeof found)[number], step: number | undefined): Around =>
      (box, goesFirst) =>
        things.filter((thing) => {
          if (thing.of.id === socket.screw.ref.id || !boundsOverlap(thing.bounds, box)) return false;
          const stands = standing({ connector, step }, thing);
          return stands === "there" || (stands === "beside" && !goesFirst);
        });
    const steps = found.map((one) => order.tightenedAt(one.socket.screw.ref.id));
    const tasks = found.map((one, i) => taskAt(one, steps[i]));
    const first = inTurn(tasks);
    return found.map((one, i) => {
      const task = tasks[i] ?? taskAt(one, undefined);
      const placedAt = order.placedAt(one.connector.ref.id);
      const atPlacing = (): ToolRoom => earlyRoomOf(taskAt(one, placedAt), looksFrom(one, placedAt));
      const room = roomOf(task, first.has(task), looksFrom(one, steps[i]), atPlacing);
      if (!room.best || serves(room.best)) return room;
      const early = atPlacing();
      return early.best && serves(early.best) ? early : room;
    });
  },
});

/** Whether a tool still gets to the screw once everything is in place. */
export function servesAtEnd({ socket, ways, near, later }: ToolRoom): boolean {
  const trial = bestTrial(socket, ways, [...near, ...later]);
  return trial !== undefined && serves(trial);
}

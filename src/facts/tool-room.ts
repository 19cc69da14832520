import type { Bounds3 } from "../geometry/bounds.ts";
import { overlappingPairs } from "../geometry/sweep-and-prune.ts";
import { along } from "../geometry/vector.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { type Obstacle, obstacles } from "./obstacles.ts";
import type { PlacedConnector, PlacedScrew } from "./placed.ts";
import { placements } from "./placements.ts";
import { type Socket, socketOf } from "./sockets.ts";
import { LOOK, serves, type Trial, tryWay } from "./tool-trial.ts";
import { type Way, waysFor } from "./tool-ways.ts";

/** What room a screw has for tools. */
export interface ToolRoom {
  readonly screw: PlacedScrew;
  readonly socket: Socket;
  /** The first way of the kit that serves, or else the one that comes nearest; undefined where no tool of the kit fits. */
  readonly best: Trial | undefined;
  /** All ways of the kit that fit, and what they may meet. */
  readonly ways: readonly Way[];
  readonly near: readonly Obstacle[];
}

/** A screw to be tightened: its connector, socket and the tools that fit. */
interface Task {
  readonly connector: PlacedConnector;
  readonly socket: Socket;
  readonly ways: readonly Way[];
}

/** The box round everything a tool may take up at a socket: its length along the axis, its reach to all sides. */
function reachBounds({ socket, ways }: Task): Bounds3 {
  let [length, side] = [0, 0];
  for (const way of ways) {
    for (const rung of way.stem) {
      length = Math.max(length, rung.to);
      side = Math.max(side, rung.radius);
    }
    side = Math.max(side, Math.hypot(way.arm.reach, way.arm.halfWidth));
  }
  const { out, mouth } = socket;
  const ends = [along(mouth, out, -socket.depth), along(mouth, out, length + LOOK)] as const;
  const extent = (i: 0 | 1 | 2, sign: 1 | -1): number =>
    sign * Math.max(sign * ends[0][i], sign * ends[1][i]) + sign * side * Math.sqrt(Math.max(0, 1 - out[i] ** 2));
  return {
    min: [extent(0, -1), extent(1, -1), extent(2, -1)],
    max: [extent(0, 1), extent(1, 1), extent(2, 1)],
  };
}

/** Whether an obstacle is there whenever the screw is tightened: the bars it joins and what else sits in the joint. */
function alwaysThere({ connector }: Task, { of, joint }: Obstacle): boolean {
  if (of.kind === "bar") return connector.holds.some((hold) => hold.bar === of.id);
  return joint?.id === connector.joint.id;
}

/** How near a trial comes to serving: the share of the swing, and where there is none, of the length to put the tool in. */
const nearness = ({ swing, way, straight, asks }: Trial): number =>
  swing > 0 ? 1 + swing / way.tool.swing : Math.min(1, straight / asks);

/** The first way that serves, or the one that comes nearest. */
function bestTrial(socket: Socket, ways: readonly Way[], near: readonly Obstacle[]): Trial | undefined {
  let best: Trial | undefined;
  for (const way of ways) {
    const trial = tryWay(way, socket, near);
    if (serves(trial)) return trial;
    if (!best || nearness(trial) > nearness(best)) best = trial;
  }
  return best;
}

/** Room for tools at every screw of the connectors that can be placed. */
export const toolRoom = defineFact<
  readonly ToolRoom[],
  { bodies: typeof bodies; placements: typeof placements; obstacles: typeof obstacles }
>({
  id: "tool-room",
  needs: { bodies, placements, obstacles },
  compute({ bodies: all, placements: placed, obstacles: things }, frame) {
    const tasks: Task[] = [];
    for (const connector of placed.connectors) {
      for (const screw of connector.screws) {
        const socket = socketOf(connector, screw, all);
        if (!socket) continue;
        const ways = waysFor(frame.stock.tools, socket, connector.choice?.torque ?? 0);
        tasks.push({ connector, socket, ways });
      }
    }
    const near = tasks.map((): Obstacle[] => []);
    const bounds = [...things.map((thing) => thing.bounds), ...tasks.map(reachBounds)];
    for (const [i, j] of overlappingPairs(bounds)) {
      const [thing, task] = [things[i], tasks[j - things.length]];
      if (!thing || !task || thing.of.id === task.socket.screw.ref.id) continue;
      if (alwaysThere(task, thing)) near[j - things.length]?.push(thing);
    }
    return tasks.map(({ socket, ways }, i) => {
      const around = near[i] ?? [];
      return { screw: socket.screw, socket, best: bestTrial(socket, ways, around), ways, near: around };
    });
  },
});

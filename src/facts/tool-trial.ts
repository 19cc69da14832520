import { type Arc, arcSize, arcsOverlap, FULL_TURN, gapsBetween, wrap } from "../geometry/arc.ts";
import { discArc } from "../geometry/disc-arc.ts";
import { type AxisPose, poseAxes } from "../geometry/seen-along.ts";
import { type Stem, stemMeets } from "../geometry/stem-room.ts";
import { type Arm, blockedArcs, widestArc } from "../geometry/swept-sector.ts";
import { along, cross, dot, length, subtract } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import type { Obstacle } from "./obstacles.ts";
import { rodGap } from "./rods.ts";
import type { Socket } from "./sockets.ts";
import { LOOK, type Way } from "./tool-ways.ts";

/** What a part takes of the turn of a handle. */
export interface Blocked {
  readonly by: Ref;
  readonly arcs: readonly Arc[];
}

/** How one tool, held one way, gets on at one screw. */
export interface Trial {
  readonly way: Way;
  /** Free length along the axis over the mouth, m; Infinity where nothing comes near the tool's way. */
  readonly straight: number;
  /** Length along the axis that the tool asks for while it is put in, m. */
  readonly asks: number;
  /** What ends the free length. */
  readonly stopper: Ref | undefined;
  /** Angles at which the handle is free at work and can be put in or lifted, in order round the turn. */
  readonly free: readonly Arc[];
  /** Angles at which it can be put in. */
  readonly doors: readonly Arc[];
  /** The widest of them and its size, rad. */
  readonly arc: Arc | undefined;
  readonly swing: number;
  readonly blocked: readonly Blocked[];
}

/** Sine under which a head stands along the axis of the tool. */
const PARALLEL = 1e-6;
/** Sinking in less than this is touching, m. */
const TOUCHING = 1e-9;

export const poseOf = (socket: Socket): AxisPose => ({ apex: socket.mouth, axis: socket.out, zero: socket.zero });

/** Where an obstacle enters the room of a round part on the axis, m; Infinity where it stays out. */
function meets(pose: AxisPose, stem: Stem, { prism, round }: Obstacle): number {
  if (round) {
    const line = { from: along(pose.apex, pose.axis, stem.from), to: along(pose.apex, pose.axis, stem.to) };
    const head = { line: { from: round.from, to: round.to }, radius: round.radius };
    if (rodGap({ line, radius: stem.radius }, head) > -TOUCHING) return Infinity;
  }
  return stemMeets(pose, stem, prism);
}

/** The angles at which an arm cuts into an obstacle. */
function armArcs(pose: AxisPose, arm: Arm, { prism, round }: Obstacle): readonly Arc[] {
  if (!round) return blockedArcs(pose, arm, prism);
  const axis = subtract(round.to, round.from);
  if (length(cross(axis, pose.axis)) > PARALLEL * length(axis)) return blockedArcs(pose, arm, prism);
  const { u, v, w } = poseAxes(pose);
  const d = subtract(round.from, pose.apex);
  const heights = [dot(d, w), dot(subtract(round.to, pose.apex), w)];
  if (Math.min(...heights) >= arm.zMax - TOUCHING || Math.max(...heights) <= arm.zMin + TOUCHING) return [];
  const [x, y] = [dot(d, u), dot(d, v)];
  const arc = discArc(arm.radius, arm.halfWidth, {
    distance: Math.hypot(x, y),
    bearing: Math.atan2(y, x),
    radius: round.radius,
  });
  return arc ? [arc] : [];
}

/** The same arcs seen from the other half of a cross handle. */
export const opposite = (arcs: readonly Arc[]): readonly Arc[] =>
  arcs.map((arc) => {
    const from = wrap(arc.from + FULL_TURN / 2);
    return { from, to: from + arcSize(arc) };
  });

function blockedBy(pose: AxisPose, way: Way, zMin: number, zMax: number, near: readonly Obstacle[]): Blocked[] {
  const arm: Arm = { radius: way.arm.reach, halfWidth: way.arm.halfWidth, zMin, zMax };
  const list: Blocked[] = [];
  for (const obstacle of near) {
    const arcs = armArcs(pose, arm, obstacle);
    if (arcs.length > 0) list.push({ by: obstacle.of, arcs: way.bothWays ? [...arcs, ...opposite(arcs)] : arcs });
  }
  return list;
}

const left = (blocked: readonly Blocked[]): readonly Arc[] => gapsBetween(blocked.flatMap(({ arcs }) => arcs));

/**
 * Tries one way at one socket. The tool is put in with its tip at the mouth, goes down by the socket's depth, turns, and is lifted by a
 * bite before it goes back; over all of that nothing may be where it is. Heights are exact, angles as exact as `blockedArcs`.
 */
export function tryWay(way: Way, socket: Socket, near: readonly Obstacle[]): Trial {
  const pose = poseOf(socket);
  const { depth, bite, outside } = socket;
  const top = Math.max(...way.stem.map((rung) => rung.to));
  let [straight, stopper]: [number, Ref | undefined] = [Infinity, undefined];
  for (const rung of way.stem) {
    // What lies below the mouth is inside the hole the tool goes through.
    const from = outside ? rung.from - depth : Math.max(0, rung.from - depth);
    const stem: Stem = { radius: rung.radius, from, to: rung.to === top ? top + LOOK : rung.to };
    for (const obstacle of near) {
      const met = meets(pose, stem, obstacle);
      if (met >= straight) continue;
      [straight, stopper] = [met, obstacle.of];
    }
  }
  const asks = { way, straight, asks: top, stopper };
  if (straight < top - TOUCHING) return { ...asks, free: [], doors: [], arc: undefined, swing: 0, blocked: [] };
  const lowest = way.arm.from - depth;
  const work = blockedBy(pose, way, lowest, way.arm.to - depth + (way.lifts ? bite : 0), near);
  const entry = depth > bite || !way.lifts ? blockedBy(pose, way, lowest, way.arm.to, near) : work;
  const doors = left(entry);
  const free = left(work).filter((arc) => doors.some((door) => arcsOverlap(door, arc)));
  const arc = widestArc(free);
  const blocked = free.length > 0 ? work : entry;
  return { ...asks, free, doors, arc, swing: arc ? arcSize(arc) : 0, blocked };
}

/** Whether the tool can be put in straight at all. */
export const goesIn = (trial: Trial): boolean => trial.straight >= trial.asks - TOUCHING;

/** Whether a way does: the tool goes in straight and its handle swings from bite to bite. */
export const serves = (trial: Trial): boolean => trial.swing >= trial.way.tool.swing - 1e-9;

/** The part that takes most of the turn. */
export function mostInTheWay(trial: Trial): Ref | undefined {
  if (!goesIn(trial)) return trial.stopper;
  const share = new Map<string, { of: Ref; size: number }>();
  for (const { by, arcs } of trial.blocked) {
    const size = arcs.reduce((sum, arc) => sum + arcSize(arc), 0) + (share.get(by.id)?.size ?? 0);
    share.set(by.id, { of: by, size });
  }
  let most: { of: Ref; size: number } | undefined;
  for (const one of share.values()) if (!most || one.size > most.size) most = one;
  return most?.of;
}

/** How near a trial comes to serving: the share of the swing, and where there is none, of the length to put the tool in. */
const nearness = ({ swing, way, straight, asks }: Trial): number =>
  swing > 0 ? 1 + swing / way.tool.swing : Math.min(1, straight / asks);

/** The first way that serves, or the one that comes nearest; undefined where there is no way. */
export function bestTrial(socket: Socket, ways: readonly Way[], near: readonly Obstacle[]): Trial | undefined {
  let best: Trial | undefined;
  for (const way of ways) {
    const trial = tryWay(way, socket, near);
    if (serves(trial)) return trial;
    if (!best || nearness(trial) > nearness(best)) best = trial;
  }
  return best;
}

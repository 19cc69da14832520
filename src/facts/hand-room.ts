import { type Arc, arcSize, arcsOverlap, gapsBetween } from "../geometry/arc.ts";
import type { Ring } from "../geometry/polygon.ts";
import { type Arm, besideSweep, outlineArcs, outlineInReach, widestArc } from "../geometry/swept-sector.ts";
import type { Ref } from "../model/ref.ts";
import { type Grip, HANDS, WIDEST } from "./hands.ts";
import type { Obstacle } from "./obstacles.ts";
import type { Socket } from "./sockets.ts";
import type { ToolRoom } from "./tool-room.ts";
import { opposite, poseOf, serves, type Trial, tryWay } from "./tool-trial.ts";
import type { Way } from "./tool-ways.ts";

/** The room a hand has that swings a tool from bite to bite. */
export interface HandRoom {
  readonly trial: Trial;
  /** Width across the handle that is free all along the swing, m; looked for up to half as much again as asked. */
  readonly width: number;
  /** The hand as wide as that, and the middle of its swing, rad. */
  readonly hand: Arm;
  readonly angle: number;
  /** Where that is less than asked: the part without which the hand would swing furthest. */
  readonly by: Ref | undefined;
}

/** Free widths asked for by the fingers on a key and by a fist on a handle, m. */
export type HandWidths = Readonly<Record<Grip, number>>;

/** Room is looked for up to so many times what is asked. */
const SPARE = 1.5;
/** Room that is enough is found to this share of it, in halves. */
const ROUGH = 5;
/** Room that is too little is found in so many halvings: 60 mm come down to 1e-10 mm. */
const EXACT = 40;
const SAME_ANGLE = 1e-9;

interface Seen {
  readonly of: Ref;
  readonly ring: Ring;
}

/** The hand on a handle, wide as asked, in two heights over the mouth of the socket. */
type Block = (width: number) => Arm;

/** Heights the hand may take round a handle: out from it, in from it, or half and half. */
function blocksOf(way: Way, { depth, bite }: Socket): readonly [Block, Block, Block] {
  const { arm, grip, lifts, stem } = way;
  const { length, thickness } = HANDS[grip];
  const more = Math.max(0, thickness - (arm.to - arm.from));
  const inner = way.bothWays ? 0 : Math.max(arm.reach - length, Math.min(...stem.map(({ radius }) => radius)));
  const block = (under: number): Block => {
    const zMin = arm.from - depth - under * more;
    const zMax = arm.to - depth + (lifts ? bite : 0) + (1 - under) * more;
    return (width) => ({ inner, radius: arm.reach, halfWidth: width / 2, zMin, zMax });
  };
  return [block(0), block(1), block(0.5)];
}

const arcsOf = (way: Way, hand: Arm, ring: Ring): readonly Arc[] => {
  const arcs = outlineArcs(hand, ring);
  return way.bothWays ? [...arcs, ...opposite(arcs)] : arcs;
};

/** The widest arc over which tool and hand swing together. */
function arcOf({ way, blocked, doors }: Trial, hand: Arm, seen: readonly Seen[]): Arc | undefined {
  const arcs = [...blocked.flatMap((one) => one.arcs), ...seen.flatMap(({ ring }) => arcsOf(way, hand, ring))];
  return widestArc(gapsBetween(arcs).filter((arc) => doors.some((door) => arcsOverlap(door, arc))));
}

const middleOf = (arc: Arc | undefined): number => (arc ? (arc.from + arc.to) / 2 : 0);

/** Whether nothing comes near a hand that swings from bite to bite in the middle of the tool's widest arc: soon seen, and the rule. */
function clearAhead({ way, arc, doors }: Trial, socket: Socket, hand: Arm, near: readonly Obstacle[]): boolean {
  if (!arc || way.bothWays) return false;
  const middle = (arc.from + arc.to) / 2;
  const swing: Arc = { from: middle - way.tool.swing / 2, to: middle + way.tool.swing / 2 };
  if (!doors.some((door) => arcsOverlap(door, swing))) return false;
  return near.every(({ prism }) => besideSweep(poseOf(socket), hand, swing, prism));
}

/** The last width that passes between one that does and one that does not. */
function halved(passes: (width: number) => boolean, from: number, to: number, times: number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < times; i += 1) {
    const middle = (low + high) / 2;
    if (passes(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** The part without which the hand would swing furthest. */
function mostInTheWay(trial: Trial, hand: Arm, seen: readonly Seen[]): Ref | undefined {
  let most: { of: Ref; swing: number } | undefined;
  for (const { of } of seen) {
    const without = seen.filter((one) => one.of.id !== of.id);
    const arc = arcOf(trial, hand, without);
    const swing = arc ? arcSize(arc) : 0;
    if (!most || swing > most.swing) most = { of, swing };
  }
  return most?.of;
}

/** What may meet a hand, seen along the screw. */
const seenBy = (hand: Arm, socket: Socket, near: readonly Obstacle[]): readonly Seen[] =>
  near.flatMap(({ of, prism }): Seen[] => {
    const ring = outlineInReach(poseOf(socket), hand, prism);
    return ring ? [{ of, ring }] : [];
  });

/** Whether tool and hand together swing from bite to bite. */
function swings(trial: Trial, hand: Arm, seen: readonly Seen[]): boolean {
  const arc = arcOf(trial, hand, seen);
  return arc !== undefined && arcSize(arc) >= trial.way.tool.swing - SAME_ANGLE;
}

/** The room a hand has in one place on the handle: exact where it is less than asked, else rounded down. */
function roomIn(block: Block, trial: Trial, socket: Socket, near: readonly Obstacle[], asked: number): HandRoom {
  const most = Math.min(asked * SPARE, WIDEST);
  const widest = block(most);
  if (clearAhead(trial, socket, widest, near))
    return { trial, width: most, hand: widest, angle: middleOf(trial.arc), by: undefined };
  const seen = seenBy(widest, socket, near);
  const found = (width: number, by?: Ref): HandRoom => {
    const hand = block(width);
    return { trial, width, hand, angle: middleOf(arcOf(trial, hand, seen) ?? trial.arc), by };
  };
  const passes = (width: number): boolean => swings(trial, block(width), seen);
  if (passes(most)) return found(most);
  if (passes(asked)) return found(halved(passes, asked, most, ROUGH));
  const width = passes(0) ? halved(passes, 0, asked, EXACT) : 0;
  return found(width, mostInTheWay(trial, block(asked), seen));
}

/** Whether a hand has as much room as asked on one tool that serves: sooner told than how much. */
export function handFits(trial: Trial, socket: Socket, near: readonly Obstacle[], asked: HandWidths): boolean {
  return blocksOf(trial.way, socket).some((block) => {
    const hand = block(asked[trial.way.grip]);
    return clearAhead(trial, socket, hand, near) || swings(trial, hand, seenBy(hand, socket, near));
  });
}

/** The room a hand has on one tool that serves, where it has most. */
export function handRoomOn(trial: Trial, socket: Socket, near: readonly Obstacle[], asked: number): HandRoom {
  const [first, ...others] = blocksOf(trial.way, socket);
  let best = roomIn(first, trial, socket, near, asked);
  for (const block of others) {
    if (best.width >= asked) break;
    const next = roomIn(block, trial, socket, near, asked);
    if (next.width > best.width) best = next;
  }
  return best;
}

/**
 * The room a hand has on the first tool that serves a screw and leaves it as much as asked, when it is tightened or when its connector
 * is put on; else on the one that comes nearest. Undefined where no tool serves.
 */
export function handRoomOf(room: ToolRoom, asked: HandWidths): HandRoom | undefined {
  const share = ({ trial, width }: HandRoom): number => width / asked[trial.way.grip];
  let best: HandRoom | undefined;
  for (const moment of [() => room, room.early]) {
    const { socket, ways, near, best: first } = moment();
    if (!first || !serves(first)) continue;
    for (const way of ways.slice(ways.indexOf(first.way))) {
      const trial = way === first.way ? first : tryWay(way, socket, near);
      if (!serves(trial)) continue;
      const found = handRoomOn(trial, socket, near, asked[way.grip]);
      if (!best || share(found) > share(best)) best = found;
      if (share(best) >= 1) return best;
    }
  }
  return best;
}

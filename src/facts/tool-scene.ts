import type { Arc } from "../geometry/arc.ts";
import { type AxisPose, outlineInBand, poseAxes, stretchAlong } from "../geometry/seen-along.ts";
import type { Arm } from "../geometry/swept-sector.ts";
import { cross, rotateAbout } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import type { Pair } from "../model/stock/stock.ts";
import { handRoomOn } from "./hand-room.ts";
import { WIDEST } from "./hands.ts";
import type { Obstacle } from "./obstacles.ts";
import type { ToolRoom } from "./tool-room.ts";
import { goesIn, serves, type Trial } from "./tool-trial.ts";

/** A part cut to what a picture shows of it, m; convex. */
export interface SeenPart {
  readonly of: Ref;
  readonly ring: readonly Pair[];
}

/** A tool on a screw, seen two ways. Lengths in m, angles in rad; heights over the mouth of the socket. */
export interface ToolScene {
  /** Seen along the screw, towards its head: what lies in the heights the handle takes, and what lies lower. */
  readonly turn: { readonly inTheWay: readonly SeenPart[]; readonly below: readonly SeenPart[] };
  /** Seen from the side, the handle pointing right: a slice as thick as the stem. */
  readonly side: readonly SeenPart[];
  readonly free: readonly Arc[];
  /** Where the handle is drawn: in the middle of the widest arc that is free for it and the hand. */
  readonly angle: number;
  /** The hand as wide as it has room; undefined where the tool does not turn. */
  readonly hand: Arm | undefined;
  readonly serves: boolean;
  readonly goesIn: boolean;
}

/** Pictures show this much round the tool, m. */
const ROUND = 0.02;

const middleOf = (arc: Arc | undefined): number => (arc ? (arc.from + arc.to) / 2 : 0);

function seen(things: readonly Obstacle[], pose: AxisPose, low: number, high: number): readonly SeenPart[] {
  const axes = poseAxes(pose);
  const parts: SeenPart[] = [];
  for (const { of, prism } of things) {
    const [from, to] = stretchAlong(prism, pose.apex, axes.w);
    if (from >= high || to <= low) continue;
    const ring = outlineInBand(pose, axes, low, high, prism);
    if (ring) parts.push({ of, ring });
  }
  return parts;
}

/** The picture of one trial at one screw, as numbers. */
export function toolScene({ socket, near }: ToolRoom, trial: Trial): ToolScene {
  const { mouth: apex, out, zero, depth, bite } = socket;
  const { arm, lifts, stem } = trial.way;
  const lowest = arm.from - depth;
  const highest = arm.to - depth + (lifts ? bite : 0);
  const axes = poseAxes({ apex, axis: out, zero });
  const hand = serves(trial) ? handRoomOn(trial, socket, near, WIDEST) : undefined;
  const angle = hand?.angle ?? middleOf(trial.arc);
  const handle = rotateAbout(axes.u, axes.w, angle);
  const half = Math.min(...stem.map((rung) => rung.radius));
  return {
    turn: {
      inTheWay: seen(near, { apex, axis: out, zero }, lowest, highest),
      below: seen(near, { apex, axis: out, zero }, -depth - ROUND, lowest),
    },
    // Along this axis the handle points right and the way out up.
    side: seen(near, { apex, axis: cross(handle, axes.w), zero: handle }, -half, half),
    free: trial.free,
    angle,
    hand: hand?.hand,
    serves: serves(trial),
    goesIn: goesIn(trial),
  };
}

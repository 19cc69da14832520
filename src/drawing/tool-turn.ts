import type { ToolRoom } from "../facts/tool-room.ts";
import { goesIn, type Trial } from "../facts/tool-trial.ts";
import type { Arc } from "../geometry/arc.ts";
import { poseAxes } from "../geometry/seen-along.ts";
import { along, type Vec3 } from "../geometry/vector.ts";

/** The turn of a tool's handle about its screw, as it lies in space: m and rad. */
export interface ToolTurn {
  readonly words: string;
  /** On the axis of the screw, at the height of the handle. */
  readonly centre: Vec3;
  /** Where angles are counted from, and a quarter turn on; unit vectors square to the axis. */
  readonly zero: Vec3;
  readonly quarter: Vec3;
  readonly reach: number;
  readonly free: readonly Arc[];
}

/** The turn of a tool that was tried on a screw: at work where it goes in, otherwise where it is put in. */
export function toolTurn({ socket }: ToolRoom, trial: Trial, words: string): ToolTurn {
  const { arm } = trial.way;
  const { u, v, w } = poseAxes({ apex: socket.mouth, axis: socket.out, zero: socket.zero });
  const height = (arm.from + arm.to) / 2 - (goesIn(trial) ? socket.depth : 0);
  return {
    words,
    centre: along(socket.mouth, w, height),
    zero: u,
    quarter: v,
    reach: Math.hypot(arm.reach, arm.halfWidth),
    free: trial.free,
  };
}

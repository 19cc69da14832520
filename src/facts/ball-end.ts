import type { Bounds3 } from "../geometry/bounds.ts";
import { cross, rotateAbout, type Vec3 } from "../geometry/vector.ts";
import type { Tool } from "../model/stock/stock.ts";
import type { ToolRoom } from "./tool-room.ts";
import { serves, tryWay } from "./tool-trial.ts";
import { LOOK } from "./tool-ways.ts";

/** A ball end that gets to a screw off its axis. */
export interface BallEnd {
  readonly tool: Tool;
  /** Off the axis of the screw, rad. */
  readonly tilt: number;
}

/** Directions a key is tilted in, and steps of its largest tilt. */
const TILTS = 5;
const DIRECTIONS = 12;

/** A box round all that a long arm reaches from the head. */
function boxRound([x, y, z]: Vec3, reach: number): Bounds3 {
  return { min: [x - reach, y - reach, z - reach], max: [x + reach, y + reach, z + reach] };
}

/**
 * A ball end of the kit that gets to a screw and turns there from bite to bite; undefined where none does. It goes in along its own axis,
 * tilted about the mouth of the socket: as far as it may in each direction, and where that does, in the first fifth of it that does.
 */
export function ballEndAt({ socket, balls, around }: ToolRoom): BallEnd | undefined {
  const { out, zero, mouth } = socket;
  for (const way of balls) {
    const { tool } = way;
    const near = around(boxRound(mouth, tool.longArm + tool.shortArm + LOOK));
    const does = (direction: number, tilt: number): boolean => {
      const hinge = rotateAbout(cross(out, zero), out, direction);
      const tilted = { ...socket, out: rotateAbout(out, hinge, tilt), zero: rotateAbout(zero, hinge, tilt) };
      return serves(tryWay(way, tilted, near));
    };
    for (let i = 0; i < DIRECTIONS; i += 1) {
      const direction = (2 * Math.PI * i) / DIRECTIONS;
      if (!does(direction, tool.tilt)) continue;
      for (let step = 1; step < TILTS; step += 1)
        if (does(direction, (tool.tilt * step) / TILTS)) return { tool, tilt: (tool.tilt * step) / TILTS };
      return { tool, tilt: tool.tilt };
    }
  }
  return undefined;
}

import type { Obstacle } from "./obstacles.ts";
import type { ScrewedPart } from "./placed.ts";
import type { Socket } from "./sockets.ts";
import type { Standing } from "./tool-standing.ts";
import type { Way } from "./tool-ways.ts";

/** A screw to be tightened: its connector, socket and the tools that fit, and what is within their reach. */
export interface Task {
  readonly connector: ScrewedPart;
  readonly socket: Socket;
  readonly ways: readonly Way[];
  /** Ball ends, which also go in tilted. */
  readonly balls: readonly Way[];
  /** There in any case; put in at the same step, so that this screw may go first; and put in later. */
  readonly around: Readonly<Record<Standing, readonly Obstacle[]>>;
}

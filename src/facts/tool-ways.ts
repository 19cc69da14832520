import type { Bounds3 } from "../geometry/bounds.ts";
import { along } from "../geometry/vector.ts";
import type { Tool } from "../model/stock/stock.ts";
import { type Grip, HANDS, WIDEST } from "./hands.ts";
import type { Socket } from "./sockets.ts";

/** A round part of a tool: heights over its tip, m. */
export interface Rung {
  readonly radius: number;
  readonly from: number;
  readonly to: number;
}

/** One way to hold a tool: what stands on the axis of the screw, and what swings about it. Heights over the tip, m. */
export interface Way {
  readonly tool: Tool;
  /** Which part goes into the socket, in words. */
  readonly by: "short arm" | "long arm" | "shaft" | "bit" | "jaw";
  readonly stem: readonly Rung[];
  /** Reach from the axis to the end of the arm, half its width, and where it lies, m. */
  readonly arm: { readonly reach: number; readonly halfWidth: number; readonly from: number; readonly to: number };
  /** A cross handle reaches as far the other way. */
  readonly bothWays: boolean;
  /** Taken out and put back between two bites; a ratchet stays in. */
  readonly lifts: boolean;
  /** What the hand does: fingers on a key, or a fist round a handle. */
  readonly grip: Grip;
}

/** Sizes across flats nearer than this are one, m. */
const SAME_SIZE = 1e-5;
/** Hexagon across corners over across flats. */
const CORNERS = 2 / Math.sqrt(3);
/** Thickness of the grip of a cross handle, m: common practice. */
const CROSS_GRIP = 0.016;
/** Head of a quarter inch ratchet: radius and height; half width of its handle; across corners of a quarter inch bit, m: common practice. */
const RATCHET = { radius: 0.013, height: 0.02, half: 0.007, bit: 0.00635 * CORNERS };
/** A wrench's head over the size across flats, and its thickness, m: common practice. */
const JAW = { width: 2.2, thickness: 0.008 };

function lShaped(tool: Tool, stem: number, handle: number, by: Way["by"]): Way {
  const half = (tool.key * CORNERS) / 2;
  return {
    tool,
    by,
    stem: [{ radius: half, from: 0, to: stem }],
    // Both arms are measured to the outside of the bend.
    arm: { reach: handle - tool.key / 2, halfWidth: half, from: stem - tool.key, to: stem },
    bothWays: false,
    lifts: true,
    grip: "fingers",
  };
}

/**
 * The ways a tool can be put straight on a screw: an angled key by either arm, arms to the outside of the bend as ISO 2936 measures
 * them. A ball end counts with its short arm, which is plain; its long arm only runs screws in.
 */
function waysOf(tool: Tool): readonly Way[] {
  const { key, longArm, shortArm } = tool;
  const half = (key * CORNERS) / 2;
  switch (tool.kind) {
    case "hex-key":
      return [lShaped(tool, shortArm, longArm, "short arm"), lShaped(tool, longArm, shortArm, "long arm")];
    case "ball-end-key":
      return [lShaped(tool, shortArm, longArm, "short arm")];
    case "t-handle":
      return [
        {
          tool,
          by: "shaft",
          stem: [{ radius: half, from: 0, to: longArm }],
          arm: { reach: shortArm / 2, halfWidth: CROSS_GRIP / 2, from: longArm - CROSS_GRIP, to: longArm },
          bothWays: true,
          lifts: true,
          grip: "fingers",
        },
      ];
    case "bit-ratchet":
      return [
        {
          tool,
          by: "bit",
          stem: [
            { radius: Math.max(half, RATCHET.bit / 2), from: 0, to: longArm },
            { radius: RATCHET.radius, from: longArm, to: longArm + RATCHET.height },
          ],
          arm: { reach: shortArm, halfWidth: RATCHET.half, from: longArm, to: longArm + RATCHET.height },
          bothWays: false,
          lifts: false,
          grip: "fist",
        },
      ];
    case "wrench":
      return [
        {
          tool,
          by: "jaw",
          stem: [{ radius: (key * JAW.width) / 2, from: 0, to: JAW.thickness }],
          arm: { reach: longArm, halfWidth: key / 2, from: 0, to: JAW.thickness },
          bothWays: false,
          lifts: true,
          grip: "fist",
        },
      ];
  }
}

/** The ball ends of a kit by their long arms, for a socket that lies open: a hole keeps them straight. */
export function ballWays(kit: ReadonlyMap<string, Tool>, { screw, outside, hole }: Socket): readonly Way[] {
  if (outside || hole < Infinity) return [];
  return [...kit.values()]
    .filter((tool) => tool.tilt > 0 && Math.abs(tool.key - screw.screw.key) <= SAME_SIZE)
    .map((tool) => lShaped(tool, tool.longArm, tool.shortArm, "long arm"));
}

/** How far past the end of a tool its way out is looked at, m. */
export const LOOK = 0.02;

/** Pictures show what lies this far under the socket, m. */
const UNDER = 0.02;

/** The box round everything the tools and the hand on them may take up at a socket: along the axis, and to all sides. */
export function reachBounds({ socket, ways }: { readonly socket: Socket; readonly ways: readonly Way[] }): Bounds3 {
  let [length, side] = [0, 0];
  for (const way of ways) {
    for (const rung of way.stem) {
      length = Math.max(length, rung.to);
      side = Math.max(side, rung.radius);
    }
    side = Math.max(side, Math.hypot(way.arm.reach, WIDEST / 2));
    length = Math.max(length, way.arm.from + HANDS[way.grip].thickness);
  }
  const { out, mouth } = socket;
  const ends = [along(mouth, out, -socket.depth - UNDER), along(mouth, out, length + LOOK)] as const;
  const extent = (i: 0 | 1 | 2, sign: 1 | -1): number =>
    sign * Math.max(sign * ends[0][i], sign * ends[1][i]) + sign * side * Math.sqrt(Math.max(0, 1 - out[i] ** 2));
  return {
    min: [extent(0, -1), extent(1, -1), extent(2, -1)],
    max: [extent(0, 1), extent(1, 1), extent(2, 1)],
  };
}

/** Whether a way reaches a socket that lies deep in a hole: what goes below the mouth is thinner than the hole, and the arm stays out. */
function reaches(way: Way, { depth, hole }: Socket): boolean {
  return way.arm.from >= depth && way.stem.every(({ radius, from }) => from >= depth || 2 * radius <= hole);
}

/** All ways to put the tools of a kit on a screw and give it a torque [N·m], in the order of the kit. */
export function waysFor(kit: ReadonlyMap<string, Tool>, socket: Socket, torque: number): readonly Way[] {
  const { screw } = socket.screw;
  const ways: Way[] = [];
  for (const tool of kit.values()) {
    if ((tool.kind === "wrench") !== socket.outside || Math.abs(tool.key - screw.key) > SAME_SIZE) continue;
    if (tool.torque < torque) continue;
    for (const way of waysOf(tool)) if (socket.outside || reaches(way, socket)) ways.push(way);
  }
  return ways;
}

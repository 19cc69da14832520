import type { FrameModel, LineLoad, LoadCase, Member, Six, Vec3 } from "../../../src/mechanics/model.ts";
import { axesAlong } from "../../mechanics/random-frame.ts";
import type { Analysis } from "../deck.ts";

/** A frame that both solvers are asked about. */
export interface CheckedFrame {
  readonly id: string;
  /** What it is and what it tries. */
  readonly title: string;
  readonly model: FrameModel;
  readonly load: LoadCase;
  readonly analysis: Analysis;
  /** Moments in its bars change its buckling factors, which ours leave out: plain-frame.test.ts parts the two. */
  readonly bends?: true;
}

/** An invented square 40 mm bar of aluminium, and one of 40 by 80 mm; N, N·m², kg/m. */
export const SQUARE = { EA: 5.6e7, EIy: 8e3, EIz: 8e3, GJ: 600, GAy: 0, GAz: 0, massPerLength: 2.16 };
export const TALL = { EA: 1e8, EIy: 5.2e4, EIz: 1.45e4, GJ: 1500, GAy: 0, GAz: 0, massPerLength: 3.9 };

/**
 * Held stiffly, N/m and N·m/rad, not rigidly: CalculiX prints no reaction of a node that only equations reach, but its
 * motion gives the force. Components held "fixed" stay still in a frame that lies in its plane.
 */
export const STIFF = 1e9;
export const STIFF_TURN = 1e7;
export const PINNED = [STIFF, STIFF, STIFF, "free", "free", "free"] as const;
export const CLAMPED = [STIFF, STIFF, STIFF, STIFF_TURN, STIFF_TURN, STIFF_TURN] as const;
/** Held in the plane x-z, free to turn about y. */
export const PINNED_IN_PLANE = [STIFF, "fixed", STIFF, "fixed", "free", "fixed"] as const;
export const IN_PLANE = ["free", "fixed", "free", "fixed", "free", "fixed"] as const;
export const GLOBAL = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] } as const;

export function bar(
  nodes: readonly Vec3[],
  from: number,
  to: number,
  section: Omit<Member, "from" | "to" | "axes"> = SQUARE,
  arms: Pick<Member, "fromOffset" | "toOffset"> = {},
): Member {
  const [a, b] = [nodes[from], nodes[to]];
  if (!a || !b) throw new Error("a bar lies between nodes that exist");
  return { from, to, axes: axesAlong(a, b, 0), ...section, ...arms };
}

/** N/m down on whole members. */
export function weighing(model: FrameModel, members: readonly number[], perLength: number): LineLoad[] {
  return members.map((member) => {
    const own = model.members[member];
    const [a, b] = [model.nodes[own?.from ?? -1], model.nodes[own?.to ?? -1]];
    if (!own || !a || !b) throw new Error("no such member");
    const [p, q] = [own.fromOffset ?? [0, 0, 0], own.toOffset ?? [0, 0, 0]];
    const end = Math.hypot(...([0, 1, 2] as const).map((i) => b[i] + q[i] - a[i] - p[i]));
    const down: Vec3 = [0, 0, -perLength];
    return { kind: "line", member, start: 0, end, force: [down, down] };
  });
}

/** A joint of a 40 mm bar: N/m and N·m/rad along and about global axes. */
export const JOINT: Six<number> = [5e7, 2e7, 2e7, 4e3, 8e3, 6e3];

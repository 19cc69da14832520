import type { Vec3 } from "../../geometry/vector.ts";
import { add, distance, length, scale } from "../../geometry/vector.ts";
import type { FrameParts } from "../assembly/frame.ts";
import { unloadedEnds } from "../statics/member-forces.ts";
import { ORIGIN } from "../triad.ts";
import type { Motion, Twist } from "./twist.ts";
import { MOTION_TOLERANCE, nameMotion, shiftAt } from "./twist.ts";

/** Nodes and members that move together as one rigid part. */
export interface MovingBody {
  readonly nodes: readonly number[];
  readonly members: readonly number[];
  readonly motion: Motion;
  /** The same motion with its rate, reference at the origin: parts of one mechanism move at these rates together. */
  readonly twist: Twist;
}

/** A motion of the frame that nothing resists. Independent mechanisms are listed apart; each may move several parts. */
export interface Mechanism {
  readonly bodies: readonly MovingBody[];
}

interface Mover {
  readonly kind: "node" | "member";
  readonly index: number;
  readonly at: Vec3;
  /** Reference at the centre of the frame. */
  readonly twist: Twist;
}

const vec = (a: Float64Array, at: number): Vec3 => [a[at] as number, a[at + 1] as number, a[at + 2] as number];

/** Local components of member m turned into global ones. */
function outOf(parts: FrameParts, m: number, local: Vec3): Vec3 {
  const axes = parts.model.members[m]?.axes;
  if (!axes) return ORIGIN;
  return add(add(scale(axes.x, local[0]), scale(axes.y, local[1])), scale(axes.z, local[2]));
}

function memberMover(parts: FrameParts, m: number, ends: Float64Array, centre: Vec3): Mover {
  const member = parts.model.members[m];
  const start = add(parts.model.nodes[member?.from ?? 0] ?? ORIGIN, member?.fromOffset ?? ORIGIN);
  const own = { turn: outOf(parts, m, vec(ends, 3)), shift: outOf(parts, m, vec(ends, 0)) };
  return { kind: "member", index: m, at: start, twist: { turn: own.turn, shift: shiftAt(own, start, centre) } };
}

function extent(parts: FrameParts): { readonly centre: Vec3; readonly size: number } {
  const lo = [Infinity, Infinity, Infinity];
  const hi = [-Infinity, -Infinity, -Infinity];
  for (const node of parts.model.nodes) {
    for (let i = 0; i < 3; i++) {
      lo[i] = Math.min(lo[i] as number, node[i] as number);
      hi[i] = Math.max(hi[i] as number, node[i] as number);
    }
  }
  const centre = lo.map((a, i) => (a + (hi[i] as number)) / 2);
  const size = Math.hypot(...hi.map((b, i) => b - (lo[i] as number)));
  return { centre: [centre[0] ?? 0, centre[1] ?? 0, centre[2] ?? 0], size: size || 1 };
}

/** Two movers belong to one part when their twists agree to this fraction of the whole motion. */
const SAME_BODY = 1e-5;

function sortIntoBodies(movers: readonly Mover[], centre: Vec3, size: number): Mechanism {
  const reach = ({ turn, shift }: Twist): number => Math.max(length(shift), length(turn) * size);
  const whole = movers.reduce((most, { twist }) => Math.max(most, reach(twist)), 0);
  const groups: { readonly twist: Twist; readonly members: Mover[] }[] = [];
  for (const mover of movers) {
    const { turn, shift } = mover.twist;
    if (reach(mover.twist) <= MOTION_TOLERANCE * whole) continue;
    const home = groups.find(
      (g) => Math.max(distance(g.twist.shift, shift), distance(g.twist.turn, turn) * size) <= SAME_BODY * whole,
    );
    if (home) home.members.push(mover);
    else groups.push({ twist: mover.twist, members: [mover] });
  }
  const bodies = groups.map(({ twist, members }) => {
    const middle = scale(
      members.reduce<Vec3>((sum, { at }) => add(sum, at), ORIGIN),
      1 / members.length,
    );
    const own = { turn: twist.turn, shift: shiftAt(twist, centre, middle) };
    const pick = (kind: Mover["kind"]) => members.filter((m) => m.kind === kind).map((m) => m.index);
    return {
      nodes: pick("node"),
      members: pick("member"),
      motion: nameMotion(own, middle, size),
      twist: { ...own, shift: shiftAt(own, middle, ORIGIN) },
    };
  });
  return { bodies };
}

/** The parts that move under strain-free node displacements `u` (6 per node). */
export function mechanismOf(parts: FrameParts, u: Float64Array): Mechanism {
  const { centre, size } = extent(parts);
  const ends = new Float64Array(12);
  const movers: Mover[] = [];
  for (let m = 0; m < parts.table.count; m++) {
    unloadedEnds(parts.table, m, u, ends);
    movers.push(memberMover(parts, m, ends, centre));
  }
  parts.model.nodes.forEach((node, n) => {
    const own = { turn: vec(u, 6 * n + 3), shift: vec(u, 6 * n) };
    movers.push({ kind: "node", index: n, at: node, twist: { turn: own.turn, shift: shiftAt(own, node, centre) } });
  });
  return sortIntoBodies(movers, centre, size);
}

/** Members that move by themselves between ends that release too much. */
export function looseMembers(parts: FrameParts): Mechanism[] {
  const { centre, size } = extent(parts);
  const found: Mechanism[] = [];
  for (const [m, { loose }] of parts.table.releases) {
    for (const ends of loose) found.push(sortIntoBodies([memberMover(parts, m, ends, centre)], centre, size));
  }
  return found;
}

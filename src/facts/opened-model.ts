import type { Pin } from "../geometry/turning-body.ts";
import { add, rotateAbout, subtract, type Vec3 } from "../geometry/vector.ts";
import type { FrameModel, Member, Spring, Triad } from "../mechanics/model.ts";
import type { Door, Frame } from "../model/frame.ts";
import { BRACING_PITCH } from "./side-bracing.ts";
import type { Structure } from "./structure.ts";

/** The door each bar swings with. */
export type Leaves = ReadonlyMap<string, string>;

/** How far a door is turned out of the drawing, and about what. */
export interface Turn {
  readonly pin: Pin;
  readonly angle: number;
}

export const leavesOf = (doors: readonly Door[]): Leaves =>
  new Map(doors.flatMap((door) => door.bars.map((bar) => [bar, door.ref.id] as const)));

/** The structure with its doors on their hinges alone: latches, and whatever else ties a leaf to what stands, are off. */
export function unlatched(known: Structure, leaves: Leaves): Structure {
  const links = known.links.filter(
    ({ bar, onto, freeAbout }) => leaves.get(bar) === leaves.get(onto) || freeAbout !== undefined,
  );
  return { ...known, links };
}

/** Stiffness with which a sheet screwed at a close pitch ties bars into one body: stiff beside any leaf, far from ill-conditioned. N/m, N·m/rad. */
const TIED = 1e8;
const TIED_TURN = 1e7;
const GLOBAL: Triad = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };

/** Springs that make one body of the leaf's bars to which a sheet is screwed at a close pitch. */
export function sheetTies(frame: Frame, known: Structure, leaves: Leaves): Spring[] {
  const springs: Spring[] = [];
  for (const { held } of frame.panels) {
    if (held.kind !== "on-face" || held.pitch === undefined || held.pitch > BRACING_PITCH) continue;
    const bars = new Set(held.bars.filter((bar) => leaves.has(bar)));
    const nodes = [...known.nodes.keys()].filter((i) => bars.has(known.nodes[i]?.bar ?? ""));
    const [first, ...others] = nodes;
    for (const from of first === undefined ? [] : others)
      springs.push({
        from,
        to: first ?? 0,
        axes: GLOBAL,
        stiffness: [TIED, TIED, TIED, TIED_TURN, TIED_TURN, TIED_TURN],
      });
  }
  return springs;
}

/** A point as it lies when its door is turned. */
export const placedBy = (turn: Turn | undefined, point: Vec3): Vec3 =>
  turn ? add(turn.pin.point, rotateAbout(subtract(point, turn.pin.point), turn.pin.axis, turn.angle)) : point;

const facing = (turn: Turn, { x, y, z }: Triad): Triad => ({
  x: rotateAbout(x, turn.pin.axis, turn.angle),
  y: rotateAbout(y, turn.pin.axis, turn.angle),
  z: rotateAbout(z, turn.pin.axis, turn.angle),
});

/** Nodes and members of the structure with the leaves turned; what hinges hold stays where it is drawn. */
export function turnedBars(
  { nodes, members }: Pick<FrameModel, "nodes" | "members">,
  known: Structure,
  turnOf: (bar: string) => Turn | undefined,
): Pick<FrameModel, "nodes" | "members"> {
  return {
    nodes: nodes.map((at, i) => placedBy(turnOf(known.nodes[i]?.bar ?? ""), at)),
    members: members.map((member, i): Member => {
      const turn = turnOf(known.pieces[i]?.bar ?? "");
      return turn ? { ...member, axes: facing(turn, member.axes) } : member;
    }),
  };
}

/** Springs with those inside a leaf turned with it. */
export function turnedSprings(
  springs: readonly Spring[],
  known: Structure,
  turnOf: (bar: string) => Turn | undefined,
): Spring[] {
  return springs.map((spring): Spring => {
    const { from, to, at, axes } = spring;
    const turn = to === "ground" ? undefined : turnOf(known.nodes[from]?.bar ?? "");
    if (!turn || turnOf(known.nodes[to as number]?.bar ?? "") !== turn) return spring;
    return { ...spring, axes: facing(turn, axes), ...(at ? { at: placedBy(turn, at) } : {}) };
  });
}

import type { Pin } from "../geometry/turning-body.ts";
import { add, rotateAbout, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Coupling, FrameModel, Member, Spring, Triad } from "../mechanics/model.ts";
import type { Door } from "../model/frame.ts";
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

/** A point as it lies when its door is turned. */
export const placedBy = (turn: Turn | undefined, point: Vec3): Vec3 =>
  turn ? add(turn.pin.point, rotateAbout(subtract(point, turn.pin.point), turn.pin.axis, turn.angle)) : point;

const turnedBy = ({ pin, angle }: Turn, way: Vec3): Vec3 => rotateAbout(way, pin.axis, angle);

const facing = (turn: Turn, { x, y, z }: Triad): Triad => ({
  x: turnedBy(turn, x),
  y: turnedBy(turn, y),
  z: turnedBy(turn, z),
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

/** Screwed sheets with those on a leaf turned with it; one that would tie a leaf to what stands is off, as its latch is. */
export function turnedCouplings(
  couplings: readonly Coupling[],
  known: Structure,
  turnOf: (bar: string) => Turn | undefined,
): Coupling[] {
  return couplings.flatMap((coupling): Coupling[] => {
    const turns = new Set(coupling.points.map(({ node }) => turnOf(known.nodes[node]?.bar ?? "")));
    const [turn] = turns;
    if (turns.size > 1) return [];
    if (!turn) return [coupling];
    const points = coupling.points.map(({ node, at, direction }) => ({
      node,
      at: placedBy(turn, at),
      direction: turnedBy(turn, direction),
    }));
    return [{ ...coupling, points }];
  });
}

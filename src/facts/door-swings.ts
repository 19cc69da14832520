import { drum } from "../geometry/extrude.ts";
import { type Prism, prismFromBox } from "../geometry/prism.ts";
import { type Pin, turned, turnUntilDeep } from "../geometry/turning-body.ts";
import { distance, normalise, subtract } from "../geometry/vector.ts";
import type { Door, Frame } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { clashes } from "./clashes.ts";
import { defineFact } from "./fact.ts";
import { obstacles } from "./obstacles.ts";
import { placements } from "./placements.ts";

/** Where a door strikes something. */
export interface Strike {
  /** The part of the door, and what it runs into; undefined: the floor. */
  readonly by: Ref;
  readonly on: Ref | undefined;
  /** Turn from shut, rad; 0: already when shut. */
  readonly turn: number;
}

export interface DoorSwing {
  readonly door: Door;
  /** From shut to fully open, rad. */
  readonly swing: number;
  /** What it strikes first with all other doors shut. */
  readonly first: Strike | undefined;
  /** What it strikes first of other doors that stand fully open, where that is earlier. */
  readonly whileOpen: (Strike & { readonly other: Ref<"door"> }) | undefined;
}

/** Parts that run into each other less than this only touch, m: as for parts that clash. */
const TOUCHING = 1e-4;
/** How deep and how wide the floor is taken to be, m. */
const FLOOR_DEPTH = 1;
const FLOOR_SIZE = 1000;

interface Solid {
  readonly of: Ref;
  readonly prism: Prism;
  /** The door it swings with. */
  readonly door: string | undefined;
  /** Fastened to a door and to what stands: the file says it swings. */
  readonly between: boolean;
}

/** Which door a part swings with, by the parts it is on. */
function doorsOf(frame: Frame, holds: ReadonlyMap<string, readonly string[]>) {
  const own = new Map<string, string>();
  for (const door of frame.doors) for (const part of [...door.bars, ...door.panels]) own.set(part, door.ref.id);
  const on = new Map<string, readonly string[]>(holds);
  for (const mass of frame.masses) on.set(mass.ref.id, mass.on);
  for (const stand of frame.stands) on.set(stand.ref.id, [stand.bar]);
  return (part: string): { door: string | undefined; between: boolean } => {
    const doors = new Set((on.get(part) ?? [part]).map((id) => own.get(id)));
    return { door: doors.size === 1 ? [...doors][0] : undefined, between: doors.size > 1 };
  };
}

const pinOf = (door: Door): Pin | undefined =>
  door.hinges[0] && { point: door.hinges[0].at, axis: normalise(door.axis) };

function floorOf(frame: Frame): Prism {
  return prismFromBox({
    centre: [0, 0, frame.floor.z - FLOOR_DEPTH / 2],
    axes: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
    half: [FLOOR_SIZE, FLOOR_SIZE, FLOOR_DEPTH / 2],
  });
}

/** The first of what a door strikes, looking no farther than what is known to be struck. */
function firstStrike(
  moving: readonly Solid[],
  standing: readonly { readonly of: Ref | undefined; readonly prism: Prism }[],
  turn: { readonly pin: Pin; readonly from: number; readonly through: number },
  known: (a: Ref, b: Ref) => boolean,
): Strike | undefined {
  let first: Strike | undefined;
  for (const part of moving) {
    const prism = turned(part.prism, turn.pin, turn.from);
    for (const { of, prism: other } of standing) {
      if (of && known(part.of, of)) continue;
      const left = Math.sign(turn.through) * (first?.turn ?? Math.abs(turn.through));
      const met = turnUntilDeep(prism, other, turn.pin, left, TOUCHING);
      if (met !== undefined && (!first || met < first.turn)) first = { by: part.of, on: of, turn: met };
    }
  }
  return first;
}

/**
 * How far each door turns before one of its parts runs into something that stands: bars, connectors, heads of screws, panels, feet and
 * casters, masses with a box, the floor, and the other doors, shut or fully open. Hinges and latches are not looked at.
 */
export const doorSwings = defineFact<
  readonly DoorSwing[],
  { obstacles: typeof obstacles; placements: typeof placements; clashes: typeof clashes }
>({
  id: "door-swings",
  needs: { obstacles, placements, clashes },
  compute({ obstacles: things, placements: placed, clashes: clashing }, frame) {
    if (frame.doors.length === 0) return [];
    const holds = placed.connectors.map(({ ref, holds: held }) => [ref.id, held.map(({ bar }) => bar)] as const);
    const doorOf = doorsOf(frame, new Map(holds));
    const solids: Solid[] = things.map(({ of, part, prism, round }) => {
      const length = round && distance(round.from, round.to);
      const body =
        round && length ? drum(round.from, normalise(subtract(round.to, round.from)), round.radius, length) : prism;
      return { of, prism: body, ...doorOf(part.id) };
    });
    for (const { ref, centre, box } of frame.masses) {
      if (!box) continue;
      const half = [box[0] / 2, box[1] / 2, box[2] / 2] as const;
      const axes = [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ] as const;
      solids.push({ of: ref, prism: prismFromBox({ centre, axes, half }), ...doorOf(ref.id) });
    }
    const told = new Set(clashing.flatMap(({ a, b }) => [`${a.id} ${b.id}`, `${b.id} ${a.id}`]));
    const known = (a: Ref, b: Ref): boolean => told.has(`${a.id} ${b.id}`);
    const floor = { of: undefined, prism: floorOf(frame) };
    return frame.doors.map((door): DoorSwing => {
      const [shut, open] = door.swing;
      const swing = Math.abs(open - shut);
      const pin = pinOf(door);
      if (!pin) return { door, swing, first: undefined, whileOpen: undefined };
      const moving = solids.filter((solid) => solid.door === door.ref.id);
      const standing = solids.filter((solid) => solid.door !== door.ref.id && !solid.between);
      const turn = { pin, from: shut, through: open - shut };
      const first = firstStrike(moving, [...standing, floor], turn, known);
      let whileOpen: DoorSwing["whileOpen"];
      for (const other of frame.doors) {
        const hung = pinOf(other);
        if (other === door || !hung) continue;
        const opened = solids
          .filter((solid) => solid.door === other.ref.id)
          .map(({ of, prism }) => ({ of, prism: turned(prism, hung, other.swing[1]) }));
        const struck = firstStrike(moving, opened, turn, () => false);
        if (struck && struck.turn < Math.min(first?.turn ?? swing, whileOpen?.turn ?? Infinity))
          whileOpen = { ...struck, other: other.ref };
      }
      return { door, swing, first, whileOpen };
    });
  },
});

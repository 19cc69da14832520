import type { Prism } from "../geometry/prism.ts";
import { type Pin, turned, turnUntilDeep } from "../geometry/turning-body.ts";
import type { Door } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { clashes } from "./clashes.ts";
import { defineFact } from "./fact.ts";
import { pinOf, type SwingingPart, swingingParts, TOUCHING } from "./swinging-parts.ts";

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

/** The first of what a door strikes, looking no farther than what is known to be struck. */
function firstStrike(
  moving: readonly SwingingPart[],
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
export const doorSwings = defineFact<readonly DoorSwing[], { parts: typeof swingingParts; clashes: typeof clashes }>({
  id: "door-swings",
  needs: { parts: swingingParts, clashes },
  compute({ parts: { all: solids, floor: ground }, clashes: clashing }, frame) {
    if (frame.doors.length === 0) return [];
    const told = new Set(clashing.flatMap(({ a, b }) => [`${a.id} ${b.id}`, `${b.id} ${a.id}`]));
    const known = (a: Ref, b: Ref): boolean => told.has(`${a.id} ${b.id}`);
    const floor = { of: undefined, prism: ground };
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

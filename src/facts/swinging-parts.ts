import { drum } from "../geometry/extrude.ts";
import { type Prism, prismFromBox } from "../geometry/prism.ts";
import type { Pin } from "../geometry/turning-body.ts";
import { distance, normalise, subtract } from "../geometry/vector.ts";
import type { Door, Frame } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { defineFact } from "./fact.ts";
import { obstacles } from "./obstacles.ts";
import { screwedParts } from "./screwed-parts.ts";

/** A convex part of the frame and what it swings with. */
export interface SwingingPart {
  readonly of: Ref;
  readonly prism: Prism;
  /** The door it swings with; undefined: it stands. */
  readonly door: string | undefined;
  /** Fastened to a door and to what stands: the file says it swings. */
  readonly between: boolean;
}

export interface SwingingParts {
  readonly all: readonly SwingingPart[];
  readonly floor: Prism;
}

/** Parts that run into each other less than this only touch, m: as for parts that clash. */
export const TOUCHING = 1e-4;
/** How deep and how wide the floor is taken to be, m. */
const FLOOR_DEPTH = 1;
const FLOOR_SIZE = 1000;

const GLOBAL = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
] as const;

/** The line a door turns about: through its first hinge; undefined without hinges. */
export const pinOf = (door: Door): Pin | undefined =>
  door.hinges[0] && { point: door.hinges[0].at, axis: normalise(door.axis) };

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

function floorOf(frame: Frame): Prism {
  return prismFromBox({
    centre: [0, 0, frame.floor.z - FLOOR_DEPTH / 2],
    axes: GLOBAL,
    half: [FLOOR_SIZE, FLOOR_SIZE, FLOOR_DEPTH / 2],
  });
}

/**
 * What a door may meet, as drawn: bars, connectors, heads of screws, panels, feet and casters, masses with a box, each with the door it
 * swings with; and the floor. Hinges and latches are left out. Frames without doors have none.
 */
export const swingingParts = defineFact<SwingingParts, { obstacles: typeof obstacles; parts: typeof screwedParts }>({
  id: "swinging-parts",
  needs: { obstacles, parts: screwedParts },
  compute({ obstacles: things, parts }, frame) {
    const floor = floorOf(frame);
    if (frame.doors.length === 0) return { all: [], floor };
    const holds = parts.all.map(({ ref, holds: held }) => [ref.id, held.map(({ bar }) => bar)] as const);
    const doorOf = doorsOf(frame, new Map(holds));
    const all: SwingingPart[] = things.map(({ of, part, prism, round }) => {
      const length = round && distance(round.from, round.to);
      const body =
        round && length ? drum(round.from, normalise(subtract(round.to, round.from)), round.radius, length) : prism;
      return { of, prism: body, ...doorOf(part.id) };
    });
    for (const { ref, centre, box } of frame.masses) {
      if (!box) continue;
      const half = [box[0] / 2, box[1] / 2, box[2] / 2] as const;
      all.push({ of: ref, prism: prismFromBox({ centre, axes: GLOBAL, half }), ...doorOf(ref.id) });
    }
    return { all, floor };
  },
});

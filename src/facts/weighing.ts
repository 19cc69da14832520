import { add, along, rotateAbout, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Door, Frame } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { type ActingCase, GRAVITY } from "./acting.ts";
import { fullestSets, vyingGroups } from "./compatible-sets.ts";
import { casesExclude } from "./excluding.ts";
import { gathered, type Masses, type Weight } from "./mass.ts";
import { equipmentCases } from "./slides.ts";
import type { Structure } from "./structure.ts";

/** One way in which something may stand. */
export interface Place {
  readonly mass: number;
  readonly centre: Vec3;
  /** A door turned out of the drawing, or a thing pulled out. */
  readonly open: boolean;
}

/** Something in one of several places: a load may be absent altogether, what is fitted is always there. */
export interface Movable {
  readonly name: string;
  readonly kind: "load" | "door" | "fitted";
  readonly places: readonly Place[];
  /** Whether it may be open only where nothing else with this mark is. */
  readonly interlocked: boolean;
}

/** Positions of a door that are tried between shut and fully open. */
const DOOR_STEPS = 12;
/** More fullest sets than these of one group of load cases are not all weighed. */
const MOST_SETS = 1000;

/** Weight [kg] and its centre of what a load case puts downward on the bars. */
function weighed(loadCase: ActingCase, known: Structure): Weight {
  const parts: Weight[] = [];
  const ref: Ref = { kind: "load", id: loadCase.name };
  for (const load of loadCase.loads.members ?? []) {
    const piece = known.pieces[load.member];
    const from = piece && known.nodes[piece.from]?.at;
    const to = piece && known.nodes[piece.to]?.at;
    if (!from || !to || load.kind === "strain" || !load.force) continue;
    const span = Math.hypot(...subtract(to, from));
    const middle = load.kind === "point" ? load.along : (load.start + load.end) / 2;
    const down =
      load.kind === "point" ? -load.force[2] : (-(load.force[0][2] + load.force[1][2]) / 2) * (load.end - load.start);
    const at = add(along(from, subtract(to, from), span > 0 ? middle / span : 0), load.arm ?? [0, 0, 0]);
    if (down > 0) parts.push({ ref, mass: down / GRAVITY, centre: at });
  }
  return { ref, ...gathered(parts) };
}

function doorPlaces(door: Door, moving: readonly Weight[]): Movable["places"] {
  const { mass, centre } = gathered(moving);
  const pin = door.hinges[0]?.at ?? centre;
  const [shut, open] = door.swing;
  return Array.from({ length: DOOR_STEPS + 1 }, (_, i) => {
    const angle = shut + ((open - shut) * i) / DOOR_STEPS;
    return { mass, centre: add(pin, rotateAbout(subtract(centre, pin), door.axis, angle)), open: i > 0 };
  });
}

export interface Weighing {
  readonly always: { readonly mass: number; readonly centre: Vec3 };
  readonly movable: readonly Movable[];
  /** Of each group of load cases that exclude one another, the fullest sets of those that may act together, by name. */
  readonly apart: readonly (readonly (readonly string[])[])[];
  readonly floor: number;
  /** How far one foot may stand high or low, m. */
  readonly uneven: number;
}

/** What stands on the feet, and what of it moves. */
export function weigh(
  frame: Pick<Frame, "cases" | "doors" | "masses" | "floor">,
  all: Masses,
  cases: readonly ActingCase[],
  known: Structure,
): Weighing {
  const onDoor = new Map<string, string>();
  for (const door of frame.doors) for (const id of [...door.bars, ...door.panels]) onDoor.set(id, door.ref.id);
  for (const mass of frame.masses) {
    const door = mass.on.map((id) => onDoor.get(id)).find((id) => id !== undefined);
    if (door !== undefined) onDoor.set(mass.ref.id, door);
  }
  const always: Weight[] = [];
  const doors = new Map<string, Weight[]>(frame.doors.map((door) => [door.ref.id, []]));
  const sliding = new Map(frame.masses.flatMap(({ ref, slides }) => (slides ? [[ref.id, slides] as const] : [])));
  const still = all.fixed.filter(({ ref }) => !sliding.has(ref.id));
  for (const weight of [...all.own, ...still]) (doors.get(onDoor.get(weight.ref.id) ?? "") ?? always).push(weight);
  const movable: Movable[] = frame.doors.map((door) => ({
    name: door.ref.id,
    kind: "door",
    places: doorPlaces(door, doors.get(door.ref.id) ?? []),
    interlocked: false,
  }));
  const placesOf = ({ ref, mass, centre }: Weight): readonly Place[] => {
    const slides = sliding.get(ref.id);
    const out = slides ? [{ mass, centre: add(centre, slides.by), open: true }] : [];
    return [{ mass, centre, open: false }, ...out];
  };
  const put = (weight: Weight, kind: Movable["kind"]): void => {
    const interlocked = sliding.get(weight.ref.id)?.interlock ?? false;
    movable.push({ name: weight.ref.id, kind, places: placesOf(weight), interlocked });
  };
  for (const weight of all.fixed) if (sliding.has(weight.ref.id)) put(weight, "fitted");
  for (const weight of all.removable) put(weight, "load");
  const things = equipmentCases(frame);
  const byName = new Map<string, Place[]>();
  for (const loadCase of cases) {
    if (loadCase.name === "self-weight" || loadCase.kind === "accidental" || things.has(loadCase.name)) continue;
    const weight = weighed(loadCase, known);
    if (!(weight.mass > 0)) continue;
    if (loadCase.kind === "permanent") always.push(weight);
    else {
      const places = byName.get(loadCase.name) ?? [];
      places.push({ ...weight, open: false });
      byName.set(loadCase.name, places);
    }
  }
  for (const [name, places] of byName) movable.push({ name, kind: "load", places, interlocked: false });
  const excludes = casesExclude(frame);
  const apart = vyingGroups([...byName.keys()], excludes).map((group) => fullestSets(group, excludes, MOST_SETS));
  return { always: gathered(always), movable, apart, floor: frame.floor.z, uneven: frame.floor.uneven };
}

import { add, along, cross, rotateAbout, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Door, Frame } from "../model/frame.ts";
import { type ActingCase, GRAVITY } from "./acting.ts";

import { fullestSets, vyingGroups } from "./compatible-sets.ts";
import { casesExclude } from "./excluding.ts";
import { gathered, type Masses, type Weight } from "./mass.ts";
import { equipmentCases } from "./slides.ts";
import type { Structure } from "./structure.ts";

/** One way in which something may stand. */
export interface Place {
  readonly mass: number;
  /** As drawn, m. */
  readonly centre: Vec3;
  /** A thing pulled out. */
  readonly open: boolean;
  /** The door it swings with, by its place among the leaves. */
  readonly leaf?: number;
}

/** Something that may be in several places: a load may be absent altogether, what is fitted is always there. */
export interface Movable {
  readonly name: string;
  readonly kind: "load" | "fitted";
  /** All parts of it are there together, each in one of its places whatever the others do. */
  readonly parts: readonly (readonly Place[])[];
  /** Whether it may be open only where nothing else with this mark is. */
  readonly interlocked: boolean;
}

/** A door: its own weight and what is bolted to it, and where it may stand. */
export interface Leaf {
  readonly name: string;
  readonly mass: number;
  readonly centre: Vec3;
  /** How many positions of it are tried, the first of them shut. */
  readonly positions: number;
  /** A point of the drawing as the door stands in one of its positions. */
  turned(point: Vec3, position: number): Vec3;
}

/** Doors and movable things that ask something of each other: one on the other, or one or the other. */
export interface Linked {
  readonly leaves: readonly number[];
  readonly movable: readonly Movable[];
  /** Of each group of load cases that exclude one another, the fullest sets of those that may act together, by name. */
  readonly apart: readonly (readonly (readonly string[])[])[];
}

export interface Weighing {
  readonly always: { readonly mass: number; readonly centre: Vec3 };
  /** Permanent load cases by name, and whether equipment is bolted down. */
  readonly permanent: readonly string[];
  readonly equipped: boolean;
  readonly leaves: readonly Leaf[];
  readonly linked: readonly Linked[];
  readonly floor: number;
  /** How far one foot may stand high or low, m. */
  readonly uneven: number;
}

/** Positions of a door that are tried between shut and fully open. */
const DOOR_STEPS = 12;
/** More fullest sets than these of one group of load cases are not all weighed. */
const MOST_SETS = 1000;
/** What a case presses down less than this, kg, is rounding. */
const NOTHING = 1e-9;

/** Force [N] and moment about the origin [N·m] of what presses down. */
interface Pressed {
  down: number;
  moment: Vec3;
  /** Sum of height times force, N·m. */
  high: number;
}

/**
 * Weight [kg] and its centre of what a load case puts downward on the bars, apart for what stands and for each leaf: where its force and
 * its moment act, at the height at which it meets the bars.
 */
function weighed(
  { loads }: ActingCase,
  known: Structure,
  leafOf: (bar: string) => number | undefined,
): readonly Place[] {
  const sums = new Map<number | undefined, Pressed>();
  for (const load of loads.members ?? []) {
    const piece = known.pieces[load.member];
    const from = piece && known.nodes[piece.from]?.at;
    const to = piece && known.nodes[piece.to]?.at;
    if (!from || !to || load.kind === "strain") continue;
    const span = Math.hypot(...subtract(to, from));
    const middle = load.kind === "point" ? load.along : (load.start + load.end) / 2;
    const down =
      load.kind === "point"
        ? -(load.force?.[2] ?? 0)
        : (-((load.force?.[0][2] ?? 0) + (load.force?.[1][2] ?? 0)) / 2) * (load.end - load.start);
    const arm = load.kind === "point" || load.kind === "line" ? (load.arm ?? [0, 0, 0]) : [0, 0, 0];
    const at = add(along(from, subtract(to, from), span > 0 ? middle / span : 0), arm as Vec3);
    const leaf = leafOf(piece.bar);
    const sum = sums.get(leaf) ?? { down: 0, moment: [0, 0, 0], high: 0 };
    sums.set(leaf, sum);
    if (load.kind === "point" && load.moment) sum.moment = add(sum.moment, load.moment);
    if (!(down > 0)) continue;
    sum.down += down;
    sum.moment = add(sum.moment, cross(at, [0, 0, -down]));
    sum.high += at[2] * down;
  }
  return [...sums].flatMap(([leaf, { down, moment, high }]) => {
    const mass = down / GRAVITY;
    if (mass < NOTHING) return [];
    // r × (0, 0, −F) = (−y F, x F, 0).
    const centre: Vec3 = [moment[1] / down, -moment[0] / down, high / down];
    return [{ mass, centre, open: false, ...(leaf === undefined ? {} : { leaf }) }];
  });
}

function leafFrom(door: Door, own: readonly Weight[]): Leaf {
  const { mass, centre } = gathered(own);
  const pin = door.hinges[0]?.at ?? centre;
  const [shut, open] = door.swing;
  return {
    name: door.ref.id,
    mass,
    centre,
    positions: DOOR_STEPS + 1,
    turned(point, position) {
      const angle = shut + ((open - shut) * position) / DOOR_STEPS;
      return add(pin, rotateAbout(subtract(point, pin), door.axis, angle));
    },
  };
}

/** Things that share a door, that exclude each other or that one interlock holds, together. */
function linkedBy(
  movable: readonly Movable[],
  count: number,
  groups: readonly (readonly string[])[],
  setsOf: (group: readonly string[]) => readonly (readonly string[])[],
): readonly Linked[] {
  const leavesOf = ({ parts }: Movable): number[] =>
    [...new Set(parts.flat().flatMap(({ leaf }) => leaf ?? []))].sort((a, b) => a - b);
  // What each thing asks something of, in words of one kind: a door, a group, the interlock.
  const asks = (one: Movable): readonly string[] => [
    ...leavesOf(one).map((leaf) => `leaf ${leaf}`),
    ...groups.flatMap((group, i) => (one.kind === "load" && group.includes(one.name) ? [`group ${i}`] : [])),
    ...(one.interlocked ? ["interlock"] : []),
  ];
  const left = new Set(movable);
  const list: Linked[] = [];
  const seeds = [...Array.from({ length: count }, (_, leaf) => [`leaf ${leaf}`]), ...movable.map(asks)];
  const seen = new Set<string>();
  for (const seed of seeds) {
    if (seed.length === 0 || seed.some((word) => seen.has(word))) continue;
    const words = new Set(seed);
    const own: Movable[] = [];
    for (let grown = true; grown; ) {
      grown = false;
      for (const one of left) {
        if (!asks(one).some((word) => words.has(word))) continue;
        left.delete(one);
        own.push(one);
        for (const word of asks(one)) words.add(word);
        grown = true;
      }
    }
    for (const word of words) seen.add(word);
    list.push({
      leaves: Array.from({ length: count }, (_, leaf) => leaf).filter((leaf) => words.has(`leaf ${leaf}`)),
      movable: movable.filter((one) => own.includes(one)),
      apart: groups.filter((_, i) => words.has(`group ${i}`)).map(setsOf),
    });
  }
  return [...list, ...[...left].map((one): Linked => ({ leaves: [], movable: [one], apart: [] }))];
}

/** What stands on the feet, and what of it moves. */
export function weigh(
  frame: Pick<Frame, "cases" | "doors" | "masses" | "floor">,
  all: Masses,
  cases: readonly ActingCase[],
  known: Structure,
): Weighing {
  const onDoor = new Map<string, number>();
  for (const [i, door] of frame.doors.entries()) for (const id of [...door.bars, ...door.panels]) onDoor.set(id, i);
  for (const mass of frame.masses) {
    const door = mass.on.map((id) => onDoor.get(id)).find((index) => index !== undefined);
    if (door !== undefined) onDoor.set(mass.ref.id, door);
  }
  const leafOf = (id: string): { leaf?: number } => {
    const leaf = onDoor.get(id);
    return leaf === undefined ? {} : { leaf };
  };
  const always: Weight[] = [];
  const doors: Weight[][] = frame.doors.map(() => []);
  const keep = (weight: Weight, leaf: number | undefined): void => {
    (leaf === undefined ? always : (doors[leaf] ?? always)).push(weight);
  };
  const sliding = new Map(frame.masses.flatMap(({ ref, slides }) => (slides ? [[ref.id, slides] as const] : [])));
  for (const weight of [...all.own, ...all.fixed.filter(({ ref }) => !sliding.has(ref.id))])
    keep(weight, onDoor.get(weight.ref.id));
  const movable: Movable[] = [];
  const put = ({ ref, mass, centre }: Weight, kind: Movable["kind"]): void => {
    const slides = sliding.get(ref.id);
    const shut: Place = { mass, centre, open: false, ...leafOf(ref.id) };
    const out = slides ? [{ ...shut, centre: add(centre, slides.by), open: true }] : [];
    movable.push({ name: ref.id, kind, parts: [[shut, ...out]], interlocked: slides?.interlock ?? false });
  };
  for (const weight of all.fixed) if (sliding.has(weight.ref.id)) put(weight, "fitted");
  for (const weight of all.removable) put(weight, "load");
  const things = equipmentCases(frame);
  // Of one case what stands still, and each load that roams.
  const byName = new Map<string, Map<number | "still", Place[][]>>();
  for (const loadCase of cases) {
    const { name, kind, roams } = loadCase;
    if (name === "self-weight" || kind === "accidental" || things.has(name)) continue;
    const places = weighed(loadCase, known, (bar) => onDoor.get(bar));
    const ref = { kind: "load", id: name } as const;
    if (kind === "permanent") for (const { leaf, ...weight } of places) keep({ ref, ...weight }, leaf);
    else {
      const parts = byName.get(name) ?? new Map<number | "still", Place[][]>();
      byName.set(name, parts);
      const key = roams?.load ?? "still";
      const known = parts.get(key) ?? [];
      parts.set(key, known);
      // A load that roams is on one bar: one place each. What stands still is there part by part.
      if (roams) known[0] = [...(known[0] ?? []), ...places];
      else known.push(...places.map((place) => [place]));
    }
  }
  for (const [name, parts] of byName) {
    const there = [...parts.values()].flat().filter((places) => places.length > 0);
    if (there.length > 0) movable.push({ name, kind: "load", parts: there, interlocked: false });
  }
  const excludes = casesExclude(frame);
  const groups = vyingGroups([...byName.keys()], excludes);
  return {
    always: gathered(always),
    permanent: frame.cases.filter(({ kind }) => kind === "permanent").map(({ id }) => id),
    equipped: all.fixed.length > 0,
    leaves: frame.doors.map((door, i) => leafFrom(door, doors[i] ?? [])),
    linked: linkedBy(movable, frame.doors.length, groups, (group) => fullestSets(group, excludes, MOST_SETS)),
    floor: frame.floor.z,
    uneven: frame.floor.uneven,
  };
}

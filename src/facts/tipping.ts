import { add, along, rotateAbout, subtract, type Vec2, type Vec3 } from "../geometry/vector.ts";
import type { Door, Frame } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { type ActingCase, acting, GRAVITY } from "./acting.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { type Foothold, footing } from "./footing.ts";
import { gathered, type Masses, masses, type Weight } from "./mass.ts";
import { type Structure, structure } from "./structure.ts";
import { type TippingEdge, tippingEdges } from "./tipping-edges.ts";

/** The line between two feet over which a frame tips. */
export interface TippingLine {
  readonly feet: readonly [Ref, Ref];
  /** On it, on the floor, and the level way into the frame square to it. */
  readonly pivot: Vec3;
  readonly inward: Vec3;
}

/** How the frame stands when it is nearest to tipping over one such line. */
export interface Tipping extends TippingLine {
  /** What is on it: names of load cases and equipment; none: empty. */
  readonly laden: readonly string[];
  readonly doorsOpen: boolean;
  /** kg */
  readonly mass: number;
  /** Horizontal distance of the centre of mass inside the line, m; negative: outside, it falls by itself. */
  readonly inside: number;
  /** Height of the centre of mass over the floor, m. */
  readonly height: number;
  /** How far an uneven floor leans it over the line, rad. */
  readonly lean: number;
}

export interface PushTest {
  /** N, at most, and as a share of the weight. */
  readonly force: number;
  readonly share: number;
  /** Height over the floor at which it pushes, m. */
  readonly height: number;
}

export type Stability =
  | { readonly kind: "lacking"; readonly why: string }
  | { readonly kind: "cannot tip"; readonly why: string }
  | {
      readonly kind: "stands";
      /** Height of the highest bar over the floor, m. */
      readonly top: number;
      /** The lines it may tip over. */
      readonly lines: readonly TippingLine[];
      /** The state of loads and doors with the least tilt to tipping. */
      tilted(): Tipping;
      /** The state in which a push comes nearest to tipping it. */
      pushed(test: PushTest): Tipping;
    };

/** Something that may be there or not, in one of several places (doors and roaming loads: exactly one of them). */
interface Movable {
  readonly name: string;
  readonly kind: "load" | "door";
  readonly places: readonly { readonly mass: number; readonly centre: Vec3; readonly open: boolean }[];
}

/** Positions of a door that are tried between shut and fully open. */
const DOOR_STEPS = 12;
/** Rounds of the search for the worst set of loads: each round is better than the last, and few are needed. */
const ROUNDS = 50;

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

interface Weighing {
  readonly always: { readonly mass: number; readonly centre: Vec3 };
  readonly movable: readonly Movable[];
  readonly floor: number;
  /** How far one foot may stand high or low, m. */
  readonly uneven: number;
}

const lineOf = ({ feet, from, inward }: TippingEdge, floor: number): TippingLine => ({
  feet,
  pivot: [...from, floor],
  inward: [...inward, 0],
});

/** Loads and door positions that make Σ mass · cost least, with cost a linear function of the place. */
function worstState(
  { always, movable, floor, uneven }: Weighing,
  edge: TippingEdge,
  cost: (inside: number, height: number) => number,
): Tipping {
  let mass = always.mass;
  let inside = always.mass * edge.inside(always.centre);
  let height = always.mass * (always.centre[2] - floor);
  const laden: string[] = [];
  let doorsOpen = false;
  for (const { name, kind, places } of movable) {
    let best: { mass: number; inside: number; height: number; open: boolean; cost: number } | undefined;
    for (const place of places) {
      const d = edge.inside(place.centre);
      const z = place.centre[2] - floor;
      const own = place.mass * cost(d, z);
      // Below what is left of rounding a door is no worse open.
      if (!best || own < best.cost - 1e-9)
        best = { mass: place.mass, inside: d, height: z, open: place.open, cost: own };
    }
    if (!best || (kind === "load" && best.cost >= 0)) continue;
    mass += best.mass;
    inside += best.mass * best.inside;
    height += best.mass * best.height;
    if (kind === "load") laden.push(name);
    else doorsOpen ||= best.open;
  }
  return {
    ...lineOf(edge, floor),
    laden,
    doorsOpen,
    mass,
    inside: inside / mass,
    height: height / mass,
    lean: Math.atan2(uneven, edge.nearest),
  };
}

/** Least ratio of inside to height over all states of loads and doors (Dinkelbach 1967: a ratio as a row of linear problems). */
function leastTilt(weighing: Weighing, edge: TippingEdge): Tipping {
  let state = worstState(weighing, edge, (inside) => inside);
  for (let round = 0; round < ROUNDS; round += 1) {
    const ratio = state.inside / state.height;
    const next = worstState(weighing, edge, (inside, height) => inside - ratio * height);
    if (!(next.inside / next.height < ratio - 1e-12)) break;
    state = next;
  }
  return state;
}

/** Push over the push that tips: 1 tips. Infinity where the centre of mass lies outside. */
export function pushRatio({ mass, inside }: Tipping, test: PushTest): number {
  const weight = mass * GRAVITY;
  return inside > 0 ? (Math.min(test.force, test.share * weight) * test.height) / (weight * inside) : Infinity;
}

/** The worst state for a push: an item hurts by its own moment, or by the share of its weight that the push grows with. */
function worstPush(weighing: Weighing, edge: TippingEdge, test: PushTest): Tipping {
  const states = [0, test.share * test.height].map((worth) => worstState(weighing, edge, (inside) => inside - worth));
  return states.reduce((a, b) => (pushRatio(b, test) > pushRatio(a, test) ? b : a));
}

function weigh(
  frame: Pick<Frame, "doors" | "masses" | "floor">,
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
  for (const weight of [...all.own, ...all.fixed]) (doors.get(onDoor.get(weight.ref.id) ?? "") ?? always).push(weight);
  const movable: Movable[] = frame.doors.map((door) => ({
    name: door.ref.id,
    kind: "door",
    places: doorPlaces(door, doors.get(door.ref.id) ?? []),
  }));
  for (const { ref, mass, centre } of all.removable)
    movable.push({ name: ref.id, kind: "load", places: [{ mass, centre, open: false }] });
  const things = new Set(frame.masses.map((mass) => mass.ref.id));
  const byName = new Map<string, { mass: number; centre: Vec3; open: boolean }[]>();
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
  for (const [name, places] of byName) movable.push({ name, kind: "load", places });
  return { always: gathered(always), movable, floor: frame.floor.z, uneven: frame.floor.uneven };
}

/** Tilt of a level floor at which it tips, rad: what its centre of mass allows less what it leans already. */
export const tiltOf = ({ inside, height, lean }: Tipping): number => Math.atan2(inside, height) - lean;

const flat = ({ at }: Foothold): Vec2 => [at[0], at[1]];

/** How near the frame is to tipping, from its weights alone: rigid, on feet that push and, unless anchored, do not pull. */
export const tipping = defineFact<
  Stability,
  {
    masses: typeof masses;
    footing: typeof footing;
    acting: typeof acting;
    structure: typeof structure;
    bodies: typeof bodies;
  }
>({
  id: "tipping",
  needs: { masses, footing, acting, structure, bodies },
  compute({ masses: all, footing: feet, acting: loads, structure: known, bodies: bars }, frame) {
    if (feet.length === 0)
      return { kind: "lacking", why: "what the frame stands on: give it feet, casters, or bars down to the floor" };
    const anchored = feet.filter((foot) => foot.hold === "anchored").map(flat);
    const edges = tippingEdges(feet, frame.stands).filter(
      (edge) => !anchored.some((at) => edge.inside([at[0], at[1], 0]) > 1e-3),
    );
    if (edges.length === 0)
      return anchored.length > 0
        ? { kind: "cannot tip", why: "anchored to the floor" }
        : { kind: "cannot tip", why: "its feet span no area; frame.loose says so" };
    const weighing = weigh(frame, all, loads.cases, known);
    let top = 0;
    for (const body of bars.values()) top = Math.max(top, body.bounds.max[2] - frame.floor.z);
    const worst = (states: readonly Tipping[], nearer: (a: Tipping, b: Tipping) => boolean): Tipping =>
      states.reduce((a, b) => (nearer(b, a) ? b : a));
    return {
      kind: "stands",
      top,
      lines: edges.map((edge) => lineOf(edge, frame.floor.z)),
      tilted: () =>
        worst(
          edges.map((edge) => leastTilt(weighing, edge)),
          (a, b) => tiltOf(a) < tiltOf(b),
        ),
      pushed: (test) =>
        worst(
          edges.map((edge) => worstPush(weighing, edge, test)),
          (a, b) => pushRatio(a, test) > pushRatio(b, test),
        ),
    };
  },
});

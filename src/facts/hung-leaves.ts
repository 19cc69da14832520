import type { Pin } from "../geometry/turning-body.ts";
import { cross, distance, dot, length, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { LoadCase } from "../mechanics/model.ts";
import type { Door } from "../model/frame.ts";
import type { ActingCase } from "./acting.ts";
import { up } from "./axes.ts";
import type { Leaves } from "./opened-model.ts";
import type { Structure } from "./structure.ts";
import { pinOf, type SwingingPart } from "./swinging-parts.ts";
import { turnedLoads } from "./turned-loads.ts";

/** A point of a leaf as drawn, and the node of the structure it moves with. */
export interface Rider {
  readonly point: Vec3;
  readonly node: number;
}

/** A door that hangs from an upright hinge line. */
export interface HungLeaf {
  readonly door: Door;
  readonly pin: Pin;
  /** Unit vector up along the hinge line. */
  readonly axis: Vec3;
  /** Farthest its bars reach from the hinge line, m. */
  readonly reach: number;
  /** By how much the play of its pins lets it lean, rad. */
  readonly tilt: number;
  readonly parts: readonly { readonly part: SwingingPart; readonly riders: readonly Rider[] }[];
}

/** A hinge line within 5° of plumb carries a leaf that hangs from it. */
const PLUMB = Math.cos(Math.PI / 36);
/** Play of a hinge's pin, m: the middle of a loose running fit H11/c11 of 6 to 10 mm (ISO 286-2, from memory). */
const PLAY = 0.17e-3;

/** Distance of a point from the hinge line, m. */
export const outFrom = ({ pin, axis }: HungLeaf, { point }: Rider): number =>
  length(cross(subtract(point, pin.point), axis));

/** Length along the hinge line over which a door is held: from hinge to hinge, at least one hinge's own plate, m. */
function heldOver({ hinges }: Door, axis: Vec3): number {
  const at = hinges.map((hinge) => dot(hinge.at, axis));
  const plates = hinges.map(({ part }) =>
    part.kind === "hinge" || part.kind === "pivot"
      ? 2 * Math.max(...part.holes.map((hole) => Math.abs(hole.at[1]) + hole.diameter))
      : 0,
  );
  return Math.max(Math.max(...at) - Math.min(...at), ...plates);
}

/** Why a door does not hang from one side on hinges alone; undefined where it does. `standing` are bars that stand on the floor. */
export function whyNotHung(
  door: Door,
  known: Structure,
  leaves: Leaves,
  standing: ReadonlySet<string>,
): string | undefined {
  const pin = pinOf(door);
  if (!pin || Math.abs(dot(pin.axis, up)) < PLUMB) return "its hinge line is not upright";
  if (door.hinges.some(({ bars }) => leaves.has(bars[1]))) return "it hangs on another door";
  if (door.bars.some((bar) => standing.has(bar))) return "it stands on the floor";
  if (!known.links.some(({ joint, freeAbout }) => joint.id === door.ref.id && freeAbout)) return "it hangs on nothing";
  return undefined;
}

/** The door as it hangs; or why it does not hang from one side. `standing` are bars that stand on the floor. */
export function hungLeaf(
  door: Door,
  known: Structure,
  leaves: Leaves,
  standing: ReadonlySet<string>,
  parts: readonly SwingingPart[],
): HungLeaf | string {
  const why = whyNotHung(door, known, leaves, standing);
  const pin = pinOf(door);
  if (why !== undefined || !pin) return why ?? "it hangs on nothing";
  const axis = dot(pin.axis, up) < 0 ? scale(pin.axis, -1) : pin.axis;
  const own = [...known.nodes.entries()].filter(([, { bar }]) => leaves.get(bar) === door.ref.id);
  const nearest = (point: Vec3): number =>
    own.reduce((a, b) => (distance(b[1].at, point) < distance(a[1].at, point) ? b : a))[0];
  const ridden = parts
    .filter((part) => part.door === door.ref.id)
    .map((part) => ({ part, riders: part.prism.vertices.map((point) => ({ point, node: nearest(point) })) }));
  const leaf: HungLeaf = { door, pin, axis, reach: 0, tilt: PLAY / heldOver(door, axis), parts: ridden };
  return { ...leaf, reach: Math.max(0, ...barRiders(leaf).map((rider) => outFrom(leaf, rider))) };
}

/** Corners of the leaf's bars. */
export const barRiders = ({ parts }: HungLeaf): readonly Rider[] =>
  parts.flatMap(({ part, riders }) => (part.of.kind === "bar" ? riders : []));

/** What the leaf weighs on its own bars, turned with it by `angle` [rad]: of self-weight and of equipment. */
export function leafWeight(
  { door, pin }: HungLeaf,
  known: Structure,
  weights: readonly ActingCase[],
  angle: number,
): LoadCase {
  const bars = new Set(door.bars);
  const own = {
    members: weights
      .flatMap(({ loads }) => loads.members ?? [])
      .filter((load) => load.kind !== "strain" && load.force && bars.has(known.pieces[load.member]?.bar ?? "")),
    nodes: weights
      .flatMap(({ loads }) => loads.nodes ?? [])
      .filter(({ node }) => bars.has(known.nodes[node]?.bar ?? "")),
  };
  return turnedLoads(own, known, () => ({ pin, angle }));
}

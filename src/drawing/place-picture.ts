import { type Bounds3, boundsOf, boundsOverlap } from "../geometry/bounds.ts";
import { distance, midpoint, type Vec2, type Vec3 } from "../geometry/vector.ts";
import { boxEdges } from "./box-edges.ts";
import { cornerFor } from "./cure-picture.ts";
import { type Band, type Look, lineDrawing } from "./line-drawing.ts";
import { inPicture, roundAbout } from "./round-about.ts";
import type { Scene } from "./scene.ts";
import { type Solid, skins } from "./solids/solid.ts";
import { viewFrom, views } from "./view.ts";

const SIZE: Vec2 = [300, 240];
/** Room round what is looked at, as a share of its size, and the least of it, m. */
const ROOM = 0.9;
const LEAST = 0.1;
/** What reaches over more than this is seen on the whole frame, m. */
const WIDE = 0.4;
/** Bars whose envelopes come so near to each other have a place where they meet, m. */
const MEETS = 0.02;
const ZONE = "#96270f";

/** Parts that a finding names, and where in the frame they are. */
export interface PlacePicture {
  readonly svg: string;
  readonly seen: "near" | "whole";
}

/** A box that is no part of the frame: a zone of danger. */
export interface Box {
  readonly id: string;
  readonly low: Vec3;
  readonly high: Vec3;
}

const boundsOfSolids = (solids: readonly Solid[]): Bounds3 => boundsOf(solids.flatMap(({ prism }) => prism.vertices));

/** Where two parts come together; undefined where they do not. */
function meeting([one, other]: readonly Solid[]): Bounds3 | undefined {
  if (!one || !other) return undefined;
  const [a, b] = [boundsOfSolids([one]), boundsOfSolids([other])];
  if (!boundsOverlap(a, b, MEETS)) return undefined;
  const inner = (which: typeof Math.min, side: "min" | "max"): Vec3 => [
    which(a[side][0], b[side][0]),
    which(a[side][1], b[side][1]),
    which(a[side][2], b[side][2]),
  ];
  return { min: inner(Math.max, "min"), max: inner(Math.min, "max") };
}

/** What these names are of: parts, what is on them ("rail.from/1/b1/nut"), and what belongs to joints, but not all that is on a bar. */
function namedIn({ solids }: Scene, named: readonly string[]): readonly Solid[] {
  const bars = new Set(solids.flatMap(({ kind, of }) => (kind === "bar" ? [of.id] : [])));
  const joints = new Set(named.filter((id) => !bars.has(id)));
  return solids.filter(
    ({ of, with: held }) =>
      named.some((id) => id === of.id || id.startsWith(`${of.id}/`)) || held.some((id) => joints.has(id)),
  );
}

const edgesOf = ({ id, low, high }: Box): readonly Band[] =>
  boxEdges(low, high).map((points) => ({ points, ink: ZONE, wide: { units: 1.2 }, dashes: "5 3", name: id }));

/** From near by: what is named, and what is round it, so that nothing else stands before it. */
function near(scene: Scene, own: readonly Solid[], { min, max }: Bounds3, title: string): string {
  const at = midpoint(min, max);
  const radius = Math.max(ROOM * distance(min, max), LEAST);
  const all = boundsOfSolids(scene.solids);
  const held = new Set(own.flatMap((solid) => solid.with));
  const looks = new Map<Solid, Look>();
  for (const solid of scene.solids) {
    const marked = own.includes(solid);
    if (!marked && (solid.kind === "panel" || !boundsOverlap(boundsOfSolids([solid]), { min: at, max: at }, radius)))
      continue;
    if (!marked && solid.kind === "bar" && !held.has(solid.of.id) && own.some(({ kind }) => kind === "screw")) continue;
    const drawn = roundAbout(solid, at, radius);
    if (drawn) looks.set(drawn, marked ? "marked" : "plain");
  }
  return lineDrawing(
    { ...scene, solids: [...looks.keys()] },
    {
      view: viewFrom("near", cornerFor(own, at, midpoint(all.min, all.max)), [0, 0, 1]),
      size: SIZE,
      title,
      look: (solid) => looks.get(solid) ?? "plain",
      focus: { at, radius },
    },
  );
}

/** Of the frame no less is seen round parts than this share of its size, and so much of their own. */
const SEEN = 0.28;
const ROUND = 0.62;

/** What is named with so much of the frame round it that its place is known; all of it where that is most of the frame. */
function focusOn(scene: Scene, own: readonly Solid[], boxes: readonly Box[]): { at: Vec3; radius: number } | undefined {
  const all = boundsOfSolids(scene.solids);
  const { min, max } = boundsOf([
    ...own.flatMap(({ prism }) => prism.vertices),
    ...boxes.flatMap(({ low, high }) => [low, high]),
  ]);
  const size = distance(all.min, all.max);
  const radius = Math.max(ROUND * distance(min, max), SEEN * size);
  return radius < size / 2.5 ? { at: midpoint(min, max), radius } : undefined;
}

/** In the frame, all else held back. */
function whole(scene: Scene, own: readonly Solid[], boxes: readonly Box[], title: string): string {
  const looks = new Map<Solid, Look>();
  const focus = focusOn(scene, own, boxes);
  for (const solid of scene.solids) {
    if (focus && !inPicture(solid, focus)) continue;
    const marked = own.includes(solid);
    const large = solid.kind === "bar" || solid.kind === "stand";
    if (marked || large) looks.set({ ...solid, surfaces: skins(solid.prism) }, marked ? "marked" : "faint");
  }
  return lineDrawing(
    { ...scene, solids: [...looks.keys()] },
    {
      ...(focus ? { focus } : {}),
      view: views.isometric,
      size: SIZE,
      finest: 2,
      title,
      look: (solid) => looks.get(solid) ?? "plain",
      bands: boxes.flatMap(edgesOf),
    },
  );
}

/**
 * The parts of these names: from near by where they are small or meet at one place, else on the whole frame, each if there is still
 * room for such a picture. Undefined where none of them has a shape.
 */
export function placePicture(
  scene: Scene,
  named: readonly string[],
  boxes: readonly Box[],
  room: { readonly title: string; near(): boolean; whole(): boolean },
): PlacePicture | undefined {
  const own = namedIn(scene, named);
  const small = own.filter(({ kind }) => kind !== "bar" && kind !== "panel");
  const bounds = small.length > 0 ? boundsOfSolids(small) : meeting(own);
  if (bounds && boxes.length === 0 && distance(bounds.min, bounds.max) < WIDE)
    return room.near() ? { svg: near(scene, own, bounds, room.title), seen: "near" } : undefined;
  if (own.length + boxes.length === 0 || !room.whole()) return undefined;
  return { svg: whole(scene, own, boxes, room.title), seen: "whole" };
}

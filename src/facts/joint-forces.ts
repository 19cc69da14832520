import { corners as boxCorners } from "../geometry/box.ts";
import { add, along, cross, dot, length, perpendicularPair, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import { elasticGroup, tiltingPulls } from "../mechanics/fasteners/elastic-group.ts";
import { type Body, bodies } from "./bodies.ts";
import { type Clamp, clamping } from "./clamping.ts";
import { defineFact } from "./fact.ts";
import type { View } from "./response.ts";
import { type Link, structure } from "./structure.ts";

/** What one clamp of a joint bears under one combination, N. */
export interface ClampForce {
  readonly clamp: Clamp;
  /** Across the screw: friction holds it. */
  readonly shear: number;
  /** Along the screw, off the face, from a straight pull. */
  readonly pull: number;
  /** Along the screw from the joint being bent open; pressed faces elsewhere make up for it. */
  readonly bent: number;
}

/** A turn that only the friction under one screw takes, N·m. */
export interface LoneTurn {
  readonly clamp: Clamp;
  readonly torsion: number;
}

export interface Borne {
  readonly clamps: readonly ClampForce[];
  readonly turns: readonly LoneTurn[];
}

export interface JointForces {
  readonly index: number;
  readonly link: Link;
  /** All that the joint bears; or only the weight that it passes. */
  borne(view: View, what?: "weight"): Borne;
}

interface Wrench {
  readonly force: Vec3;
  readonly moment: Vec3;
}

const ALIGNED = 0.999;
const NOTHING = 1e-12;

/** Off the bar that the clamp presses on. */
const offFace = (clamp: Clamp): Vec3 => scale(clamp.placed.axis, clamp.placed.into.kind === "bore" ? 1 : -1);
const pointOf = ({ placed }: Clamp): Vec3 => along(placed.seat, placed.axis, placed.grip);

/** Forces in the plane, one a clamp (elastic vector method), and the torsion that a lone clamp is left with. */
function inPlane(
  clamps: readonly Clamp[],
  normal: Vec3,
  at: Vec3,
  w: Wrench,
): { readonly shears: readonly Vec3[]; readonly torsion: number } {
  const [u, v] = perpendicularPair(normal);
  const flat = (r: Vec3): readonly [number, number] => [dot(r, u), dot(r, v)];
  const fasteners = clamps.map((clamp) => ({ at: flat(subtract(pointOf(clamp), at)) }));
  const force = flat(w.force);
  const moment = dot(w.moment, normal);
  const [first] = fasteners;
  const lone = first && fasteners.every((f) => Math.hypot(f.at[0] - first.at[0], f.at[1] - first.at[1]) < 1e-6);
  if (!first || lone) {
    const [x, y] = first?.at ?? [0, 0];
    const share: Vec3 = scale(add(scale(u, force[0]), scale(v, force[1])), 1 / Math.max(1, clamps.length));
    // About the screw itself: the moment at the joint's point less what its own force makes there.
    return { shears: clamps.map(() => share), torsion: moment - (x * force[1] - y * force[0]) };
  }
  const { forces } = elasticGroup(fasteners, { force, at: [0, 0], moment });
  return { shears: forces.map((f) => add(scale(u, f[0]), scale(v, f[1]))), torsion: 0 };
}

/** Pull of each clamp when the joint is bent open about the edge that is pressed; a push square to the face helps. */
function tilted(
  clamps: readonly Clamp[],
  normal: Vec3,
  at: Vec3,
  w: Wrench,
  corners: readonly Vec3[],
): readonly number[] {
  const bend = subtract(w.moment, scale(normal, dot(w.moment, normal)));
  const size = length(bend);
  if (size < NOTHING || corners.length === 0) return clamps.map(() => 0);
  const lift = (p: Vec3): number => dot(cross(scale(bend, 1 / size), subtract(p, at)), normal);
  let edge = Infinity;
  for (const corner of corners) edge = Math.min(edge, lift(corner));
  const push = Math.max(0, -dot(w.force, normal));
  const left = Math.max(0, size + push * edge);
  const arms = clamps.map((clamp) => Math.max(0, lift(pointOf(clamp)) - edge));
  return left > 0 && arms.some((arm) => arm > 0) ? tiltingPulls(arms, left) : clamps.map(() => 0);
}

/** Corners of what is pressed on the face: the cut end and the legs that lie on it. */
function footprint(link: Link, body: Body): readonly Vec3[] {
  const corners: Vec3[] = [];
  for (const connector of link.connectors) for (const solid of connector.solids) corners.push(...boxCorners(solid));
  for (const y of [-body.half.y, body.half.y])
    for (const z of [-body.half.z, body.half.z]) corners.push(along(along(link.at, body.axes.y, y), body.axes.z, z));
  return corners;
}

function wrenchOn(view: View, index: number, body: Body, what: "weight" | undefined): Wrench {
  const [fx, fy, fz, mx, my, mz] = view.link(index);
  const { x, y, z } = body.axes;
  const whole = (a: number, b: number, c: number): Vec3 => add(add(scale(x, -a), scale(y, -b)), scale(z, -c));
  // What the bar puts on its connectors: the opposite of what they put on it.
  const force = whole(fx, fy, fz);
  if (what === "weight") return { force: [0, 0, force[2]], moment: [0, 0, 0] };
  return { force, moment: whole(mx, my, mz) };
}

function borneBy(
  link: Link,
  w: Wrench,
  clampsOf: (bar: string) => readonly Clamp[],
  corners: readonly Vec3[],
  weightOnly: boolean,
): Borne {
  const clamps: ClampForce[] = [];
  const turns: LoneTurn[] = [];
  const lugged = link.connectors.some(({ part }) => "lugs" in part && part.lugs) || link.connectors.length > 1;
  const far = clampsOf(link.onto);
  const [first] = far;
  if (!first) return { clamps, turns };
  const normal = offFace(first);
  const face = far.filter((clamp) => dot(offFace(clamp), normal) > ALIGNED);
  const { shears, torsion } = inPlane(
    face,
    normal,
    link.at,
    weightOnly ? { ...w, moment: centred(face, normal, link.at, w.force) } : w,
  );
  const pull = Math.max(0, dot(w.force, normal)) / face.length;
  const bent = tilted(face, normal, link.at, w, corners);
  if (torsion !== 0 && !lugged) turns.push({ clamp: first, torsion: Math.abs(torsion) });
  const passed = new Map<Clamp["connector"], Vec3>();
  for (const [i, clamp] of face.entries()) {
    const shear = shears[i] ?? [0, 0, 0];
    clamps.push({ clamp, shear: length(shear), pull, bent: bent[i] ?? 0 });
    const sum = passed.get(clamp.connector) ?? [0, 0, 0];
    passed.set(clamp.connector, add(sum, add(shear, scale(normal, pull + (bent[i] ?? 0)))));
  }
  for (const [connector, force] of passed) {
    const near = clampsOf(link.bar).filter((clamp) => clamp.connector === connector);
    const [one] = near;
    if (!one) continue;
    const off = offFace(one);
    if (connector.part.kind === "plate") {
      const { shears: own } = inPlane(near, off, link.at, w);
      for (const [i, clamp] of near.entries())
        clamps.push({ clamp, shear: length(own[i] ?? [0, 0, 0]), pull: 0, bent: 0 });
      continue;
    }
    // A leg under the bar bears on it; a leg over it is pulled; along its face friction holds it.
    const square = dot(force, off);
    const across = length(subtract(force, scale(off, square))) / near.length;
    for (const clamp of near) clamps.push({ clamp, shear: across, pull: Math.max(0, -square) / near.length, bent: 0 });
  }
  return { clamps, turns };
}

/** Moment at the joint's point for which a force passes through the middle of its clamps: weight alone is shared evenly. */
function centred(clamps: readonly Clamp[], normal: Vec3, at: Vec3, force: Vec3): Vec3 {
  const middle = scale(
    clamps.reduce((sum, clamp) => add(sum, pointOf(clamp)), [0, 0, 0] as Vec3),
    1 / clamps.length,
  );
  const moment = cross(subtract(middle, at), force);
  return scale(normal, dot(moment, normal));
}

/** What the clamps of every fastened joint bear: docs/method/joints. */
export const jointForces = defineFact<
  readonly JointForces[],
  { structure: typeof structure; clamping: typeof clamping; bodies: typeof bodies }
>({
  id: "joint-forces",
  needs: { structure, clamping, bodies },
  compute({ structure: { links }, clamping: known, bodies: all }) {
    const list: JointForces[] = [];
    for (const [index, link] of links.entries()) {
      const body = all.get(link.bar);
      const clamps = link.connectors.flatMap((connector) => known.of(connector));
      if (!body || clamps.length === 0) continue;
      const corners = footprint(link, body);
      const of = (bar: string): readonly Clamp[] => clamps.filter((clamp) => clamp.bar === bar);
      const remembered = new Map<View, Borne>();
      list.push({
        index,
        link,
        borne(view, what) {
          if (what === "weight") return borneBy(link, wrenchOn(view, index, body, what), of, corners, true);
          let borne = remembered.get(view);
          if (!borne) {
            borne = borneBy(link, wrenchOn(view, index, body, what), of, corners, false);
            remembered.set(view, borne);
          }
          return borne;
        },
      });
    }
    return list;
  },
});

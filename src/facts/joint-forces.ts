import { corners as boxCorners } from "../geometry/box.ts";
import {
  add,
  along,
  cross,
  dot,
  length,
  perpendicularPair,
  scale,
  subtract,
  type Vec2,
  type Vec3,
} from "../geometry/vector.ts";
import { elasticGroup, type GroupLoad, tiltingPulls } from "../mechanics/fasteners/elastic-group.ts";
import { type Body, bodies } from "./bodies.ts";
import { type Clamp, clamping } from "./clamping.ts";
import { defineFact } from "./fact.ts";
import { hanging } from "./hanging.ts";
import { platePrint } from "./plate-print.ts";
import type { View } from "./response.ts";
import { type Link, structure } from "./structure.ts";

/** Clamps that share what acts in the plane of a face, in the order of what they bear, and where they press; m, N, N·m. */
export interface ClampGroup {
  readonly at: readonly Vec2[];
  readonly load: GroupLoad;
}

/** What one clamp of a joint bears under one combination, N. */
export interface ClampForce {
  readonly clamp: Clamp;
  /** Across the screw: friction holds it. */
  readonly shear: number;
  /** Along the screw, off the face, from a straight pull. */
  readonly pull: number;
  /** Along the screw from the joint being bent open; none in strength combinations, see `Borne`. */
  readonly bent: number;
  /** The group that shares the shear by the elastic vector method, one object for all of it; none for a clamp by itself. */
  readonly group?: ClampGroup | undefined;
}

/** A turn that only the friction under one screw takes, N·m. */
export interface LoneTurn {
  readonly clamp: Clamp;
  readonly torsion: number;
}

/**
 * Bending of a joint is borne for working loads only: beyond them it opens or slips a little, and the moment goes elsewhere, while
 * what balances the loads stays (EN 1993-1-8:2005, 3.4.1: slip-resistant in use, category B; at ultimate, category C).
 */
export interface Borne {
  readonly clamps: readonly ClampForce[];
  readonly turns: readonly LoneTurn[];
}

export interface JointForces {
  readonly index: number;
  readonly link: Link;
  readonly clamps: readonly Clamp[];
  /** All that the joint bears; or only the weight that it passes. */
  borne(view: View, what?: "weight"): Borne;
}

interface Wrench {
  readonly force: Vec3;
  readonly moment: Vec3;
}

const ALIGNED = 0.999;
const NOTHING = 1e-12;
/** A screw within this of the edge that is pressed has no lever over it, m. */
const NO_ARM = 1e-6;

/** Off the bar that the clamp presses on. */
const offFace = (clamp: Clamp): Vec3 => scale(clamp.placed.axis, clamp.placed.into.kind === "bore" ? 1 : -1);
const pointOf = ({ placed }: Clamp): Vec3 => along(placed.seat, placed.axis, placed.grip);

/** Forces in the plane, one a clamp (elastic vector method), and the torsion that a lone clamp is left with. */
function inPlane(
  clamps: readonly Clamp[],
  normal: Vec3,
  at: Vec3,
  w: Wrench,
): { readonly shears: readonly Vec3[]; readonly torsion: number; readonly group?: ClampGroup } {
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
  const load: GroupLoad = { force, at: [0, 0], moment };
  const { forces } = elasticGroup(fasteners, load);
  const group = { at: fasteners.map((fastener) => fastener.at), load };
  return { shears: forces.map((f) => add(scale(u, f[0]), scale(v, f[1]))), torsion: 0, group };
}

/** A corner of what is pressed on the face: of a connector's leg, or of the cut end. */
interface Corner {
  readonly at: Vec3;
  readonly of: Clamp["connector"] | undefined;
}

interface Tilt {
  readonly pulls: readonly number[];
  /** The connector whose leg is pressed in turn; undefined where the cut end is. */
  readonly pressed: Clamp["connector"] | undefined;
}

/** Pull of each clamp when the joint is bent open about the edge that is pressed; a push square to the face helps. */
function tilted(clamps: readonly Clamp[], normal: Vec3, at: Vec3, w: Wrench, corners: readonly Corner[]): Tilt {
  const bend = subtract(w.moment, scale(normal, dot(w.moment, normal)));
  const size = length(bend);
  if (size < NOTHING) return { pulls: clamps.map(() => 0), pressed: undefined };
  const lift = (p: Vec3): number => dot(cross(scale(bend, 1 / size), subtract(p, at)), normal);
  let edge = 0;
  let pressed: Clamp["connector"] | undefined;
  for (const corner of corners) if (lift(corner.at) < edge - NOTHING) [edge, pressed] = [lift(corner.at), corner.of];
  const push = Math.max(0, -dot(w.force, normal));
  const left = Math.max(0, size + push * edge);
  const arms = clamps.map((clamp) => Math.max(0, lift(pointOf(clamp)) - edge));
  const pulls = left > 0 && arms.some((arm) => arm > NO_ARM) ? tiltingPulls(arms, left) : clamps.map(() => 0);
  return { pulls, pressed };
}

/** Corners of what is pressed on the face of a bar: of plates and legs that lie on it, and of the cut end that butts on it. */
function footprint(link: Link, body: Body, onto: Body): readonly Corner[] {
  const corners: Corner[] = [];
  for (const connector of link.connectors)
    if (connector.outline) for (const at of platePrint(connector, onto)) corners.push({ at, of: connector });
    else for (const solid of connector.solids) for (const at of boxCorners(solid)) corners.push({ at, of: connector });
  if (!link.byEnd) return corners;
  for (const y of [-body.half.y, body.half.y])
    for (const z of [-body.half.z, body.half.z])
      corners.push({ at: along(along(link.at, body.axes.y, y), body.axes.z, z), of: undefined });
  return corners;
}

/** What is pressed on the bar that runs past, and by a plate on the bar that ends there. */
interface Print {
  readonly far: readonly Corner[];
  near(connector: Clamp["connector"]): readonly Corner[];
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
  print: Print,
  weightOnly: boolean,
  bends: boolean,
): Borne {
  const clamps: ClampForce[] = [];
  const turns: LoneTurn[] = [];
  const lugged = link.connectors.some(({ part }) => "lugs" in part && part.lugs) || link.connectors.length > 1;
  const far = clampsOf(link.onto);
  const [first] = far;
  if (!first) return { clamps, turns };
  const normal = offFace(first);
  const face = far.filter((clamp) => dot(offFace(clamp), normal) > ALIGNED);
  const { shears, torsion, group } = inPlane(
    face,
    normal,
    link.at,
    weightOnly ? { ...w, moment: centred(face, normal, link.at, w.force) } : w,
  );
  const pull = Math.max(0, dot(w.force, normal)) / face.length;
  const tilt = bends ? tilted(face, normal, link.at, w, print.far) : undefined;
  const bent = tilt?.pulls ?? [];
  if (torsion !== 0 && !lugged) turns.push({ clamp: first, torsion: Math.abs(torsion) });
  const passed = new Map<Clamp["connector"], Vec3>();
  for (const [i, clamp] of face.entries()) {
    const shear = shears[i] ?? [0, 0, 0];
    clamps.push({ clamp, shear: length(shear), pull, bent: bent[i] ?? 0, group });
    const sum = passed.get(clamp.connector) ?? [0, 0, 0];
    passed.set(clamp.connector, add(sum, add(shear, scale(normal, pull + (bent[i] ?? 0)))));
  }
  for (const [connector, all] of passed) {
    // What presses the leg pushes it back; a push along the bar goes through its cut end.
    const back = tilt?.pressed === connector ? bent.reduce((sum, one) => sum + one, 0) : 0;
    const force = subtract(all, scale(normal, Math.min(back, Math.max(0, dot(all, normal)))));
    const near = clampsOf(link.bar).filter((clamp) => clamp.connector === connector);
    const [one] = near;
    if (!one) continue;
    const off = offFace(one);
    if (connector.part.kind === "plate") {
      const own = inPlane(near, off, link.at, w);
      // The bar draws on the plate where the plate draws on the other bar the other way.
      const back: Wrench = { force: scale(w.force, -1), moment: scale(w.moment, -1) };
      const drawn = Math.max(0, dot(back.force, off)) / near.length;
      const opened = bends ? tilted(near, off, link.at, back, print.near(connector)).pulls : [];
      for (const [i, clamp] of near.entries())
        clamps.push({
          clamp,
          shear: length(own.shears[i] ?? [0, 0, 0]),
          pull: drawn,
          bent: opened[i] ?? 0,
          group: own.group,
        });
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
  { structure: typeof structure; clamping: typeof clamping; bodies: typeof bodies; hanging: typeof hanging }
>({
  id: "joint-forces",
  needs: { structure, clamping, bodies, hanging },
  compute({ structure: { links }, clamping: known, bodies: all, hanging: hung }) {
    const list: JointForces[] = [];
    const rests = new Set(hung.flatMap((one) => (one.rests ? [one.joint.id] : [])));
    for (const [index, link] of links.entries()) {
      const body = all.get(link.bar);
      const clamps = link.connectors.flatMap((connector) => known.of(connector));
      if (!body || clamps.length === 0) continue;
      const onto = all.get(link.onto);
      const print: Print = {
        far: onto ? footprint(link, body, onto) : [],
        near: (connector) => platePrint(connector, body).map((at) => ({ at, of: connector })),
      };
      const of = (bar: string): readonly Clamp[] => clamps.filter((clamp) => clamp.bar === bar);
      const wrench = (view: View, what: "weight" | undefined): Wrench => {
        const whole = wrenchOn(view, index, body, what);
        // An end that rests on something passes its weight there.
        return rests.has(link.joint.id)
          ? { ...whole, force: [whole.force[0], whole.force[1], Math.max(0, whole.force[2])] }
          : whole;
      };
      const remembered = new Map<View, Borne>();
      list.push({
        index,
        link,
        clamps,
        borne(view, what) {
          if (what === "weight") return borneBy(link, wrench(view, what), of, print, true, false);
          let borne = remembered.get(view);
          if (!borne) {
            borne = borneBy(link, wrench(view, what), of, print, false, view.combination.kind !== "strength");
            remembered.set(view, borne);
          }
          return borne;
        },
      });
    }
    return list;
  },
});

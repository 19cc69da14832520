import { areaOf, difference, union } from "../geometry/clip.ts";
import { area, type Bounds2, bounds, type Region, type Ring, signedArea } from "../geometry/polygon.ts";
import { dot, subtract, type Vec3 } from "../geometry/vector.ts";
import type { BarEnd } from "../model/frame.ts";
import type { EndName, Ref } from "../model/ref.ts";
import type { Profile } from "../model/stock/stock.ts";
import { up } from "./axes.ts";
import { type Body, bodies, cutPoint } from "./bodies.ts";
import { contacts, TOUCH } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { FINGERTIP } from "./reach-distances.ts";
import { type LaidSheet, sheets } from "./sheets.ts";
import { standings } from "./standings.ts";

/** What is known of one cut end. */
export interface EndState {
  readonly ref: Ref<"end">;
  readonly bar: Ref<"bar">;
  readonly end: BarEnd;
  /** Middle of the cut, m, and the direction it looks. */
  readonly at: Vec3;
  readonly normal: Vec3;
  /** Over the floor, m. */
  readonly height: number;
  /** Sawn metal of the whole end, m². */
  readonly metal: number;
  /** Sawn metal that a fingertip gets to once caps are on, m²: nothing touches it or stands before it nearer than that. */
  readonly open: number;
  /** Sawn metal that nothing touches, without the caps that the frame's defaults put on open ends, m². */
  readonly openWithoutCap: number;
  readonly capped: boolean;
  /** What covers it, in words. */
  readonly covers: readonly string[];
  /** The sawn metal that a fingertip gets to, caps aside, in section coordinates y and z. */
  openRegions(): readonly Region[];
}

/** Corners of a disc taken as a polygon: 64 hold its area to 0.2 %. */
const DISC_SIDES = 64;

/** Section coordinates [y, z] of a point, seen along the bar. */
function inSection(body: Body, point: Vec3): readonly [number, number] {
  const r = subtract(point, body.bar.from);
  return [dot(r, body.axes.y), dot(r, body.axes.z)];
}

function disc(centre: readonly [number, number], radius: number): Ring {
  return Array.from({ length: DISC_SIDES }, (_, i): readonly [number, number] => {
    const angle = (2 * Math.PI * i) / DISC_SIDES;
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
  });
}

/** Something flat that lies over the end or stands before it. */
interface Cover {
  readonly by: string;
  /** How far it stands off the cut, m. */
  readonly gap: number;
  readonly region: Region;
  /** Diameter of a disc about the middle of the section, m: ends of one profile under one kind of foot are clipped once. */
  readonly disc?: number;
}

/** A sheet that lies against the end or stands before it, its outline in section coordinates. */
function sheetOver(body: Body, end: EndName, sheet: LaidSheet): Cover | undefined {
  const { plane } = body.cuts[end];
  if (dot(plane.normal, sheet.normal) < 0.999) return undefined;
  const gap = Math.abs(dot(subtract(sheet.corners[0], plane.point), sheet.normal));
  const region = { outer: sheet.corners.map((corner) => inSection(body, corner)), holes: [] };
  return gap > FINGERTIP ? undefined : { by: sheet.panel.ref.id, gap, region };
}

const underDiscs = new WeakMap<Profile, Map<number, number>>();

/** Metal of a section outside a disc about its middle, m². */
function outsideDisc(profile: Profile, diameter: number): number {
  let known = underDiscs.get(profile);
  if (!known) {
    known = new Map();
    underDiscs.set(profile, known);
  }
  const held = known.get(diameter);
  if (held !== undefined) return held;
  const left = areaOf(difference([profile.region], [{ outer: disc([0, 0], diameter / 2), holes: [] }]));
  known.set(diameter, left);
  return left;
}

/** Sections end this little inside what covers them and still count as covered, m: rounding. */
const ROUNDING = 1e-8;

/** Whether a convex outline holds a whole rectangle: then no clipping is needed. */
function holdsAll(outline: Ring, { min, max }: Bounds2): boolean {
  const turn = signedArea(outline) < 0 ? -1 : 1;
  return outline.every((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    const [du, dv] = [b[0] - a[0], b[1] - a[1]];
    const size = Math.hypot(du, dv);
    if (size < ROUNDING) return true;
    return [min, max, [min[0], max[1]] as const, [max[0], min[1]] as const].every(
      (p) => (turn * (du * (p[1] - a[1]) - dv * (p[0] - a[0]))) / size > -ROUNDING,
    );
  });
}

/** Metal of a section that nothing covers. */
function uncovered(section: Region, covered: readonly Region[]): readonly Region[] {
  if (covered.length === 0) return [section];
  const box = bounds(section);
  if (covered.some((cover) => holdsAll(cover.outer, box))) return [];
  return difference([section], union(covered));
}

function stateOf(body: Body, name: EndName, near: readonly Cover[], floor: number): EndState {
  const found = near.filter(({ gap }) => gap <= TOUCH);
  const end = body.bar.ends[name];
  const { plane } = body.cuts[name];
  const section: Region = body.bar.profile.region;
  // Seen along the bar an angled cut shows the plain section; the sawn face is larger by the slope.
  const slope = Math.max(1e-6, Math.abs(dot(plane.normal, body.axes.x)));
  const metal = area(section) / slope;
  const [only, second] = found;
  const openUnder = (covers: readonly Cover[]): readonly Region[] =>
    uncovered(
      section,
      covers.map(({ region }) => region),
    );
  const left =
    only?.disc !== undefined && !second ? outsideDisc(body.bar.profile, only.disc) : areaOf(openUnder(found));
  const openWithoutCap = left / slope;
  const touched = near.length === found.length ? openWithoutCap : areaOf(openUnder(near)) / slope;
  const capped = end.cap.kind === "part" || (end.cap.kind === "if-open" && openWithoutCap > 0);
  return {
    ref: end.ref,
    bar: body.bar.ref,
    end,
    at: cutPoint(body, name),
    normal: plane.normal,
    height: cutPoint(body, name)[2] - floor,
    metal,
    open: capped ? 0 : touched,
    openWithoutCap,
    capped,
    covers: found.map((cover) => cover.by),
    openRegions: () => openUnder(near),
  };
}

/** How much sawn metal of every cut end lies open, by clipping the section against everything that touches the cut. */
export const ends = defineFact<
  readonly EndState[],
  { bodies: typeof bodies; contacts: typeof contacts; sheets: typeof sheets; standings: typeof standings }
>({
  id: "ends",
  needs: { bodies, contacts, sheets, standings },
  compute({ bodies: all, contacts: touching, sheets: laid, standings: standing }, frame) {
    const states: EndState[] = [];
    for (const body of all.values()) {
      for (const name of ["from", "to"] as const) {
        const covers: Cover[] = [];
        for (const contact of touching.ofEnd(body.bar.ref.id, name)) {
          if (contact.gap > FINGERTIP) continue;
          covers.push({
            by: contact.b.bar,
            gap: contact.gap,
            region: { outer: contact.overlap.map((p) => inSection(body, p)), holes: [] },
          });
        }
        for (const stand of standing.onEnd(body.bar.ref.id, name)) {
          covers.push({
            by: stand.stand.ref.id,
            gap: 0,
            region: { outer: disc([0, 0], stand.cover / 2), holes: [] },
            disc: stand.cover,
          });
        }
        for (const sheet of laid) {
          const cover = sheetOver(body, name, sheet);
          if (cover) covers.push(cover);
        }
        const { plane } = body.cuts[name];
        const offFloor = Math.abs(cutPoint(body, name)[2] - frame.floor.z);
        if (dot(plane.normal, up) < -0.999 && offFloor < FINGERTIP) {
          const { min, max } = bounds(body.bar.profile.region);
          covers.push({
            by: "the floor",
            gap: offFloor,
            region: { outer: [min, [max[0], min[1]], max, [min[0], max[1]]], holes: [] },
          });
        }
        states.push(stateOf(body, name, covers, frame.floor.z));
      }
    }
    return states;
  },
});

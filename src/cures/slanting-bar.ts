import { axesOf } from "../facts/axes.ts";
import { sectionOf } from "../facts/sections.ts";
import { add, along, dot, normalise, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Bar, Frame } from "../model/frame.ts";
import type { Profile, SideTie } from "../model/stock/stock.ts";
import type { Edit, Patient } from "./cure.ts";
import type { OuterPair } from "./posts.ts";
import { pointInFile } from "./written.ts";

/** What a slanting bar is made of: the ties that hold it and its profile. */
export interface SlantingKit {
  readonly tie: SideTie;
  readonly profile: Profile;
}

/** Faces further apart than this, m, are not one plane for a bar that lies on both. */
const FLUSH = 0.0001;

const outward: Readonly<Record<OuterPair["on"], Vec3>> = {
  "+x": [1, 0, 0],
  "-x": [-1, 0, 0],
  "+y": [0, 1, 0],
  "-y": [0, -1, 0],
};

export const wayOut = (on: OuterPair["on"]): Vec3 => outward[on];

/** Half of what a bar measures in a direction across it, m. */
export function halfAcross(bar: Bar, direction: Vec3): number {
  const { y, z } = axesOf(bar);
  return (Math.abs(dot(y, direction)) * bar.profile.height + Math.abs(dot(z, direction)) * bar.profile.width) / 2;
}

/** Where the face of a bar that looks in a direction lies along it, m. */
const faceAt = (bar: Bar, direction: Vec3): number => dot(bar.from, direction) + halfAcross(bar, direction);

/** Whether the faces of two bars that look in a direction lie in one plane. */
export const flush = (a: Bar, b: Bar, direction: Vec3): boolean =>
  Math.abs(faceAt(a, direction) - faceAt(b, direction)) < FLUSH;

const onePitch = ({ height, width, pitch, slots }: Profile): boolean =>
  Math.abs(height - width) < FLUSH && Math.abs(height - pitch) < FLUSH && slots.every(({ closed }) => !closed);

/**
 * The tie of stock for the slots of two bars, and a square profile of one slot a side: the bar's own where it is one, else
 * one the frame uses, else the lightest of stock with lips as strong.
 */
export function slantingKit(frame: Frame, a: Bar, b: Bar): SlantingKit | undefined {
  const { slotSize, pitch, lipRating } = a.profile;
  if (b.profile.slotSize !== slotSize) return undefined;
  const tie = [...frame.stock.connectors.values()].find(
    (part): part is SideTie => part.kind === "side-tie" && part.slotSize === slotSize,
  );
  const fits = (profile: Profile): boolean =>
    onePitch(profile) && profile.slotSize === slotSize && profile.pitch === pitch && profile.lipRating >= lipRating;
  const known = [a, ...frame.bars].map(({ profile }) => profile).find(fits);
  const lightest = (): Profile | undefined =>
    [...frame.stock.profiles.values()].filter(fits).sort((p, q) => sectionOf(p).A - sectionOf(q).A)[0];
  const profile = known ?? lightest();
  return tie && profile && { tie, profile };
}

/** How far a slanting bar runs past its ties, m: as far as it is deep to each side. */
export const past = ({ profile }: SlantingKit): number => profile.height / 2;

/** How far a slanting bar stands out of the faces it lies on, m. */
export const thickness = ({ profile }: SlantingKit): number => profile.width;

/** How far the end of a slanting bar reaches beyond its tie along z, m, at most. */
export const endReach = (kit: SlantingKit): number => Math.SQRT2 * past(kit);

/**
 * A bar on the outer faces of two others, held by a tie on the axis of each, square cuts at both ends. `from` and `to` are
 * points on the axes of the two.
 */
export function slantingBar(
  kit: SlantingKit,
  [first, from]: readonly [bar: Bar, at: Vec3],
  [second, to]: readonly [bar: Bar, at: Vec3],
  on: OuterPair["on"],
  id: string,
  patient: Patient,
): readonly Edit[] {
  const { file } = patient;
  const out = wayOut(on);
  const face = halfAcross(first, out);
  const lift = face + kit.profile.width / 2;
  const way = normalise(subtract(to, from));
  const [low, high] = [
    along(add(from, scale(out, lift)), way, -past(kit)),
    along(add(to, scale(out, lift)), way, past(kit)),
  ];
  const pin = (bar: Bar, at: Vec3): Edit => ({
    pointer: "/pivots/-",
    to: {
      bars: [id, bar.ref.id],
      part: kit.tie.name,
      at: pointInFile(along(at, out, face), file),
      axis: on,
      locked: true,
    },
  });
  return [
    {
      pointer: "/bars/-",
      to: {
        id,
        profile: kit.profile.name,
        from: pointInFile(low, file),
        to: pointInFile(high, file),
        ends: { both: { cut: "as-drawn" } },
      },
    },
    pin(first, from),
    pin(second, to),
  ];
}

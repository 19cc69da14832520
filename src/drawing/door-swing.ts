import { doorSwings } from "../facts/door-swings.ts";
import { factOf } from "../facts/fact.ts";
import { type Pin, turned } from "../geometry/turning-body.ts";
import { add, along, distance, dot, normalise, rotateAbout, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import type { Band, Ghost } from "./line-drawing.ts";
import type { Scene } from "./scene.ts";
import { type Solid, skins } from "./solids/solid.ts";

/** A door as it swings. */
export interface Swinging {
  readonly door: string;
  readonly pin: Pin;
  /** Shut and fully open, rad about the pin, as the drawing has it at zero. */
  readonly swing: readonly [number, number];
  /** Where on its way it strikes something, from shut; undefined where it does not. */
  readonly strikes: number | undefined;
  /** What goes with it. */
  readonly parts: readonly Solid[];
  /** The way of the farthest point of its leaf from shut to open, m. */
  readonly arc: readonly Vec3[];
}

/** A step of the arc, rad. */
const STEP = Math.PI / 36;
const INK = "#4d4a45";
const STRUCK = "#96270f";

const turnedPoint = (point: Vec3, { point: at, axis }: Pin, angle: number): Vec3 =>
  add(at, rotateAbout(subtract(point, at), axis, angle));

/** Bars and panels: what a door is drawn by, without its fittings. */
export const isLeaf = ({ kind }: Solid): boolean => kind === "bar" || kind === "panel";

/** The corner that lies farthest from the pin. */
export function farthest(parts: readonly Solid[], { point, axis }: Pin): Vec3 {
  const arm = (p: Vec3): number => {
    const from = subtract(p, point);
    return distance(from, along([0, 0, 0], axis, dot(from, axis)));
  };
  return parts.flatMap(({ prism }) => prism.vertices).reduce((a, b) => (arm(b) > arm(a) + 1e-6 ? b : a), point);
}

/** The doors of a frame with what swings with each. */
export function swingsOf(frame: Frame, scene: Scene): readonly Swinging[] {
  const bars = new Set(frame.bars.map(({ ref }) => ref.id));
  return factOf(doorSwings, frame).flatMap(({ door, first, whileOpen }): readonly Swinging[] => {
    const [hinge] = door.hinges;
    if (!hinge) return [];
    const pin = { point: hinge.at, axis: normalise(door.axis) };
    const own = new Set([...door.bars, ...door.panels]);
    const parts = scene.solids.filter(({ of, with: held, on }) => {
      const carriers = on === undefined ? held.filter((id) => bars.has(id)) : [on];
      return own.has(of.id) || (carriers.length > 0 && carriers.every((id) => own.has(id)));
    });
    if (parts.length === 0) return [];
    const [shut, open] = door.swing;
    const strikes = [first?.turn, whileOpen?.turn].filter((turn) => turn !== undefined);
    const tip = farthest(parts.filter(isLeaf), pin);
    const steps = Math.max(2, Math.ceil(Math.abs(open - shut) / STEP));
    return [
      {
        door: door.ref.id,
        pin,
        swing: [shut, open],
        strikes: strikes.length > 0 ? Math.min(...strikes) : undefined,
        parts,
        arc: Array.from({ length: steps + 1 }, (_, i) => turnedPoint(tip, pin, shut + ((open - shut) * i) / steps)),
      },
    ];
  });
}

/** A solid of a door turned from where it is drawn by an angle, rad. */
function opened(solid: Solid, pin: Pin, angle: number): Solid {
  const prism = turned(solid.prism, pin, angle);
  return { ...solid, prism, surfaces: skins(prism) };
}

/** The door where it stands open, or where it strikes, in outline. */
export function openDoor({ parts, pin, swing: [shut, open], strikes }: Swinging): readonly Ghost[] {
  const angle = strikes === undefined ? open : shut + Math.sign(open - shut) * strikes;
  return parts
    .filter(isLeaf)
    .map((solid) => ({ solid: opened(solid, pin, angle), ink: strikes === undefined ? INK : STRUCK, width: 0.8 }));
}

/** The arc of its farthest point: dashed as far as it goes freely, solid beyond where it strikes. */
export function arcBands({ door, arc, swing: [shut, open], strikes }: Swinging): readonly Band[] {
  const share = strikes === undefined ? 1 : strikes / Math.abs(open - shut);
  const free = Math.round(share * (arc.length - 1));
  const wide = { units: 1.2 };
  return [
    { points: arc.slice(0, free + 1), ink: INK, wide, dashes: "5 3", name: door },
    ...(free < arc.length - 1 ? [{ points: arc.slice(free), ink: STRUCK, wide, name: door }] : []),
  ].filter(({ points }) => points.length > 1);
}

import { add, cross, dot, mix, times, unit, type Vec } from "./vec.ts";

/** An eye far away: no perspective, so that lengths compare. */
export interface Eye {
  /** Turned about z from looking along +y, and lifted above the level, rad. */
  readonly turn: number;
  readonly lift: number;
  /** Middle of the picture, mm. */
  readonly centre: Vec;
  /** Height of the picture, mm. */
  readonly height: number;
}

export interface Axes {
  readonly right: Vec;
  readonly up: Vec;
  readonly toward: Vec;
}

const STEEPEST = Math.PI / 2;

export function axesOf({ turn, lift }: Eye): Axes {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const toward: Vec = [s * Math.cos(lift), -c * Math.cos(lift), Math.sin(lift)];
  const right: Vec = [c, s, 0];
  return { right, up: cross(toward, right), toward };
}

export const turned = (eye: Eye, turn: number, lift: number): Eye => ({
  ...eye,
  turn: eye.turn + turn,
  lift: Math.max(-STEEPEST, Math.min(STEEPEST, eye.lift + lift)),
});

/** Moved sideways by parts of the picture's height. */
export function shifted(eye: Eye, dx: number, dy: number): Eye {
  const { right, up } = axesOf(eye);
  return { ...eye, centre: add(add(eye.centre, right, -dx * eye.height), up, dy * eye.height) };
}

export const nearer = (eye: Eye, factor: number, least: number, most: number): Eye => ({
  ...eye,
  height: Math.max(least, Math.min(most, eye.height / factor)),
});

/** From world to clip space, by columns, for a picture `aspect` times as wide as high; `reach` is half the depth shown, mm. */
export function matrixOf(eye: Eye, aspect: number, reach: number): Float32Array {
  const { right, up, toward } = axesOf(eye);
  const rows = [times(right, 2 / (eye.height * aspect)), times(up, 2 / eye.height), times(toward, -1 / reach)];
  const out = new Float32Array(16);
  rows.forEach((row, r) => {
    row.forEach((value, c) => {
      out[4 * c + r] = value;
    });
    out[12 + r] = -dot(row, eye.centre);
  });
  out[15] = 1;
  return out;
}

/** Where a point lies on a picture of this size, pixels from the top left. */
export function seenAt(eye: Eye, point: Vec, width: number, height: number): readonly [number, number] {
  const { right, up } = axesOf(eye);
  const from = add(point, eye.centre, -1);
  const scale = height / eye.height;
  return [width / 2 + dot(from, right) * scale, height / 2 - dot(from, up) * scale];
}

/** Between two eyes, the short way round. */
export function between(a: Eye, b: Eye, t: number): Eye {
  if (t >= 1) return b;
  const ease = t * t * (3 - 2 * t);
  const round = ((((b.turn - a.turn) % (2 * Math.PI)) + 3 * Math.PI) % (2 * Math.PI)) - Math.PI;
  return {
    turn: a.turn + round * ease,
    lift: a.lift + (b.lift - a.lift) * ease,
    centre: mix(a.centre, b.centre, ease),
    height: a.height * (b.height / a.height) ** ease,
  };
}

const QUARTER = Math.PI / 2;
/** Isometric: all three axes are foreshortened alike. */
export const VIEWS: Readonly<Record<string, { readonly turn: number; readonly lift: number }>> = {
  isometric: { turn: Math.PI / 4, lift: Math.asin(1 / Math.sqrt(3)) },
  front: { turn: 0, lift: 0 },
  right: { turn: QUARTER, lift: 0 },
  back: { turn: 2 * QUARTER, lift: 0 },
  left: { turn: -QUARTER, lift: 0 },
  top: { turn: 0, lift: QUARTER },
};

/** A view in which the box from `low` to `high` fills the picture. */
export function fitted(
  view: { readonly turn: number; readonly lift: number },
  low: Vec,
  high: Vec,
  aspect: number,
): Eye {
  const centre = mix(low, high, 0.5);
  const eye: Eye = { ...view, centre, height: 1 };
  const { right, up } = axesOf(eye);
  const half = times(add(high, low, -1), 0.5);
  const reach = (axis: Vec): number =>
    Math.abs(axis[0]) * half[0] + Math.abs(axis[1]) * half[1] + Math.abs(axis[2]) * half[2];
  return { ...eye, height: 2.15 * Math.max(reach(up), reach(right) / aspect, 1) };
}

/** The way to look at a point from outside the frame, from above, keeping near to where the eye is now. */
export function lookAt(eye: Eye, point: Vec, middle: Vec, height: number): Eye {
  const out = unit(add(point, middle, -1));
  const turn = Math.hypot(out[0], out[1]) > 0.25 ? Math.atan2(out[0], -out[1]) : eye.turn;
  // Between facing it and the isometric corner next to it, so that depth stays readable.
  const corner = Math.round((turn - Math.PI / 4) / QUARTER) * QUARTER + Math.PI / 4;
  return { turn: (turn + corner) / 2, lift: out[2] < -0.55 ? -0.35 : 0.5, centre: point, height };
}

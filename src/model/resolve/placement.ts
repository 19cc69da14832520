import type { Triple } from "../frame.ts";
import { triple } from "./values.ts";
import { cross, dot, plusTimes } from "./vectors.ts";

/** How a copy is moved from its original: x′ = rows · x + offset. */
export interface Placement {
  readonly rows: readonly [Triple, Triple, Triple];
  /** m */
  readonly offset: Triple;
  readonly mirrors: boolean;
  /** Whether directions keep: nothing turned, nothing mirrored. */
  readonly shifts: boolean;
}

const X: Triple = triple(1, 0, 0);
const Y: Triple = triple(0, 1, 0);
const Z: Triple = triple(0, 0, 1);
const NO_TURN: Placement["rows"] = [X, Y, Z];
const ORIGIN: Triple = triple(0, 0, 0);

export function shiftBy(offset: Triple): Placement {
  return { rows: NO_TURN, offset, mirrors: false, shifts: true };
}

/** Mirror in the plane square to an axis (0 x, 1 y, 2 z) at a distance (m) from zero. */
export function mirrorAcross(axis: number, at: number): Placement {
  const flip = (row: Triple, index: number): Triple => (index === axis ? plusTimes(ORIGIN, row, -1) : row);
  const offset = [0, 1, 2].map((index) => (index === axis ? 2 * at : 0));
  return {
    rows: [flip(X, 0), flip(Y, 1), flip(Z, 2)],
    offset: triple(offset[0] ?? 0, offset[1] ?? 0, offset[2] ?? 0),
    mirrors: true,
    shifts: false,
  };
}

/** Cosines of right angles come out as 6e-17; what is that near a whole number is one. */
const SNAP = 1e-15;

function snapped(value: number): number {
  const whole = Math.round(value);
  return Math.abs(value - whole) < SNAP ? whole + 0 : value;
}

/** Turn by an angle (rad), right-handed about an axis (unit vector) through a point (m). Rodrigues' rotation formula. */
export function turnAbout(axis: Triple, through: Triple, angle: number): Placement {
  const [cosine, sine] = [snapped(Math.cos(angle)), snapped(Math.sin(angle))];
  const turned = (one: Triple): Triple => {
    const side = cross(axis, one);
    const along = dot(axis, one) * (1 - cosine);
    return triple(
      snapped(one[0] * cosine + side[0] * sine + axis[0] * along),
      snapped(one[1] * cosine + side[1] * sine + axis[1] * along),
      snapped(one[2] * cosine + side[2] * sine + axis[2] * along),
    );
  };
  const [a, b, c] = [turned(X), turned(Y), turned(Z)];
  const rows: Placement["rows"] = [triple(a[0], b[0], c[0]), triple(a[1], b[1], c[1]), triple(a[2], b[2], c[2])];
  const offset = triple(
    through[0] - dot(rows[0], through),
    through[1] - dot(rows[1], through),
    through[2] - dot(rows[2], through),
  );
  return { rows, offset, mirrors: false, shifts: false };
}

export function moveVector({ rows }: Placement, vector: Triple): Triple {
  // Adding zero turns a minus zero, which would be printed, into zero.
  return triple(dot(rows[0], vector) + 0, dot(rows[1], vector) + 0, dot(rows[2], vector) + 0);
}

export function movePoint(placement: Placement, point: Triple): Triple {
  const [x, y, z] = moveVector(placement, point);
  const { offset } = placement;
  return triple(x + offset[0], y + offset[1], z + offset[2]);
}

/** An axis with a sense of turning about it: a mirror turns that round. */
export function moveAxis(placement: Placement, axis: Triple): Triple {
  const moved = moveVector(placement, axis);
  return placement.mirrors ? triple(0 - moved[0], 0 - moved[1], 0 - moved[2]) : moved;
}

/** Sizes along x, y, z of the box that holds a moved box; exact where axes fall on axes. */
export function moveSizes({ rows }: Placement, sizes: Triple): Triple {
  const along = (row: Triple): number =>
    Math.abs(row[0]) * sizes[0] + Math.abs(row[1]) * sizes[1] + Math.abs(row[2]) * sizes[2];
  return triple(along(rows[0]), along(rows[1]), along(rows[2]));
}

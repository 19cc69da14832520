import { add, cross, length, scale, subtract, type Vec3 } from "../geometry/vector.ts";

/** A line about which two bodies may turn against each other. */
export interface TurnLine {
  readonly point: Vec3;
  /** Unit vector. */
  readonly axis: Vec3;
}

/** Two rigid bodies held together so that they can only turn about these lines; none: one solid. */
export interface HingedLink {
  readonly a: number;
  readonly b: number;
  readonly about: readonly TurnLine[];
}

/** Two bodies whose flat sides bear on each other: at no point of the patch can they come nearer or part. */
export interface BearingLink {
  readonly a: number;
  readonly b: number;
  /** Corners of the patch, m. */
  readonly points: readonly Vec3[];
  readonly normal: Vec3;
}

export type RigidLink = HingedLink | BearingLink;

/** How one body moves in a free motion: an infinitesimal turn about an axis through a point, or a slide. */
export interface Motion {
  readonly body: number;
  readonly kind: "turn" | "slide";
  readonly direction: Vec3;
  /** On the axis of a turn, m; on a slide the origin. */
  readonly point: Vec3;
  /** How fast it goes beside the others that move with it: turning [rad], and the shift of the origin [m]. */
  readonly rate: { readonly turn: Vec3; readonly shift: Vec3 };
}

/** Motions below this share of the largest are rounding. */
const MOVES = 1e-6;
/** A pivot below this share of the largest diagonal is none: the rest of the matrix is then rounding (12 digits kept of 16). */
const RANK = 1e-10;

/** Where a link's lines are, about its own middle and in lengths of `size`, as six-vectors (turn, shift). */
function projector(link: HingedLink, origin: Vec3, size: number): Float64Array {
  // I − Q Qᵀ over an orthonormal basis Q of the allowed relative motions.
  const basis: Float64Array[] = [];
  for (const { point, axis } of link.about) {
    const shift = scale(cross(subtract(point, origin), axis), 1 / size);
    const v = Float64Array.from([...axis, ...shift]);
    for (const q of basis) {
      let projection = 0;
      for (let i = 0; i < 6; i += 1) projection += (q[i] ?? 0) * (v[i] ?? 0);
      for (let i = 0; i < 6; i += 1) v[i] = (v[i] ?? 0) - projection * (q[i] ?? 0);
    }
    const norm = Math.hypot(...v);
    if (norm > 1e-9) basis.push(v.map((c) => c / norm));
  }
  const p = new Float64Array(36);
  for (let i = 0; i < 6; i += 1) {
    for (let j = 0; j < 6; j += 1) {
      let value = i === j ? 1 : 0;
      for (const q of basis) value -= (q[i] ?? 0) * (q[j] ?? 0);
      p[6 * i + j] = value;
    }
  }
  return p;
}

/** Motion at `origin` from the motion (turn, shift at the middle of all links): shift + turn × origin, in lengths of size. */
function transport(origin: Vec3, size: number): Float64Array {
  const t = new Float64Array(36);
  for (let i = 0; i < 6; i += 1) t[7 * i] = 1;
  const [x, y, z] = scale(origin, 1 / size);
  // ω × r = [ω1 r2 − ω2 r1, ω2 r0 − ω0 r2, ω0 r1 − ω1 r0]
  t[6 * 3 + 1] = z;
  t[6 * 3 + 2] = -y;
  t[6 * 4 + 0] = -z;
  t[6 * 4 + 2] = x;
  t[6 * 5 + 0] = y;
  t[6 * 5 + 1] = -x;
  return t;
}

function hingedBlock(link: HingedLink, size: number): Float64Array {
  const origin: Vec3 = link.about[0]?.point ?? [0, 0, 0];
  const p = projector(link, origin, size);
  const t = transport(origin, size);
  const pt = new Float64Array(36);
  const tpt = new Float64Array(36);
  for (let i = 0; i < 6; i += 1) {
    for (let j = 0; j < 6; j += 1) {
      let sum = 0;
      for (let k = 0; k < 6; k += 1) sum += (p[6 * i + k] ?? 0) * (t[6 * k + j] ?? 0);
      pt[6 * i + j] = sum;
    }
  }
  for (let i = 0; i < 6; i += 1) {
    for (let j = 0; j < 6; j += 1) {
      let sum = 0;
      for (let k = 0; k < 6; k += 1) sum += (t[6 * k + i] ?? 0) * (pt[6 * k + j] ?? 0);
      tpt[6 * i + j] = sum;
    }
  }
  return tpt;
}

/** Sum of squares of the approach speeds at the corners of the patch. */
function bearingBlock(link: BearingLink, size: number): Float64Array {
  const sum = new Float64Array(36);
  for (const point of link.points) {
    const row = [...scale(cross(point, link.normal), 1 / size), ...link.normal];
    for (let i = 0; i < 6; i += 1) {
      for (let j = 0; j < 6; j += 1) sum[6 * i + j] = (sum[6 * i + j] ?? 0) + (row[i] ?? 0) * (row[j] ?? 0);
    }
  }
  return sum;
}

/** Free vectors of a positive semi-definite matrix: eliminated on the largest diagonal left, until none is left. */
function nullSpace(matrix: Float64Array, n: number): readonly Float64Array[] {
  const order = Array.from({ length: n }, (_, i) => i);
  const a = matrix;
  const at = (i: number, j: number): number => i * n + j;
  let largest = 0;
  for (let i = 0; i < n; i += 1) largest = Math.max(largest, a[at(i, i)] ?? 0);
  let rank = 0;
  for (; rank < n; rank += 1) {
    let best = rank;
    for (let i = rank; i < n; i += 1) {
      const [p, q] = [order[i] ?? 0, order[best] ?? 0];
      if ((a[at(p, p)] ?? 0) > (a[at(q, q)] ?? 0)) best = i;
    }
    const [here, chosen] = [order[rank] ?? 0, order[best] ?? 0];
    order[rank] = chosen;
    order[best] = here;
    const pivot = a[at(chosen, chosen)] ?? 0;
    if (pivot <= RANK * largest) break;
    for (let i = rank + 1; i < n; i += 1) {
      const row = order[i] ?? 0;
      const factor = (a[at(row, chosen)] ?? 0) / pivot;
      if (factor === 0) continue;
      for (let j = rank + 1; j < n; j += 1) {
        const column = order[j] ?? 0;
        a[at(row, column)] = (a[at(row, column)] ?? 0) - factor * (a[at(chosen, column)] ?? 0);
      }
    }
  }
  const vectors: Float64Array[] = [];
  for (let free = rank; free < n; free += 1) {
    const v = new Float64Array(n);
    v[order[free] ?? 0] = 1;
    for (let k = rank - 1; k >= 0; k -= 1) {
      const row = order[k] ?? 0;
      let sum = 0;
      for (let j = k + 1; j < n; j += 1) {
        const column = order[j] ?? 0;
        sum += (a[at(row, column)] ?? 0) * (v[column] ?? 0);
      }
      v[row] = -sum / (a[at(row, row)] ?? 1);
    }
    vectors.push(v);
  }
  return vectors;
}

/** The mean of the points of all links, m. */
function middleOf(links: readonly RigidLink[]): Vec3 {
  let sum: Vec3 = [0, 0, 0];
  let points = 0;
  for (const link of links) {
    for (const point of "about" in link ? link.about.map((line) => line.point) : link.points) {
      sum = add(sum, point);
      points += 1;
    }
  }
  return scale(sum, 1 / Math.max(points, 1));
}

/** A link seen from another origin. */
function seenFrom(origin: Vec3, link: RigidLink): RigidLink {
  if (!("about" in link)) return { ...link, points: link.points.map((point) => subtract(point, origin)) };
  return { ...link, about: link.about.map(({ point, axis }) => ({ point: subtract(point, origin), axis })) };
}

function motionsOf(vector: Float64Array, bodies: readonly number[], size: number, middle: Vec3): readonly Motion[] {
  const parts = bodies.map((body, i) => {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = vector.subarray(6 * i, 6 * i + 6);
    return { body, turn: [a, b, c] as Vec3, shift: scale([d, e, f], size) };
  });
  const most = parts.reduce((m, { turn, shift }) => Math.max(m, length(turn), length(shift) / size), 0);
  const motions: Motion[] = [];
  for (const { body, turn, shift } of parts) {
    const speed = length(turn);
    if (speed <= MOVES * most && length(shift) / size <= MOVES * most) continue;
    // What was worked out about the middle of the links is told about the origin.
    const rate = { turn, shift: subtract(shift, cross(turn, middle)) };
    if (speed > MOVES * most)
      motions.push({
        body,
        kind: "turn",
        direction: scale(turn, 1 / speed),
        point: add(middle, scale(cross(turn, shift), 1 / (speed * speed))),
        rate,
      });
    else motions.push({ body, kind: "slide", direction: scale(shift, 1 / length(shift)), point: [0, 0, 0], rate });
  }
  return motions;
}

/**
 * The motions that links leave to a set of rigid bodies, seen from one of them taken as fixed. Each is listed with the
 * bodies that move; independent motions are listed apart. First order only: what is free at first order and stops later
 * counts as free, which is the safe side. A patch that bears is taken to hold both ways, as it does wherever the line of the
 * turn runs under it: one side of it then closes whichever way the turn goes.
 *
 * @param bodies number of bodies; @param fixed the body that does not move; @param links hinged and bearing pairs, all bodies
 * connected to `fixed` through them; @param size a typical length of the frame, m, to weigh shifts against turns.
 * Source: the null space of the constraint Jacobian (J. Angeles, "Fundamentals of Robotic Mechanical Systems", 4th ed.,
 * ch. 2 and 4: twists of rigid bodies), here by its Gram matrix and elimination with diagonal pivoting.
 */
export function freeMotions(
  bodies: number,
  fixed: number,
  links: readonly RigidLink[],
  size: number,
): readonly (readonly Motion[])[] {
  const moving = Array.from({ length: bodies }, (_, i) => i).filter((i) => i !== fixed);
  const place = new Map(moving.map((body, i) => [body, i]));
  const n = 6 * moving.length;
  const gram = new Float64Array(n * n);
  // About the middle of the links: far from it a turn would be a large shift, and what a link allows would drown in rounding.
  const middle = middleOf(links);
  for (const far of links) {
    const link = seenFrom(middle, far);
    const k = "about" in link ? hingedBlock(link, size) : bearingBlock(link, size);
    const [a, b] = [place.get(link.a), place.get(link.b)];
    const spread = (row: number, column: number, sign: number): void => {
      for (let i = 0; i < 6; i += 1) {
        for (let j = 0; j < 6; j += 1) {
          const to = (6 * row + i) * n + 6 * column + j;
          gram[to] = (gram[to] ?? 0) + sign * (k[6 * i + j] ?? 0);
        }
      }
    };
    if (a !== undefined) spread(a, a, 1);
    if (b !== undefined) spread(b, b, 1);
    if (a !== undefined && b !== undefined) {
      spread(a, b, -1);
      spread(b, a, -1);
    }
  }
  return nullSpace(gram, n).map((vector) => motionsOf(vector, moving, size, middle));
}

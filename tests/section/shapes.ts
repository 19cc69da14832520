import type { Region, Ring } from "../../src/geometry/polygon.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";

/** Points given in millimetres, as a ring in metres. */
export const millimetres = (points: readonly Vec2[]): Ring => points.map(([y, z]) => [y / 1000, z / 1000]);

/** Upright rectangle b wide (y) and h high (z) about a centre [mm]. */
export const rectangle = (b: number, h: number, y = 0, z = 0): Ring =>
  millimetres([
    [y - b / 2, z - h / 2],
    [y + b / 2, z - h / 2],
    [y + b / 2, z + h / 2],
    [y - b / 2, z + h / 2],
  ]);

/** Hollow rectangle of wall t, b and h outside [mm]. */
export const box = (b: number, h: number, t: number): Region => ({
  outer: rectangle(b, h),
  holes: [rectangle(b - 2 * t, h - 2 * t)],
});

export const solid = (outer: Ring): Region => ({ outer, holes: [] });

/** Regular polygon of n sides with the area of an ellipse of half axes a and b [mm]. */
export function ellipse(a: number, b: number, n: number): Ring {
  const scale = Math.sqrt((2 * Math.PI) / n / Math.sin((2 * Math.PI) / n));
  return millimetres(
    Array.from({ length: n }, (_, i): Vec2 => {
      const angle = (2 * Math.PI * i) / n;
      return [a * scale * Math.cos(angle), b * scale * Math.sin(angle)];
    }),
  );
}

/** One point turned by k right angles. */
const quarterTurns = ([y, z]: Vec2, k: number): Vec2 => {
  const turned: readonly Vec2[] = [
    [y, z],
    [-z, y],
    [-y, -z],
    [z, -y],
  ];
  return turned[k % 4] ?? [y, z];
};

/** The outline of the lower face, turned to another side of a square and moved up [mm]. */
const side = (face: readonly Vec2[], k: number, up = 0): Ring =>
  millimetres(face.map((p) => quarterTurns(p, k)).map(([y, z]) => [y, z + up]));

const s40Face: readonly Vec2[] = [
  [-20, -20],
  [-4, -20],
  [-4, -16],
  [-8, -16],
  [-8, -10],
  [8, -10],
  [8, -16],
  [4, -16],
  [4, -20],
];

/** S40 of the reference values: 40 mm square, one slot a face, 8 wide through a 4 mm lip, then 16 wide and 6 deep. */
export const s40: Region = solid([0, 1, 2, 3].flatMap((k) => side(s40Face, k)));

/** Two S40 on each other, grown together: the slots that face each other become one cavity. */
export const stackedS40: Region = {
  outer: [
    ...side(s40Face, 0, -20),
    ...side(s40Face, 1, -20),
    ...side(s40Face, 1, 20),
    ...side(s40Face, 2, 20),
    ...side(s40Face, 3, 20),
    ...side(s40Face, 3, -20),
  ],
  holes: [
    millimetres([
      [-8, -10],
      [8, -10],
      [8, -4],
      [4, -4],
      [4, 4],
      [8, 4],
      [8, 10],
      [-8, 10],
      [-8, 4],
      [-4, 4],
      [-4, -4],
      [-8, -4],
    ]),
  ],
};

const lightCavity: readonly Vec2[] = [
  [-11, -18],
  [-11, -13.5],
  [-4, -6.5],
  [4, -6.5],
  [11, -13.5],
  [11, -18],
];
const lightFace: readonly Vec2[] = [[-20, -20], [-4, -20], [-4, -18], ...lightCavity, [4, -18], [4, -20]];
const lightCorner: readonly Vec2[] = [
  [-18, -18],
  [-12.5, -18],
  [-12.5, -12.5],
  [-18, -12.5],
];
const lightHoles: readonly Ring[] = [0, 1, 2, 3].map((k) => side(lightCorner, k)).concat([ellipse(3.4, 3.4, 24)]);

/** An invented light 40 mm square: 2 mm lips, sloping slot flanks, hollow corners, a core bore. */
export const lightSquare: Region = { outer: [0, 1, 2, 3].flatMap((k) => side(lightFace, k)), holes: lightHoles };

/** The same with the lower slot closed by a wall between its lips. */
export const lightSquareOneClosed: Region = {
  outer: [...millimetres([[-20, -20]]), ...[1, 2, 3].flatMap((k) => side(lightFace, k))],
  holes: [...lightHoles, millimetres(lightCavity)],
};

/** Turns a region by an angle [rad] about the origin, then moves it [m]. */
export function placed(region: Region, angle: number, y = 0, z = 0): Region {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const move = (ring: Ring): Ring => ring.map(([p, q]) => [y + c * p - s * q, z + s * p + c * q]);
  return { outer: move(region.outer), holes: region.holes.map(move) };
}

/** Enlarges a region. */
export function scaled(region: Region, factor: number): Region {
  const grow = (ring: Ring): Ring => ring.map(([y, z]) => [y * factor, z * factor]);
  return { outer: grow(region.outer), holes: region.holes.map(grow) };
}

/** Rounds every corner of a ring of straight edges by arcs of the radius [mm] in six steps. */
export function rounded(ring: Ring, radius: number): Ring {
  const n = ring.length;
  const point = (i: number): Vec2 => ring[(i + n) % n] ?? [0, 0];
  const towards = ([y, z]: Vec2, [p, q]: Vec2): Vec2 => {
    const length = Math.hypot(p - y, q - z);
    return [(p - y) / length, (q - z) / length];
  };
  return ring.flatMap((corner, i) => {
    const u = towards(corner, point(i - 1));
    const v = towards(corner, point(i + 1));
    const half = Math.acos(u[0] * v[0] + u[1] * v[1]) / 2;
    const middle = towards([0, 0], [u[0] + v[0], u[1] + v[1]]);
    const r = radius / 1000;
    const centre: Vec2 = [corner[0] + (middle[0] * r) / Math.sin(half), corner[1] + (middle[1] * r) / Math.sin(half)];
    // From the foot on the edge before to the foot on the edge after, the short way round.
    const sense = Math.sign(u[0] * v[1] - u[1] * v[0]);
    return Array.from({ length: 7 }, (_, k): Vec2 => {
      const angle = Math.atan2(-middle[1], -middle[0]) + sense * (Math.PI / 2 - half) * (1 - k / 3);
      return [centre[0] + r * Math.cos(angle), centre[1] + r * Math.sin(angle)];
    });
  });
}

import { distanceToEdge } from "../geometry/polygon.ts";
import { type Grid, type GridRing, ringArea } from "./grid.ts";

/** A re-entrant corner, sharp or rounded off in small steps: the ideal shear stress peaks there. Lengths in grid steps. */
export interface ReentrantCorner {
  /** Number of its (middle) point, counted through all rings: also its vertex and its node. */
  readonly vertex: number;
  readonly y: number;
  readonly z: number;
  /** Distance to the nearest outline that is not part of the same hollow: as a rule the thickness of the wall there. */
  readonly room: number;
}

/** Corners that turn less, all points together, count as smooth: the stress rises like distance^(−1/7) at most. */
const SMOOTH_TURN = Math.PI / 6;
/** Points that turn less than this lie on a straight line drawn with rounding. */
const STRAIGHT = 1e-4;
/** Re-entrant points joined by edges shorter than this fraction of the room are one corner, rounded or bevelled. */
const ONE_CORNER = 0.25;

/** The re-entrant corners of a section, in ring order. */
export function reentrantCorners(grid: Grid): ReentrantCorner[] {
  const corners: ReentrantCorner[] = [];
  let first = 0;
  grid.rings.forEach((ring, index) => {
    const n = ring.y.length;
    // Turning against the ring's sense bends into the material on the outer ring, the other way round on holes.
    const inwards = Math.sign(ringArea(ring)) * (index === 0 ? -1 : 1);
    const turns = Float64Array.from(ring.y, (_, i) => Math.max(0, inwards * turning(ring, i) - STRAIGHT));
    const rooms = turns.map((turn, i) => (turn > 0 ? roomAt(grid, ring, turns, i) : 0));
    for (const cluster of clusters(ring, turns, rooms)) {
      const total = cluster.reduce((sum, i) => sum + (turns[i] as number), 0);
      if (total <= SMOOTH_TURN) continue;
      const i = cluster[cluster.length >> 1] as number;
      const room = Math.min(rooms[i] as number, perimeter(ring));
      corners.push({ vertex: first + i, y: ring.y[i] as number, z: ring.z[i] as number, room });
    }
    first += n;
  });
  return corners;
}

/** Runs of re-entrant points joined by short edges. Where a whole ring is one run, every point stands for itself. */
function clusters(ring: GridRing, turns: Float64Array, rooms: Float64Array): number[][] {
  const n = ring.y.length;
  const joined = (i: number) => {
    const h = (i + n - 1) % n;
    const room = Math.min(rooms[h] as number, rooms[i] as number);
    return (turns[h] as number) > 0 && (turns[i] as number) > 0 && edgeLength(ring, h) < ONE_CORNER * room;
  };
  const starts = Array.from(turns.keys()).filter((i) => (turns[i] as number) > 0 && !joined(i));
  if (starts.length === 0) return Array.from(turns.keys(), (i) => [i]);
  return starts.map((start) => {
    const run = [start];
    for (let i = (start + 1) % n; joined(i); i = (i + 1) % n) run.push(i);
    return run;
  });
}

/** Angle by which a ring turns left at point i [rad]. */
function turning(ring: GridRing, i: number): number {
  const n = ring.y.length;
  const [h, j] = [(i + n - 1) % n, (i + 1) % n];
  const uy = (ring.y[i] as number) - (ring.y[h] as number);
  const uz = (ring.z[i] as number) - (ring.z[h] as number);
  const vy = (ring.y[j] as number) - (ring.y[i] as number);
  const vz = (ring.z[j] as number) - (ring.z[i] as number);
  return Math.atan2(uy * vz - uz * vy, uy * vy + uz * vz);
}

/** Length of the edge that starts at point i. */
function edgeLength(ring: GridRing, i: number): number {
  const j = (i + 1) % ring.y.length;
  return Math.hypot((ring.y[j] as number) - (ring.y[i] as number), (ring.z[j] as number) - (ring.z[i] as number));
}

const perimeter = (ring: GridRing): number => ring.y.reduce((sum, _, i) => sum + edgeLength(ring, i), 0);

/** Distance from a re-entrant point to the nearest edge, those of its own hollow left out: they go on from it over re-entrant points. */
function roomAt(grid: Grid, own: GridRing, turns: Float64Array, i: number): number {
  const count = own.y.length;
  let from = (i + count - 1) % count;
  let edges = 2;
  for (let j = i + 1; edges < count && (turns[j % count] as number) > 0; j++) edges++;
  while (edges < count && (turns[from] as number) > 0) {
    from = (from + count - 1) % count;
    edges++;
  }
  const point = [own.y[i] as number, own.z[i] as number] as const;
  let room = Infinity;
  for (const ring of grid.rings) {
    const n = ring.y.length;
    for (let a = 0; a < n; a++) {
      if (ring === own && (a - from + n) % n < edges) continue;
      const b = (a + 1) % n;
      const start = [ring.y[a] as number, ring.z[a] as number] as const;
      room = Math.min(room, distanceToEdge(point, start, [ring.y[b] as number, ring.z[b] as number]));
    }
  }
  return room;
}

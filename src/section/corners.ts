import { distanceToEdge } from "../geometry/polygon.ts";
import { type Grid, type GridRing, ringArea } from "./grid.ts";

/** A sharp re-entrant corner: the ideal shear stress grows without bound there. Lengths in grid steps. */
export interface SharpCorner {
  /** Number of the point, counted through all rings: also its vertex and its node. */
  readonly vertex: number;
  readonly y: number;
  readonly z: number;
  /** Distance to the nearest piece of outline that does not start or end at the corner: the wall there, or the gap. */
  readonly room: number;
}

/**
 * Material angles up to 30 degrees over the straight line count as smooth: the stress rises like distance^(−1/7) at most,
 * and the corners of a bore drawn with twelve sides or more stay below it.
 */
const SMOOTH_TURN = Math.PI / 6;

/** The sharp re-entrant corners of a section, in ring order. */
export function sharpCorners(grid: Grid): SharpCorner[] {
  const corners: SharpCorner[] = [];
  let first = 0;
  grid.rings.forEach((ring, index) => {
    const n = ring.y.length;
    // Turning that goes against the ring's sense bends into the material on the outer ring, the other way round on holes.
    const inwards = Math.sign(ringArea(ring)) * (index === 0 ? -1 : 1);
    for (let i = 0; i < n; i++) {
      if (inwards * turning(ring, i) <= SMOOTH_TURN) continue;
      corners.push({ vertex: first + i, y: ring.y[i] as number, z: ring.z[i] as number, room: roomAt(grid, ring, i) });
    }
    first += n;
  });
  return corners;
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

function roomAt(grid: Grid, own: GridRing, i: number): number {
  const point = [own.y[i] as number, own.z[i] as number] as const;
  let room = Infinity;
  for (const ring of grid.rings) {
    const n = ring.y.length;
    for (let a = 0; a < n; a++) {
      const b = (a + 1) % n;
      if (ring === own && (a === i || b === i)) continue;
      room = Math.min(
        room,
        distanceToEdge(point, [ring.y[a] as number, ring.z[a] as number], [ring.y[b] as number, ring.z[b] as number]),
      );
    }
  }
  return room;
}

import { next, type Triangulation, turnTo } from "./triangulation.ts";

/** Where a point lies: inside the triangle of `edge`, on `edge`, at the vertex where `edge` starts, or beyond the hull edge `edge`. */
export interface Place {
  readonly edge: number;
  readonly where: "inside" | "on" | "at" | "beyond";
}

/** Walks from the triangle of half-edge `from` towards (y, z). Undefined when the walk goes in circles, which only flat triangles allow. */
export function locate(m: Triangulation, from: number, y: number, z: number): Place | undefined {
  let e = from - (from % 3);
  for (let step = 0; step <= 3 * m.triangles; step++) {
    const out = edgeFacing(m, e, y, z);
    if (out < 0) return placeIn(m, e, y, z);
    const across = m.twin[out] as number;
    if (across < 0) return { edge: out, where: "beyond" };
    e = across - (across % 3);
  }
  return undefined;
}

/** The edge of the triangle that has the point furthest on its outer side, or -1 when the point is not outside. */
function edgeFacing(m: Triangulation, e: number, y: number, z: number): number {
  let found = -1;
  let worst = 0;
  for (let k = e; k < e + 3; k++) {
    const side = turnTo(m, m.corner[k] as number, m.corner[next(k)] as number, y, z);
    if (side < worst) {
      worst = side;
      found = k;
    }
  }
  return found;
}

function placeIn(m: Triangulation, e: number, y: number, z: number): Place {
  for (let k = e; k < e + 3; k++) {
    const v = m.corner[k] as number;
    if ((m.y[v] as number) === y && (m.z[v] as number) === z) return { edge: k, where: "at" };
  }
  for (let k = e; k < e + 3; k++) {
    if (turnTo(m, m.corner[k] as number, m.corner[next(k)] as number, y, z) === 0) return { edge: k, where: "on" };
  }
  return { edge: e, where: "inside" };
}

import { add, cross, scale, subtract, type Vec3 } from "../geometry/vector.ts";

/** Arms shorter than this share of the largest do not turn a body, so that supports in one line are no fault. */
const FLAT = 1e-9;

/** Solves a small system by elimination with row exchange; equations without a pivot are left out. */
function solve(rows: number[][], n: number): number[] {
  const largest = Math.max(...rows.map((row) => Math.max(...row.slice(0, n).map(Math.abs))), 0);
  const order: number[] = [];
  for (let column = 0; column < n; column += 1) {
    let best = -1;
    for (let r = 0; r < n; r += 1) {
      if (order.includes(r)) continue;
      if (best < 0 || Math.abs(rows[r]?.[column] ?? 0) > Math.abs(rows[best]?.[column] ?? 0)) best = r;
    }
    const pivotRow = rows[best];
    const pivot = pivotRow?.[column] ?? 0;
    if (!pivotRow || Math.abs(pivot) <= FLAT * largest) {
      order.push(-1);
      continue;
    }
    order.push(best);
    for (const [r, row] of rows.entries()) {
      if (r === best) continue;
      const factor = (row[column] ?? 0) / pivot;
      for (let c = 0; c <= n; c += 1) row[c] = (row[c] ?? 0) - factor * (pivotRow[c] ?? 0);
    }
  }
  return order.map((r, column) => (r < 0 ? 0 : (rows[r]?.[n] ?? 0) / (rows[r]?.[column] ?? 1)));
}

/**
 * Shares a force [N] on a rigid thing among the points [m] that carry it: the least forces that balance it, in force and in
 * moment. Supports in one line take what they can; the moment about that line is left out. Returns one force a point.
 */
export function spreadForce(force: Vec3, at: Vec3, points: readonly Vec3[]): readonly Vec3[] {
  const n = points.length;
  if (n === 0) return [];
  const middle = scale(points.reduce(add, [0, 0, 0] as Vec3), 1 / n);
  const arms = points.map((p) => subtract(p, middle));
  const moment = cross(subtract(at, middle), force);
  // f_i = F/n + b × r_i is the least solution; b from Σ r_i × (b × r_i) = M.
  const inertia = [0, 1, 2].map(() => [0, 0, 0, 0]);
  for (const r of arms) {
    const square = r[0] ** 2 + r[1] ** 2 + r[2] ** 2;
    for (const i of [0, 1, 2] as const) {
      const row = inertia[i];
      if (!row) continue;
      for (const j of [0, 1, 2] as const) row[j] = (row[j] ?? 0) + (i === j ? square : 0) - r[i] * r[j];
    }
  }
  for (const i of [0, 1, 2] as const) {
    const row = inertia[i];
    if (row) row[3] = moment[i];
  }
  const [x = 0, y = 0, z = 0] = solve(inertia, 3);
  return arms.map((r) => add(scale(force, 1 / n), cross([x, y, z], r)));
}

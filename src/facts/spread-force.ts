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
 * Shares a force [N] on a rigid thing among the points [m] that carry it, in `shares` that sum to 1 (alike where none are given):
 * so much of the force each, and beside it the couples that balance its moment, least for what each share is worth. Points in one
 * line take what they can; the moment about that line is left out. Returns one force a point.
 */
export function spreadForce(
  force: Vec3,
  at: Vec3,
  points: readonly Vec3[],
  shares: readonly number[] = points.map(() => 1 / points.length),
): readonly Vec3[] {
  if (points.length === 0) return [];
  // A share may be less than nothing, past the last support: it counts as much in couples as one that presses.
  const sizes = shares.map(Math.abs);
  const size = sizes.reduce((a, b) => a + b, 0);
  const mean = (weights: readonly number[]): Vec3 =>
    points.reduce((sum, p, i) => add(sum, scale(p, weights[i] ?? 0)), [0, 0, 0] as Vec3);
  const middle = scale(mean(sizes), 1 / size);
  const arms = points.map((p) => subtract(p, middle));
  const moment = cross(subtract(at, mean(shares)), force);
  // f_i = s_i F + |s_i| b × r_i is the least solution; b from Σ |s_i| r_i × (b × r_i) = M.
  const inertia = [0, 1, 2].map(() => [0, 0, 0, 0]);
  for (const [k, r] of arms.entries()) {
    const square = r[0] ** 2 + r[1] ** 2 + r[2] ** 2;
    for (const i of [0, 1, 2] as const) {
      const row = inertia[i];
      if (!row) continue;
      for (const j of [0, 1, 2] as const)
        row[j] = (row[j] ?? 0) + (sizes[k] ?? 0) * ((i === j ? square : 0) - r[i] * r[j]);
    }
  }
  for (const i of [0, 1, 2] as const) {
    const row = inertia[i];
    if (row) row[3] = moment[i];
  }
  const [x = 0, y = 0, z = 0] = solve(inertia, 3);
  return arms.map((r, i) => add(scale(force, shares[i] ?? 0), scale(cross([x, y, z], r), sizes[i] ?? 0)));
}

import { at } from "./at.ts";
import type { FrontPlan } from "./front-plan.ts";

/** Right-hand sides that go through the factor at a time. */
export const TOGETHER = 4;

/** x of L·D·Lᵀ·x = b for k right-hand sides, column by column; `work` has room for `TOGETHER` of them. */
export function substitute(
  plan: FrontPlan,
  panels: Float64Array,
  diagonal: Float64Array,
  b: Float64Array,
  k: number,
  work: Float64Array,
): Float64Array {
  const n = diagonal.length;
  if (b.length !== n * k)
    throw new RangeError(`${b.length} values given where ${k} right-hand sides of ${n} are needed`);
  const solution = new Float64Array(n * k);
  for (let done = 0; done < k; ) {
    const width = k - done >= 2 ? TOGETHER : 1;
    const used = Math.min(width, k - done);
    const x = work.subarray(0, n * width);
    if (used < width) x.fill(0);
    for (let c = 0; c < used; c++) {
      const from = (done + c) * n;
      for (let place = 0; place < n; place++) x[place * width + c] = b[from + at(plan.unknownAt, place)] as number;
    }
    if (width === 1) forwardOne(plan, panels, x);
    else forwardFour(plan, panels, x);
    for (let place = 0; place < n; place++) {
      const pivot = diagonal[place] as number;
      for (let c = 0; c < width; c++) x[place * width + c] = (x[place * width + c] as number) / pivot;
    }
    if (width === 1) backwardOne(plan, panels, x, plan.fronts, 0);
    else backwardFour(plan, panels, x);
    for (let c = 0; c < used; c++) {
      const to = (done + c) * n;
      for (let place = 0; place < n; place++) solution[to + at(plan.unknownAt, place)] = x[place * width + c] as number;
    }
    done += used;
  }
  return solution;
}

/** x of Lᵀ·x = y, both by unknown. */
export function substituteBack(plan: FrontPlan, panels: Float64Array, y: Float64Array): Float64Array {
  const x = plan.unknownAt.length === y.length ? new Float64Array(y.length) : undefined;
  if (x === undefined) throw new RangeError(`${y.length} values given where ${plan.unknownAt.length} are needed`);
  for (let place = 0; place < x.length; place++) x[place] = y[at(plan.unknownAt, place)] as number;
  backwardOne(plan, panels, x, plan.fronts, 0);
  const result = new Float64Array(y.length);
  for (let place = 0; place < x.length; place++) result[at(plan.unknownAt, place)] = x[place] as number;
  return result;
}

/** L·x = x in place, by place in the order. Two rows at a time: one alone waits for its own sum. */
export function forwardOne(plan: FrontPlan, panels: Float64Array, x: Float64Array): void {
  for (let s = 0; s < plan.fronts; s++) {
    const first = at(plan.firstPlace, s);
    const columns = at(plan.firstPlace, s + 1) - first;
    let l = plan.panelStart[s] as number;
    for (let i = 1; i < columns; i++) {
      l += columns;
      x[first + i] = (x[first + i] as number) - dot(panels, l, x, first, i);
    }
    l += columns;
    const end = at(plan.rowStart, s + 1);
    let e = at(plan.rowStart, s);
    for (; e + 1 < end; e += 2, l += 2 * columns) {
      const l1 = l + columns;
      let s0 = 0;
      let s1 = 0;
      for (let k = 0; k < columns; k++) {
        const xk = x[first + k] as number;
        s0 += (panels[l + k] as number) * xk;
        s1 += (panels[l1 + k] as number) * xk;
      }
      const p0 = at(plan.row, e);
      const p1 = at(plan.row, e + 1);
      x[p0] = (x[p0] as number) - s0;
      x[p1] = (x[p1] as number) - s1;
    }
    if (e === end) continue;
    const place = at(plan.row, e);
    x[place] = (x[place] as number) - dot(panels, l, x, first, columns);
  }
}

function dot(panels: Float64Array, l: number, x: Float64Array, first: number, depth: number): number {
  let sum = 0;
  for (let k = 0; k < depth; k++) sum += (panels[l + k] as number) * (x[first + k] as number);
  return sum;
}

/** Lᵀ·x = x in place, by place in the order, for the fronts `until` … `from` − 1 from the last to the first. */
export function backwardOne(plan: FrontPlan, panels: Float64Array, x: Float64Array, from: number, until: number): void {
  for (let s = from - 1; s >= until; s--) {
    const first = at(plan.firstPlace, s);
    const columns = at(plan.firstPlace, s + 1) - first;
    const start = at(plan.rowStart, s);
    let e = at(plan.rowStart, s + 1) - 1;
    let l = (plan.panelStart[s] as number) + (columns + e - start) * columns;
    for (; e > start; e -= 2, l -= 2 * columns) {
      const x0 = x[at(plan.row, e)] as number;
      const x1 = x[at(plan.row, e - 1)] as number;
      if (x0 === 0 && x1 === 0) continue; // most rows, when the motion of a small part is followed
      const l1 = l - columns;
      for (let k = 0; k < columns; k++) {
        const sum = (panels[l + k] as number) * x0 + (panels[l1 + k] as number) * x1;
        x[first + k] = (x[first + k] as number) - sum;
      }
    }
    if (e === start) {
      subtractRow(panels, l, x[at(plan.row, e)] as number, x, first, columns);
      l -= columns;
    }
    for (let i = columns - 1; i > 0; i--, l -= columns) {
      subtractRow(panels, l, x[first + i] as number, x, first, i);
    }
  }
}

function subtractRow(panels: Float64Array, l: number, xi: number, x: Float64Array, first: number, depth: number): void {
  if (xi === 0) return;
  for (let k = 0; k < depth; k++) x[first + k] = (x[first + k] as number) - (panels[l + k] as number) * xi;
}

function allZero(x: Float64Array, from: number, until: number): boolean {
  for (let i = from; i < until; i++) if (x[i] !== 0) return false;
  return true;
}

function forwardFour(plan: FrontPlan, panels: Float64Array, x: Float64Array): void {
  for (let s = 0; s < plan.fronts; s++) {
    const first = at(plan.firstPlace, s);
    const columns = at(plan.firstPlace, s + 1) - first;
    // A push at one place reaches only the fronts between it and the last.
    if (allZero(x, first * TOGETHER, (first + columns) * TOGETHER)) continue;
    const rows = at(plan.rowStart, s + 1) - at(plan.rowStart, s);
    const below = at(plan.rowStart, s) - columns;
    let l = plan.panelStart[s] as number;
    for (let i = 0; i < columns + rows; i++, l += columns) {
      const depth = Math.min(i, columns);
      let s0 = 0;
      let s1 = 0;
      let s2 = 0;
      let s3 = 0;
      for (let k = 0, from = first * TOGETHER; k < depth; k++, from += TOGETHER) {
        const entry = panels[l + k] as number;
        s0 += entry * (x[from] as number);
        s1 += entry * (x[from + 1] as number);
        s2 += entry * (x[from + 2] as number);
        s3 += entry * (x[from + 3] as number);
      }
      const to = (i < columns ? first + i : (plan.row[below + i] as number)) * TOGETHER;
      x[to] = (x[to] as number) - s0;
      x[to + 1] = (x[to + 1] as number) - s1;
      x[to + 2] = (x[to + 2] as number) - s2;
      x[to + 3] = (x[to + 3] as number) - s3;
    }
  }
}

function backwardFour(plan: FrontPlan, panels: Float64Array, x: Float64Array): void {
  for (let s = plan.fronts - 1; s >= 0; s--) {
    const first = at(plan.firstPlace, s);
    const columns = at(plan.firstPlace, s + 1) - first;
    const rows = at(plan.rowStart, s + 1) - at(plan.rowStart, s);
    const below = at(plan.rowStart, s) - columns;
    let l = (plan.panelStart[s] as number) + (columns + rows) * columns;
    for (let i = columns + rows - 1; i >= 0; i--) {
      l -= columns;
      const depth = Math.min(i, columns);
      const from = (i < columns ? first + i : (plan.row[below + i] as number)) * TOGETHER;
      const x0 = x[from] as number;
      const x1 = x[from + 1] as number;
      const x2 = x[from + 2] as number;
      const x3 = x[from + 3] as number;
      for (let k = 0, to = first * TOGETHER; k < depth; k++, to += TOGETHER) {
        const entry = panels[l + k] as number;
        x[to] = (x[to] as number) - entry * x0;
        x[to + 1] = (x[to + 1] as number) - entry * x1;
        x[to + 2] = (x[to + 2] as number) - entry * x2;
        x[to + 3] = (x[to + 3] as number) - entry * x3;
      }
    }
  }
}

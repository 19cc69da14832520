import type { MemberTable } from "./table.ts";

/**
 * Between the displacements of the two nodes (global, 12 numbers) and those of the two ends of the flexible part (local).
 * An end moves by u + θ × arm and turns by θ; its force acts on the node with the moment arm × force added.
 */

/** Writes the local end displacements (before releases) of member `m` for node displacements `u` (6 per node). */
export function endDisplacements(t: MemberTable, m: number, u: Float64Array, out: Float64Array, at: number): void {
  for (let end = 0; end < 2; end++) {
    const node = 6 * ((end === 0 ? t.from[m] : t.to[m]) as number);
    const arm = 6 * m + 3 * end;
    const [rx, ry, rz] = [t.arms[arm] as number, t.arms[arm + 1] as number, t.arms[arm + 2] as number];
    const ax = u[node + 3] as number;
    const ay = u[node + 4] as number;
    const az = u[node + 5] as number;
    const ux = (u[node] as number) + ay * rz - az * ry;
    const uy = (u[node + 1] as number) + az * rx - ax * rz;
    const uz = (u[node + 2] as number) + ax * ry - ay * rx;
    for (let i = 0; i < 3; i++) {
      const r = 9 * m + 3 * i;
      const [p, q, s] = [t.axes[r] as number, t.axes[r + 1] as number, t.axes[r + 2] as number];
      out[at + 6 * end + i] = p * ux + q * uy + s * uz;
      out[at + 6 * end + 3 + i] = p * ax + q * ay + s * az;
    }
  }
}

/** Adds the local end forces `f[at…at+11]` of member `m`, times `factor`, to the node forces (6 per node, global). */
export function addToNodes(
  t: MemberTable,
  m: number,
  f: Float64Array,
  at: number,
  nodeForces: Float64Array,
  factor = 1,
): void {
  for (let end = 0; end < 2; end++) {
    const node = 6 * ((end === 0 ? t.from[m] : t.to[m]) as number);
    let [fx, fy, fz, mx, my, mz] = [0, 0, 0, 0, 0, 0];
    for (let i = 0; i < 3; i++) {
      const r = 9 * m + 3 * i;
      const force = factor * (f[at + 6 * end + i] as number);
      const moment = factor * (f[at + 6 * end + 3 + i] as number);
      const [p, q, s] = [t.axes[r] as number, t.axes[r + 1] as number, t.axes[r + 2] as number];
      fx += p * force;
      fy += q * force;
      fz += s * force;
      mx += p * moment;
      my += q * moment;
      mz += s * moment;
    }
    const arm = 6 * m + 3 * end;
    const [rx, ry, rz] = [t.arms[arm] as number, t.arms[arm + 1] as number, t.arms[arm + 2] as number];
    nodeForces[node] = (nodeForces[node] as number) + fx;
    nodeForces[node + 1] = (nodeForces[node + 1] as number) + fy;
    nodeForces[node + 2] = (nodeForces[node + 2] as number) + fz;
    nodeForces[node + 3] = (nodeForces[node + 3] as number) + mx + ry * fz - rz * fy;
    nodeForces[node + 4] = (nodeForces[node + 4] as number) + my + rz * fx - rx * fz;
    nodeForces[node + 5] = (nodeForces[node + 5] as number) + mz + rx * fy - ry * fx;
  }
}

/** The 12 × 12 matrix (by rows) that takes node displacements of member `m` to local end displacements, releases included. */
export function transformation(t: MemberTable, m: number, out: Float64Array): void {
  rigidTransformation(t, m, out);
  const release = t.releases.get(m);
  if (release) out.set(multiply12(release.reduction, out));
}

/** The same before releases: the motion of rigid arms and the turn into local axes. */
export function rigidTransformation(t: MemberTable, m: number, out: Float64Array): void {
  out.fill(0);
  for (let end = 0; end < 2; end++) {
    const arm = 6 * m + 3 * end;
    const [rx, ry, rz] = [t.arms[arm] as number, t.arms[arm + 1] as number, t.arms[arm + 2] as number];
    for (let i = 0; i < 3; i++) {
      const r = 9 * m + 3 * i;
      const [p, q, s] = [t.axes[r] as number, t.axes[r + 1] as number, t.axes[r + 2] as number];
      const row = 12 * (6 * end + i) + 6 * end;
      out[row] = p;
      out[row + 1] = q;
      out[row + 2] = s;
      out[row + 3] = s * ry - q * rz; // p·(θ × arm), coefficient by coefficient of θ
      out[row + 4] = p * rz - s * rx;
      out[row + 5] = q * rx - p * ry;
      const turn = 12 * (6 * end + 3 + i) + 6 * end + 3;
      out[turn] = p;
      out[turn + 1] = q;
      out[turn + 2] = s;
    }
  }
}

function multiply12(a: Float64Array, b: Float64Array): Float64Array {
  const c = new Float64Array(144);
  for (let i = 0; i < 12; i++) {
    for (let k = 0; k < 12; k++) {
      const factor = a[12 * i + k] as number;
      if (factor === 0) continue;
      for (let j = 0; j < 12; j++) c[12 * i + j] = (c[12 * i + j] as number) + factor * (b[12 * k + j] as number);
    }
  }
  return c;
}

const product = new Float64Array(144);

/** Tᵀ k T, all 12 × 12 by rows, written to `out`. */
export function congruence(k: Float64Array, T: Float64Array, out: Float64Array): void {
  product.fill(0);
  out.fill(0);
  for (let i = 0; i < 12; i++) {
    for (let r = 0; r < 12; r++) {
      const factor = k[12 * i + r] as number;
      if (factor === 0) continue;
      for (let j = 0; j < 12; j++)
        product[12 * i + j] = (product[12 * i + j] as number) + factor * (T[12 * r + j] as number);
    }
  }
  for (let r = 0; r < 12; r++) {
    for (let i = 0; i < 12; i++) {
      const factor = T[12 * r + i] as number;
      if (factor === 0) continue;
      for (let j = 0; j < 12; j++)
        out[12 * i + j] = (out[12 * i + j] as number) + factor * (product[12 * r + j] as number);
    }
  }
}

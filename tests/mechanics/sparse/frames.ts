import type { ElementBlock } from "../../../src/mechanics/sparse/assemble.ts";

/** Frames for tests and measurements: joints on a grid, bars along its lines, six unknowns a joint. */
export interface GridFrame {
  readonly unknowns: number;
  readonly bars: number;
  readonly nodeOf: Int32Array;
  readonly blocks: readonly ElementBlock[];
}

const E = 70e9; // Pa, aluminium
const NU = 0.33;
const AREA = 6e-4; // m²
const I = 9e-8; // m⁴
const J = 2e-8; // m⁴
const LENGTH = 0.5; // m

/** Stiffness of a straight bar along x, y or z (Przemieniecki, Theory of Matrix Structural Analysis, 5.6, without shear). */
export function barStiffness(axis: 0 | 1 | 2, length = LENGTH): Float64Array {
  const k = new Float64Array(144);
  const put = (i: number, j: number, value: number): void => {
    k[i * 12 + j] = value;
    k[j * 12 + i] = value;
  };
  const pair = (i: number, j: number, value: number): void => {
    put(i, i, value);
    put(j, j, value);
    put(i, j, -value);
  };
  const u = axis;
  const v = (axis + 1) % 3;
  const w = (axis + 2) % 3;
  pair(u, 6 + u, (E * AREA) / length);
  pair(3 + u, 9 + u, ((E / (2 * (1 + NU))) * J) / length);
  // Bending in the plane of u and v turns about w; in that of u and w about v, with the other sign.
  for (const [across, about, sign] of [
    [v, 3 + w, 1],
    [w, 3 + v, -1],
  ] as const) {
    const b = (E * I) / length;
    pair(across, 6 + across, (12 * b) / length ** 2);
    for (const end of [about, 6 + about]) {
      put(across, end, (sign * 6 * b) / length);
      put(6 + across, end, (-sign * 6 * b) / length);
      put(end, end, 4 * b);
    }
    put(about, 6 + about, 2 * b);
  }
  return k;
}

/** nx × ny × nz joints; `held(x, y, z)` joints have no unknowns. */
export function gridFrame(
  nx: number,
  ny: number,
  nz: number,
  held: (x: number, y: number, z: number) => boolean = (_x, _y, z) => z === 0,
): GridFrame {
  const first = new Int32Array(nx * ny * nz).fill(-1);
  const nodeOf: number[] = [];
  const joint = (x: number, y: number, z: number): number => (x * ny + y) * nz + z;
  for (let x = 0; x < nx; x++) {
    for (let y = 0; y < ny; y++) {
      for (let z = 0; z < nz; z++) {
        if (held(x, y, z)) continue;
        first[joint(x, y, z)] = nodeOf.length;
        for (let d = 0; d < 6; d++) nodeOf.push(joint(x, y, z));
      }
    }
  }
  const stiffness = [barStiffness(0), barStiffness(1), barStiffness(2)] as const;
  const blocks: ElementBlock[] = [];
  const unknownsOf = (j: number): number[] => {
    const from = first[j] as number;
    return Array.from({ length: 6 }, (_, d) => (from === -1 ? -1 : from + d));
  };
  const bar = (axis: 0 | 1 | 2, a: number, b: number): void => {
    blocks.push({ unknowns: [...unknownsOf(a), ...unknownsOf(b)], values: stiffness[axis] });
  };
  for (let x = 0; x < nx; x++) {
    for (let y = 0; y < ny; y++) {
      for (let z = 0; z < nz; z++) {
        if (x + 1 < nx) bar(0, joint(x, y, z), joint(x + 1, y, z));
        if (y + 1 < ny) bar(1, joint(x, y, z), joint(x, y + 1, z));
        if (z + 1 < nz) bar(2, joint(x, y, z), joint(x, y, z + 1));
      }
    }
  }
  return { unknowns: nodeOf.length, bars: blocks.length, nodeOf: Int32Array.from(nodeOf), blocks };
}

/** A long rack, 2 joints deep and 3 high, standing on every second pair of feet. */
export function rack(sections: number): GridFrame {
  return gridFrame(sections, 2, 3, (x, _y, z) => z === 0 && x % 2 === 0);
}

import { denseFactor, denseSolve } from "../dense.ts";
import { denseSymmetricEigen } from "../eigen/dense-symmetric.ts";

/** A straight row of screws that fasten a sheet to one bar, in the plane of the sheet, m. */
export interface ScrewRow {
  /** First and last screw. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  /** Screws in the row, evenly spaced; at least two. */
  readonly screws: number;
}

/** A flat sheet fastened by rows of like screws. */
export interface FastenedSheet {
  readonly rows: readonly ScrewRow[];
  /** Slip stiffness of one screw in the plane of the sheet, N/m. */
  readonly slip: number;
  /** Shear stiffness of the whole sheet, G t A, N·m. */
  readonly shear: number;
}

/**
 * One way in which the rows move against each other, and what resists it. Three weights a row: of the motion along the
 * row, mean of its two ends, and of the motions across it of its first and of its last screw.
 */
export interface SheetForm {
  readonly weights: Float64Array;
  /** N/m. */
  readonly stiffness: number;
}

export interface SheetInShear {
  readonly forms: readonly SheetForm[];
  /** For the force in each form, N: the hardest pressed screw, N, and G t A times the shear strain of the sheet, N·m. */
  borne(forces: readonly number[]): { readonly screw: number; readonly shear: number };
}

/** Freedoms of a row, and of the sheet: two shifts, a turn and a shear. */
const ROW = 3;
const SHEET = 4;
/** A form this much softer than the stiffest is a motion of the whole as one piece, up to rounding. */
const RIGID = 1e-9;

interface Screw {
  /** Motion of the bar at the screw and of the sheet there, along x and y, by freedom of the rows and of the sheet. */
  readonly bar: readonly [Float64Array, Float64Array];
  readonly sheet: readonly [Float64Array, Float64Array];
}

function screwsOf({ rows }: FastenedSheet): Screw[] {
  const middle = [0, 1].map(
    (i) => rows.reduce((sum, r) => sum + ((r.from[i] ?? 0) + (r.to[i] ?? 0)) / 2, 0) / rows.length,
  );
  return rows.flatMap((row, r) => {
    const run = [row.to[0] - row.from[0], row.to[1] - row.from[1]] as const;
    const length = Math.hypot(...run);
    const [c, s] = [run[0] / length, run[1] / length];
    return Array.from({ length: row.screws }, (_, i): Screw => {
      const t = i / (row.screws - 1);
      const [x, y] = [row.from[0] + t * run[0] - (middle[0] ?? 0), row.from[1] + t * run[1] - (middle[1] ?? 0)];
      const bar = [new Float64Array(ROW * rows.length), new Float64Array(ROW * rows.length)] as const;
      bar[0].set([c, -s * (1 - t), -s * t], ROW * r);
      bar[1].set([s, c * (1 - t), c * t], ROW * r);
      // A turn moves by (−y, x), a shear by (y, 0).
      return { bar, sheet: [Float64Array.of(1, 0, -y, y), Float64Array.of(0, 1, x, 0)] };
    });
  });
}

/** factor × Σ a ⊗ b over the screws and both directions, by rows. */
function outer(
  screws: readonly Screw[],
  a: keyof Screw,
  b: keyof Screw,
  factor: number,
  n: number,
  m: number,
): Float64Array {
  const sum = new Float64Array(n * m);
  for (const screw of screws)
    for (const d of [0, 1] as const)
      for (let i = 0; i < n; i++)
        for (let j = 0; j < m; j++)
          sum[i * m + j] =
            (sum[i * m + j] as number) + factor * (screw[a][d][i] as number) * (screw[b][d][j] as number);
  return sum;
}

/**
 * How a sheet holds the rows of screws that fasten it: each screw a spring alike both ways, the sheet stiff but for one
 * uniform shear (the elastic model of Källsner and Girhammar, Materials and Structures 42, 2009). The motion of the sheet is
 * eliminated; what is left is split into independent forms. A row takes part with its mean motion along itself and with the
 * motion across itself of its chord: sheet and bars do not bend as one.
 */
export function sheetInShear(sheet: FastenedSheet): SheetInShear {
  const n = ROW * sheet.rows.length;
  const screws = screwsOf(sheet);
  const own = outer(screws, "sheet", "sheet", sheet.slip, SHEET, SHEET);
  own[SHEET * SHEET - 1] = (own[SHEET * SHEET - 1] as number) + sheet.shear;
  const factor = denseFactor(own, SHEET);
  const mixed = outer(screws, "sheet", "bar", sheet.slip, SHEET, n);
  /** Motion of the sheet by freedom of the rows: column j of own⁻¹ · mixed. */
  const followed = Array.from({ length: n }, (_, j) =>
    denseSolve(
      factor,
      Float64Array.from({ length: SHEET }, (__, i) => mixed[i * n + j] as number),
    ),
  );
  const left = outer(screws, "bar", "bar", sheet.slip, n, n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++)
      for (let k = 0; k < SHEET; k++)
        left[i * n + j] = (left[i * n + j] as number) - (mixed[k * n + i] as number) * (followed[j]?.[k] as number);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < i; j++) {
      const mean = ((left[i * n + j] as number) + (left[j * n + i] as number)) / 2;
      left[i * n + j] = mean;
      left[j * n + i] = mean;
    }
  const { values, vectors } = denseSymmetricEigen(left, n);
  const forms: SheetForm[] = [];
  for (let k = 0; k < n; k++) {
    const stiffness = values[k] as number;
    if (stiffness > RIGID * (values[0] as number)) forms.push({ weights: vectors.slice(k * n, k * n + n), stiffness });
  }
  return {
    forms,
    borne(forces) {
      const moved = new Float64Array(n);
      forms.forEach(({ weights, stiffness }, k) => {
        const by = (forces[k] ?? 0) / stiffness;
        for (let i = 0; i < n; i++) moved[i] = (moved[i] as number) + by * (weights[i] as number);
      });
      const along = new Float64Array(SHEET);
      followed.forEach((column, j) => {
        for (let k = 0; k < SHEET; k++) along[k] = (along[k] as number) + (column[k] as number) * (moved[j] as number);
      });
      let most = 0;
      for (const { bar, sheet: of } of screws) {
        const slip = ([0, 1] as const).map((d) => {
          let sum = 0;
          for (let i = 0; i < n; i++) sum += (bar[d][i] as number) * (moved[i] as number);
          for (let k = 0; k < SHEET; k++) sum -= (of[d][k] as number) * (along[k] as number);
          return sum;
        });
        most = Math.max(most, sheet.slip * Math.hypot(...slip));
      }
      return { screw: most, shear: sheet.shear * (along[SHEET - 1] as number) };
    },
  };
}

/**
 * Shear stress at which a flat sheet supported along its edges buckles, Pa: k π² E / (12 (1 − ν²)) (t/b)² with
 * k = 5.34 + 4 (b/a)², b the shorter side (EN 1993-1-5:2006, A.3; Timoshenko and Gere, 9.7).
 */
export function shearBuckling(E: number, poisson: number, thickness: number, sides: readonly [number, number]): number {
  const [b, a] = [Math.min(...sides), Math.max(...sides)];
  return ((5.34 + 4 * (b / a) ** 2) * Math.PI ** 2 * E * (thickness / b) ** 2) / (12 * (1 - poisson ** 2));
}

/** Bending of a thin plate: modulus E (Pa), Poisson's ratio, thickness (m). */
export interface Plate {
  readonly elasticModulus: number;
  readonly poisson: number;
  readonly thickness: number;
}

export type PlateEdge = "supported" | "free";

/**
 * A rectangular field, simply supported on x = 0 and x = span. Its edges on y = 0 and y = width are supported or free. Lengths in m.
 */
export interface PlateField {
  readonly span: number;
  readonly width: number;
  readonly edges: readonly [PlateEdge, PlateEdge];
}

/** Pressure (Pa) over a rectangle of the field, from low to high along x and y, m. */
export interface PatchLoad {
  readonly pressure: number;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

/** Deflection (m) and bending moments per length (N) about the way each bends, at one point. */
export interface PlateState {
  readonly deflection: number;
  readonly mx: number;
  readonly my: number;
}

/** Flexural rigidity E t³ / (12 (1 − ν²)), N·m. */
export function rigidity({ elasticModulus, poisson, thickness }: Plate): number {
  return (elasticModulus * thickness ** 3) / (12 * (1 - poisson ** 2));
}

/** Sine terms summed: of a patch a tenth of the span the moments at its middle are then within 0.1 % (see the tests). */
const TERMS = 240;

/** A function of y and its first three derivatives. */
type Jet = readonly [number, number, number, number];

/** ∫ of the response of an endless strip to a line load, from the middle of the load to s: odd in s, decaying derivatives. */
function strip(alpha: number, s: number): Jet {
  const [d, sign] = [Math.abs(s), s < 0 ? -1 : 1];
  const e = Math.exp(-alpha * d);
  return [
    sign * (2 - (2 + alpha * d) * e),
    alpha * (1 + alpha * d) * e,
    -sign * alpha ** 3 * d * e,
    (alpha ** 4 * d - alpha ** 3) * e,
  ];
}

/** e^(−α s) and α s e^(−α s) for s counted from an edge in the direction `sign`. */
function decaying(alpha: number, s: number, sign: 1 | -1): readonly [Jet, Jet] {
  const e = Math.exp(-alpha * s);
  const x = alpha * s;
  const k = -sign * alpha;
  return [
    [e, k * e, k * k * e, k ** 3 * e],
    [x * e, k * (x - 1) * e, k * k * (x - 2) * e, k ** 3 * (x - 3) * e],
  ];
}

/** What must vanish on an edge: deflection and moment where it is supported, moment and edge force where it is free. */
function conditions(edge: PlateEdge, [y, y1, y2, y3]: Jet, alpha: number, poisson: number): readonly [number, number] {
  const moment = (y2 - poisson * alpha ** 2 * y) / alpha ** 2;
  return edge === "supported" ? [y, moment] : [moment, (y3 - (2 - poisson) * alpha ** 2 * y1) / alpha ** 3];
}

/** Solves four linear equations by elimination with pivots. */
function solve4(rows: number[][]): readonly number[] {
  for (let k = 0; k < 4; k += 1) {
    const best = [...rows.keys()]
      .slice(k)
      .reduce((a, b) => (Math.abs(at(rows, b, k)) > Math.abs(at(rows, a, k)) ? b : a));
    [rows[k], rows[best]] = [rows[best] as number[], rows[k] as number[]];
    for (let i = k + 1; i < 4; i += 1) {
      const factor = at(rows, i, k) / at(rows, k, k);
      for (let j = k; j < 5; j += 1) (rows[i] as number[])[j] = at(rows, i, j) - factor * at(rows, k, j);
    }
  }
  const x = [0, 0, 0, 0];
  for (let k = 3; k >= 0; k -= 1) {
    let rest = at(rows, k, 4);
    for (let j = k + 1; j < 4; j += 1) rest -= at(rows, k, j) * (x[j] ?? 0);
    x[k] = rest / at(rows, k, k);
  }
  return x;
}

const at = (rows: readonly (readonly number[])[], i: number, j: number): number => rows[i]?.[j] ?? 0;

/**
 * State of a plate under a patch load at the points (x, y), by Lévy's series: for each sine along x the exact solution along y,
 * the response of an endless strip plus four decaying functions that meet the conditions on the edges. Small deflections.
 * Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., articles 29 to 34 and 48.
 */
export function plateStates(
  plate: Plate,
  field: PlateField,
  load: PatchLoad,
  points: readonly (readonly [number, number])[],
): readonly PlateState[] {
  const d = rigidity(plate);
  const { poisson } = plate;
  const { span, width, edges } = field;
  const sums = points.map(() => ({ deflection: 0, mx: 0, my: 0 }));
  for (let m = 1; m <= TERMS; m += 1) {
    const alpha = (m * Math.PI) / span;
    const part = ((2 * load.pressure) / (m * Math.PI)) * (Math.cos(alpha * load.x[0]) - Math.cos(alpha * load.x[1]));
    if (Math.abs(part) < 1e-12 * load.pressure) continue;
    const scale = part / (4 * alpha ** 4 * d);
    const particular = (y: number): Jet => {
      const [a, b] = [strip(alpha, y - load.y[0]), strip(alpha, load.y[1] - y)];
      return [a[0] + b[0], a[1] - b[1], a[2] + b[2], a[3] - b[3]];
    };
    const basis = (y: number): readonly Jet[] => [...decaying(alpha, y, 1), ...decaying(alpha, width - y, -1)];
    const rows: number[][] = [];
    for (const [i, y] of [0, width].entries()) {
      const edge = edges[i as 0 | 1];
      const own = basis(y).map((jet) => conditions(edge, jet, alpha, poisson));
      const given = conditions(edge, particular(y), alpha, poisson);
      for (const c of [0, 1] as const) rows.push([...own.map((pair) => pair[c]), -given[c]]);
    }
    const weights = solve4(rows);
    for (const [i, [x, y]] of points.entries()) {
      const sum = sums[i];
      if (!sum) continue;
      let [value, second] = [particular(y)[0], particular(y)[2]];
      for (const [k, jet] of basis(y).entries()) {
        value += (weights[k] ?? 0) * jet[0];
        second += (weights[k] ?? 0) * jet[2];
      }
      const sine = Math.sin(alpha * x) * scale;
      sum.deflection += value * sine;
      sum.mx += d * (alpha ** 2 * value - poisson * second) * sine;
      sum.my += d * (poisson * alpha ** 2 * value - second) * sine;
    }
  }
  return sums;
}

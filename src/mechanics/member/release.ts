/**
 * Released end components of a member, condensed out exactly: the member's own freedom takes the value at which the
 * released force vanishes, so k' = Cᵀ k C and loads' end forces f' = Cᵀ f with u = C u_node − S f.
 */
export interface Release {
  /** Bit i: component i is released. */
  readonly mask: number;
  /** Member end displacements per node-side displacement, 12 × 12 by rows. */
  readonly reduction: Float64Array;
  /** Stiffness that is left on the node side, 12 × 12 by rows: Cᵀ k C with exact zeros where nothing is left. */
  readonly stiffness: Float64Array;
  /** Flexibility of the released components, 12 × 12 by rows, zero elsewhere. */
  readonly flexibility: Float64Array;
  /** End displacements (12, local) with which the member moves by itself while its nodes stand still, each without strain. */
  readonly loose: readonly Float64Array[];
}

/** A pivot this small beside its own stiffness is a freedom, not a stiffness; rounding leaves about 1e-15. */
const FREE_PIVOT = 1e-11;

/** Condenses the components in `mask` (bit i = component i) out of the 12 × 12 stiffness `k`. */
export function condense(k: Float64Array, mask: number): Release {
  const released: number[] = [];
  for (let i = 0; i < 12; i++) if (mask & (1 << i)) released.push(i);
  const flexibility = new Float64Array(144);
  const idle: number[] = [];
  const kept: number[] = [];
  // Gauss-Jordan sweeps on the released block; a component whose pivot vanishes is left where it is.
  const work = k.slice();
  for (const p of released) {
    const pivot = work[p * 13] as number;
    if (!(pivot > FREE_PIVOT * (k[p * 13] as number))) {
      idle.push(p);
      continue;
    }
    kept.push(p);
    sweep(work, p, pivot);
  }
  const reduction = new Float64Array(144);
  for (let i = 0; i < 12; i++) if (!(mask & (1 << i))) reduction[i * 13] = 1;
  for (const p of kept) {
    for (let j = 0; j < 12; j++) {
      if (!(mask & (1 << j))) reduction[p * 12 + j] = -(work[p * 12 + j] as number);
    }
    for (const q of kept) flexibility[p * 12 + q] = -(work[p * 12 + q] as number);
  }
  const loose = idle.map((p) => {
    const ends = new Float64Array(12);
    ends[p] = 1;
    for (const q of kept) ends[q] = -(work[q * 12 + p] as number);
    return ends;
  });
  return { mask, reduction, stiffness: leftOver(work, k, mask), flexibility, loose };
}

/** The swept matrix on the components that stay; a component whose stiffness all but vanished has lost it. */
function leftOver(work: Float64Array, k: Float64Array, mask: number): Float64Array {
  const left = new Float64Array(144);
  const gone = (i: number): boolean =>
    (mask & (1 << i)) !== 0 || !((work[i * 13] as number) > FREE_PIVOT * (k[i * 13] as number));
  for (let i = 0; i < 12; i++) {
    for (let j = 0; j < 12; j++) if (!gone(i) && !gone(j)) left[i * 12 + j] = work[i * 12 + j] as number;
  }
  return left;
}

/** One symmetric sweep on pivot p: afterwards row p holds K_pp⁻¹ K_pj, and −K_pp⁻¹ in the swept block. */
function sweep(a: Float64Array, p: number, pivot: number): void {
  const row = a.slice(p * 12, p * 12 + 12);
  for (let i = 0; i < 12; i++) {
    if (i === p) continue;
    const factor = (row[i] as number) / pivot;
    for (let j = 0; j < 12; j++) {
      if (j !== p) a[i * 12 + j] = (a[i * 12 + j] as number) - factor * (row[j] as number);
    }
  }
  for (let j = 0; j < 12; j++) {
    a[p * 12 + j] = (row[j] as number) / pivot;
    a[j * 12 + p] = (row[j] as number) / pivot;
  }
  a[p * 13] = -1 / pivot;
}

/** A quantity that scatters log-normally: median, and standard deviation of its natural logarithm. */
export interface Scatter {
  readonly median: number;
  readonly deviation: number;
}

/** Standard normal deviate that 5 % fall below, without its sign. */
const FIVE_PERCENT = 1.6448536;

/** Scatter of which nine tenths lie within `low` to `high` about a median. */
export const scatterWithin = (median: number, low: number, high: number): Scatter => ({
  median,
  deviation: Math.log(high / low) / (2 * FIVE_PERCENT),
});

/** A tightened screw whose tension the lips of the slot may limit. */
export interface ClampedScrew {
  /** N·m, as set. */
  readonly torque: number;
  /** m. */
  readonly diameter: number;
  /** Tension above which the lips give and the screw gains no more, N. */
  readonly cap: number;
}

/** What scatters from screw to screw. Medians of torque are 1: it is a factor on the torque set. */
export interface ClampScatter {
  readonly friction: Scatter;
  readonly coefficient: Scatter;
  readonly torque: Scatter;
  /** Share of the preload that stays after settling. */
  readonly stays: number;
}

/** Abramowitz and Stegun 26.2.17: the normal distribution to 7.5e-8. */
function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const poly = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * poly;
  return z >= 0 ? 1 - tail : tail;
}

/** Deviates the preload is summed over, and steps between them: Simpson's rule, good to 1e-6 of the slip. */
const REACH = 6;
const STEPS = 240;
/** Halvings of an interval of ± 3 in the logarithm. */
const HALVINGS = 48;

/** Preload of a screw, N: the median, not above what the lips bear, less what settles. */
export function medianPreload(screw: ClampedScrew, scatter: ClampScatter): number {
  const free = screw.torque / (scatter.coefficient.median * screw.diameter);
  return Math.min(free, screw.cap) * scatter.stays;
}

/**
 * Slip load that 95 of 100 such screws exceed, N: the 5 % value of µ × min(T / (K d), cap) × (share that stays), with µ, K and T
 * scattering independently and log-normally. Without the cap the logarithms add and the value is exp(−1.645 σ) of the median;
 * the cap is kept by summing over the preload by Simpson's rule. Our own screening formula.
 */
export function slipFractile(screw: ClampedScrew, scatter: ClampScatter): number {
  const { friction, coefficient, torque } = scatter;
  const free = screw.torque / (coefficient.median * screw.diameter);
  const spread = Math.hypot(coefficient.deviation, torque.deviation);
  const middle = friction.median * medianPreload(screw, scatter);
  if (!(middle > 0)) return 0;
  const below = (slip: number): number => {
    let sum = 0;
    let weights = 0;
    for (let i = 0; i <= STEPS; i += 1) {
      const z = REACH * ((2 * i) / STEPS - 1);
      const weight = (i === 0 || i === STEPS ? 1 : i % 2 === 1 ? 4 : 2) * Math.exp((-z * z) / 2);
      const preload = Math.min(free * Math.exp(spread * z), screw.cap) * scatter.stays;
      sum += weight * normalBelow(Math.log(slip / (friction.median * preload)) / friction.deviation);
      weights += weight;
    }
    return sum / weights;
  };
  let [low, high] = [-3, 3];
  for (let i = 0; i < HALVINGS; i += 1) {
    const half = (low + high) / 2;
    if (below(middle * Math.exp(half)) < 0.05) low = half;
    else high = half;
  }
  return middle * Math.exp((low + high) / 2);
}

/** Tension in a screw tightened to a torque [N·m]: T / (K d) (Shigley, Eq. 8-27); d in m, N. */
export const preloadFrom = (torque: number, coefficient: number, diameter: number): number =>
  torque / (coefficient * diameter);

/** Torque that brings a screw to a tension [N]: K F d (Shigley, Eq. 8-27); N·m. */
export const torqueFor = (preload: number, coefficient: number, diameter: number): number =>
  coefficient * preload * diameter;

/** What the stress area of a thread lies within its diameter, in pitches: ISO 898-1 for metric, ASME B1.1 for unified threads. */
export const STRESS_DEPTH = { metric: 0.938194, unified: 0.9743 } as const;

/** Area on which the tension of a screw is reckoned, π/4 (d − depth × P)², m²; diameter and pitch in m. */
export const stressArea = (diameter: number, pitch: number, form: keyof typeof STRESS_DEPTH): number =>
  (Math.PI / 4) * (diameter - STRESS_DEPTH[form] * pitch) ** 2;

/** Pull of a screw when a leg is pulled up at `a` from it and heels on an edge `b` beyond it (lever, Shigley 8-12): F (a + b) / b. */
export const pryingPull = (force: number, a: number, b: number): number => (force * (a + b)) / b;

/**
 * What is left of a friction hold when `tension` draws on the clamp: 1 − 0.8 Ft / Fp, not below 0 (EN 1993-1-8:2005, 3.9.2(1)).
 */
export const holdLeft = (tension: number, preload: number): number =>
  preload > 0 ? Math.max(0, 1 - (0.8 * Math.max(0, tension)) / preload) : 0;

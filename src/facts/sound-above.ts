import { type Bound, PLAIN_BRACKET } from "./joint-stiffness.ts";

/** What a frame does with joints of one stiffness. */
export interface Solved {
  /** N·m/rad, or any other unit that is the same for all. */
  readonly stiffness: number;
  readonly value: number;
}

/**
 * The stiffness at which a value is reached, from what it is at three stiffnesses: (a + b c) / (1 + d c) of the compliance c = 1/k, as for
 * a change of one spring (Sherman and Morrison 1950); for all springs together that is a fit (docs/method/response.md). Undefined where
 * the three do not rise or fall together, or do not enclose the value.
 */
export function stiffnessAt(
  { soft, typical, stiff }: Readonly<Record<Bound, Solved>>,
  value: number,
): number | undefined {
  const [v0, v1, v2] = [stiff.value, typical.value, soft.value];
  const rises = Math.sign(v2 - v1);
  if (rises === 0 || Math.sign(v1 - v0) !== rises) return undefined;
  if (!(rises * (v2 - value) >= 0 && rises * (value - v0) >= 0)) return undefined;
  const [c0, c1, c2] = [1 / stiff.stiffness, 1 / typical.stiffness, 1 / soft.stiffness];
  // Along such a curve (v − v0) (c − c1) / ((v − v1) (c − c0)) is the same everywhere.
  const steady = ((v2 - v0) * (c2 - c1)) / ((v2 - v1) * (c2 - c0));
  const ratio = (value - v0) / (value - v1);
  const c = value === v1 ? c1 : (ratio * c1 - steady * c0) / (ratio - steady);
  return c >= c0 && c <= c2 ? 1 / c : undefined;
}

/** Digits kept of a stiffness that nobody knows better. */
const DIGITS = 2;

function roundedUp(value: number): number {
  const step = 10 ** (Math.floor(Math.log10(value)) + 1 - DIGITS);
  return Math.ceil(value / step - 1e-9) * step;
}

/**
 * Joint stiffness from which a limit is kept that only softer joints go beyond: that of a plain bracket of 40 mm pitch, N·m/rad, rounded up.
 * Undefined where stiff joints go beyond it: a screw of a stiff joint may bear more than one of a soft joint.
 */
export function soundAbove(
  values: Readonly<Record<Bound, number>>,
  limit: number,
  sense: "at most" | "at least",
): number | undefined {
  const softIsWorse = sense === "at most" ? values.soft > values.stiff : values.soft < values.stiff;
  if (!softIsWorse) return undefined;
  const at = (bound: Bound): Solved => ({ stiffness: PLAIN_BRACKET[bound], value: values[bound] });
  const found = stiffnessAt({ soft: at("soft"), typical: at("typical"), stiff: at("stiff") }, limit);
  return found === undefined ? undefined : roundedUp(found);
}

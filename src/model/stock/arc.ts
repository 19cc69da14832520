import type { Pair } from "./pair.ts";

/** A round of this many sides at least stays recognisable however coarse the chord error. */
const FEWEST_SIDES_PER_QUARTER = 2;

/** Finer than this helps no calculation, whatever chord error a file asks for. */
const MOST_SIDES_PER_QUARTER = 64;

/** Chords per quarter turn that lie nowhere farther than `chordError` inside the arc: sagitta = r (1 − cos(step / 2)). */
function chordsPerQuarter(radius: number, chordError: number): number {
  const step = 2 * Math.acos(Math.max(0, 1 - chordError / radius));
  const sides = step > 0 ? Math.ceil(Math.PI / 2 / step) : MOST_SIDES_PER_QUARTER;
  return Math.min(MOST_SIDES_PER_QUARTER, Math.max(FEWEST_SIDES_PER_QUARTER, sides));
}

/** Offsets of a quarter arc from its centre, from [0, r] to [r, 0], both included; one point [0, 0] when the radius is 0. Metres. */
export function quarterArc(radius: number, chordError: number): readonly Pair[] {
  if (radius <= 0) return [[0, 0]];
  const chords = chordsPerQuarter(radius, chordError);
  return Array.from({ length: chords + 1 }, (_, i): Pair => {
    const angle = (i / chords) * (Math.PI / 2);
    return [radius * Math.sin(angle), radius * Math.cos(angle)];
  });
}

/** A circle as a polygon with its corners on the circle, m. */
export function circle(centre: Pair, radius: number, chordError: number): Pair[] {
  const corners = 4 * chordsPerQuarter(radius, chordError);
  return Array.from({ length: corners }, (_, i): Pair => {
    const angle = (i / corners) * 2 * Math.PI;
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
  });
}

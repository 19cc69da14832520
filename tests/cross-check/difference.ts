import type { Answers } from "./answers.ts";

/** Forces and moments are compared with no less than this, N and N·m: below it they are rounding. */
const LEAST_FORCE = 1;

/** Largest difference of two lists over the largest value in the second, or over `least`. */
function relative(ours: readonly number[], theirs: readonly number[], least = 0): number {
  if (ours.length !== theirs.length) throw new Error(`${ours.length} values against ${theirs.length}`);
  let [off, size] = [0, least];
  for (const [i, value] of theirs.entries()) {
    off = Math.max(off, Math.abs((ours[i] ?? Number.NaN) - value));
    size = Math.max(size, Math.abs(value));
  }
  return size === 0 ? off : off / size;
}

const part = (values: readonly number[], turning: boolean): number[] => values.filter((_, i) => i % 6 >= 3 === turning);

export type Quantity =
  | "translations"
  | "rotations"
  | "reactions"
  | "reacting moments"
  | "spring forces"
  | "spring moments"
  | "pushes"
  | "modes"
  | "factors";

/** The difference of each quantity over its largest value in the frame; modes and factors one by one. Absent where there is none. */
export function differences(ours: Answers, theirs: Answers): Map<Quantity, number> {
  const found = new Map<Quantity, number>();
  const note = (name: Quantity, own: readonly number[], other: readonly number[], least = LEAST_FORCE): void => {
    if (other.some((value) => value !== 0)) found.set(name, relative(own, other, least));
  };
  note("translations", part(ours.displacements, false), part(theirs.displacements, false), 0);
  note("rotations", part(ours.displacements, true), part(theirs.displacements, true), 0);
  note("reactions", part(ours.reactions, false), part(theirs.reactions, false));
  note("reacting moments", part(ours.reactions, true), part(theirs.reactions, true));
  note("spring forces", part(ours.springs, false), part(theirs.springs, false));
  note("spring moments", part(ours.springs, true), part(theirs.springs, true));
  note("pushes", ours.pushes, theirs.pushes);
  for (const name of ["modes", "factors"] as const)
    if (theirs[name].length > 0)
      found.set(name, Math.max(...theirs[name].map((value, i) => relative([ours[name][i] ?? Number.NaN], [value]))));
  return found;
}

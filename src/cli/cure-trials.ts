import { Unusable } from "./unusable.ts";

/** Changed frames that are inspected a file in search of cures when nothing is said: a second or two of work. */
export const CURE_TRIALS = 16;

/** Reads the argument of --cures. @throws Unusable */
export function trials(written: string): number {
  const count = Number(written);
  if (!Number.isInteger(count) || count < 0 || count > 1000)
    throw new Unusable(`--cures ${written}: found "${written}", expected a whole number from 0 to 1000`);
  return count;
}

import { MOST_TRIED } from "../inspection/cure-budget.ts";
import { Unusable } from "./unusable.ts";

/** What is said of --cures. */
export const CURES_SAID =
  "changed frames to try a file in search of cures (default: 16, fewer of a frame of more than 100 bars)";

/** Reads the argument of --cures. @throws Unusable */
export function trials(written: string): number {
  const count = Number(written);
  if (!Number.isInteger(count) || count < 0 || count > MOST_TRIED)
    throw new Unusable(`--cures ${written}: found "${written}", expected a whole number from 0 to ${MOST_TRIED}`);
  return count;
}

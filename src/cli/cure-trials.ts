import { Unusable } from "./unusable.ts";

/** What is said of --cures. */
export const CURES_SAID =
  "changed frames to try a file in search of cures (default: 16, fewer of a frame of more than 400 bars)";

/** Reads the argument of --cures. @throws Unusable */
export function trials(written: string): number {
  const count = Number(written);
  if (!Number.isInteger(count) || count < 0 || count > 1000)
    throw new Unusable(`--cures ${written}: found "${written}", expected a whole number from 0 to 1000`);
  return count;
}

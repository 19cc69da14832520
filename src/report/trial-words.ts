import { count } from "./count.ts";

/** "7 changes tried in search of cures, 4 more not tried", "12 changes in search of cures not tried". */
export function trialWords(tried: number, untried: number): string {
  if (tried === 0) return `${count(untried, "change")} in search of cures not tried`;
  return `${count(tried, "change")} tried in search of cures, ${untried} more not tried`;
}

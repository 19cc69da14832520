import type { Problem } from "../model/problem.ts";
import { showHidden } from "../model/text/quote.ts";

/** What is wrong with a file, on one line. */
export function problemWords({ place, found, expected, mend }: Problem): string {
  const pointer = place.pointer === "" ? "" : `, at ${showHidden(place.pointer)}`;
  return `${showHidden(place.file)}:${place.line}:${place.column}${pointer}: found ${found}; expected ${expected}${mend === undefined ? "" : `; ${mend}`}`;
}

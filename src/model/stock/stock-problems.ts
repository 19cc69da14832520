import { compareProblems, type Place, type Problem } from "../problem.ts";
import { type Complaint, PROBLEMS_TOLD } from "../resolve/complaints.ts";

/** Where the values of a stock file stand. */
export interface StockPlaces {
  readonly place: (pointer: string) => Place;
  /** Many places in one pass over the text; without it every place costs a pass. */
  readonly places?: (pointers: Iterable<string>) => ReadonlyMap<string, Place>;
}

/**
 * Puts complaints at their places: at most 200, errors before warnings where not all can be told, then one that counts the rest at the end
 * of the file; in the order of the text.
 */
export function stockProblems(complaints: readonly Complaint[], { place, places }: StockPlaces): readonly Problem[] {
  const errors = complaints.filter(({ weight }) => weight === "error");
  const warnings = complaints.filter(({ weight }) => weight === "warning");
  const told = [...errors, ...warnings].slice(0, PROBLEMS_TOLD);
  const at = places?.(told.map(({ pointer }) => pointer));
  const problems = told.map(({ pointer, code, weight, found, expected, mend }): Problem => {
    const problem = { code, weight, place: at?.get(pointer) ?? place(pointer), found, expected };
    return mend === undefined ? problem : { ...problem, mend };
  });
  problems.sort(compareProblems);
  const rest = complaints.length - told.length;
  if (rest > 0) {
    const { endLine: line, endColumn: column, ...whole } = place("");
    problems.push({
      code: "more-problems",
      weight: errors.length > PROBLEMS_TOLD ? "error" : "warning",
      place: { ...whole, line, column, endLine: line, endColumn: column },
      found: `${rest} more ${rest === 1 ? "problem" : "problems"}`,
      expected: "none",
      mend: "mend those above first",
    });
  }
  return problems;
}

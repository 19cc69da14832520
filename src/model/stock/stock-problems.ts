import { compareProblems, type Place, type Problem } from "../problem.ts";
import { type Complaint, PROBLEMS_TOLD } from "../resolve/complaints.ts";

/**
 * Puts complaints at their places: at most 200, errors before warnings where not all can be told, then one that counts the rest; in the
 * order of the text. Only what is told is looked up, for every look-up is a pass over the text.
 */
export function stockProblems(complaints: readonly Complaint[], place: (pointer: string) => Place): readonly Problem[] {
  const errors = complaints.filter(({ weight }) => weight === "error");
  const warnings = complaints.filter(({ weight }) => weight === "warning");
  const told = [...errors, ...warnings].slice(0, PROBLEMS_TOLD);
  const problems = told.map(({ code, weight, pointer, found, expected, mend }): Problem => {
    const problem = { code, weight, place: place(pointer), found, expected };
    return mend === undefined ? problem : { ...problem, mend };
  });
  problems.sort(compareProblems);
  const rest = complaints.length - told.length;
  if (rest > 0) {
    problems.push({
      code: "more-problems",
      weight: errors.length > PROBLEMS_TOLD ? "error" : "warning",
      place: place(""),
      found: `${rest} more ${rest === 1 ? "problem" : "problems"}`,
      expected: "none",
      mend: "mend those above first",
    });
  }
  return problems;
}

import { compareProblems, type Problem } from "../problem.ts";
import type { Document } from "../text/document.ts";

/** A problem before it is placed: by pointer, so that all places of a file are found in one pass over its text. */
export interface Complaint {
  readonly code: string;
  readonly weight: Problem["weight"];
  readonly pointer: string;
  /** At the key of the value instead of the value. */
  readonly atKey?: boolean;
  /** A second place the words speak of: "{line}" in them becomes its line. */
  readonly other?: string;
  readonly found: string;
  readonly expected: string;
  readonly mend?: string;
}

/** Problems of one file that are told one by one; how many more there are is told last. */
export const PROBLEMS_TOLD = 200;

/** Puts complaints at their places in the text, in the order of the text, each once. */
export function placed(document: Document, complaints: readonly Complaint[]): readonly Problem[] {
  const pointers = new Set<string>();
  for (const { pointer, other } of complaints) {
    pointers.add(pointer);
    if (other !== undefined) pointers.add(other);
  }
  const places = document.places(pointers);
  return (
    complaints
      .map(({ code, weight, pointer, atKey, other, found, expected, mend }) => {
        const place = atKey === true ? document.keyPlace(pointer) : (places.get(pointer) ?? document.place(pointer));
        const line = other === undefined ? "" : String(places.get(other)?.line ?? 1);
        const said = (words: string): string => words.replace("{line}", () => line);
        const problem = { code, weight, place, found: said(found), expected: said(expected) };
        return mend === undefined ? problem : { ...problem, mend: said(mend) };
      })
      .sort(compareProblems)
      // What stands for both ends of a bar is read for each of them.
      .filter((problem, index, all) => {
        const before = all[index - 1];
        return before === undefined || compareProblems(before, problem) !== 0;
      })
  );
}

/** The problem that stands for those that are not told; it comes last, at the end of the file. */
export function untold(document: Document, found: string, weight: Problem["weight"]): Problem {
  const { endLine: line, endColumn: column, ...rest } = document.place("");
  const place = { ...rest, line, column, endLine: line, endColumn: column };
  return { code: "more-problems", weight, place, found, expected: "none", mend: "mend those above first" };
}

/** At most 200 problems, errors before warnings where not all can be told, then one that counts the rest; in the order of the text. */
export function capped(document: Document, problems: readonly Problem[]): readonly Problem[] {
  if (problems.length <= PROBLEMS_TOLD) return problems;
  const errors = problems.filter((problem) => problem.weight === "error");
  const warnings = problems.filter((problem) => problem.weight === "warning");
  const told = [...errors.slice(0, PROBLEMS_TOLD), ...warnings.slice(0, Math.max(0, PROBLEMS_TOLD - errors.length))];
  told.sort(compareProblems);
  const rest = problems.length - told.length;
  const weight = errors.length > PROBLEMS_TOLD ? "error" : "warning";
  told.push(untold(document, `${rest} more ${rest === 1 ? "problem" : "problems"}`, weight));
  return told;
}

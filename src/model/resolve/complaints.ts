import { comparePlaces, compareProblems, type Problem } from "../problem.ts";
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

/** Puts complaints at their places in the text, in the order of the text. */
export function placed(document: Document, complaints: readonly Complaint[]): readonly Problem[] {
  const pointers = new Set<string>();
  for (const { pointer, other } of complaints) {
    pointers.add(pointer);
    if (other !== undefined) pointers.add(other);
  }
  const places = document.places(pointers);
  return complaints
    .map(({ code, weight, pointer, atKey, other, found, expected, mend }) => {
      const place = atKey === true ? document.keyPlace(pointer) : (places.get(pointer) ?? document.place(pointer));
      const line = other === undefined ? "" : String(places.get(other)?.line ?? 1);
      const said = (words: string): string => words.replace("{line}", () => line);
      const problem = { code, weight, place, found: said(found), expected: said(expected) };
      return mend === undefined ? problem : { ...problem, mend: said(mend) };
    })
    .sort(compareProblems);
}

/** At most 200 problems, errors before warnings where not all can be told, then one that counts the rest; in the order of the text. */
export function capped(problems: readonly Problem[], whole: Problem["place"]): readonly Problem[] {
  if (problems.length <= PROBLEMS_TOLD) return problems;
  const errors = problems.filter((problem) => problem.weight === "error");
  const warnings = problems.filter((problem) => problem.weight === "warning");
  const told = [...errors.slice(0, PROBLEMS_TOLD), ...warnings.slice(0, Math.max(0, PROBLEMS_TOLD - errors.length))];
  told.sort((a, b) => comparePlaces(a.place, b.place) || compareProblems(a, b));
  const rest = problems.length - told.length;
  const weight = errors.length > PROBLEMS_TOLD ? "error" : "warning";
  const found = `${rest} more ${rest === 1 ? "problem" : "problems"}`;
  told.push({ code: "more-problems", weight, place: whole, found, expected: "none", mend: "mend those above first" });
  return told;
}

import type { Report } from "../../inspection/report.ts";
import { isDoubtful, type Problem } from "../../model/problem.ts";
import { alikeProblems, othersToo } from "../alike-problems.ts";
import { count } from "../count.ts";
import { type Page, paragraph } from "./page.ts";

function* listOf(page: Page, problems: readonly Problem[]): Generator<string> {
  for (const alike of alikeProblems(problems)) {
    const { place, found, expected, mend } = alike.first;
    const pointer = place.pointer === "" ? "" : `, at ${place.pointer}`;
    yield "\n";
    yield paragraph(page, `${place.file}:${place.line}:${place.column}${pointer}${othersToo(alike)}`, 0, page.ink.part);
    yield paragraph(page, `found ${found}; expected ${expected}`, 2);
    if (mend !== undefined) yield paragraph(page, `mend: ${mend}`, 2);
  }
}

/** What is wrong with the file itself, and what failed in the tool or in a team's rule. */
export function* problemLines(page: Page, report: Report): Generator<string> {
  const errors = report.problems.filter((problem) => problem.weight === "error");
  const warnings = report.problems.filter((problem) => problem.weight === "warning");
  if (errors.length > 0) {
    yield paragraph(page, `cannot be read, for ${count(errors.length, "reason")}:`);
    yield* listOf(page, errors);
    yield "\n";
  }
  if (warnings.length > 0) {
    const weight = warnings.some(isDoubtful) ? "; keeps the frame from accept" : "";
    yield paragraph(page, `doubtful in the file, in ${count(warnings.length, "place")}${weight}:`);
    yield* listOf(page, warnings);
    yield "\n";
  }
  for (const { rule, fact, at, message } of report.failures) {
    const what = rule === undefined ? (fact === undefined ? "" : ` fact ${fact}`) : ` rule ${rule}`;
    const where = at === undefined ? "" : ` at ${at.id}`;
    yield paragraph(page, `FAILED${what}${where}: ${message}`, 0, page.ink.reject);
  }
  if (report.failures.length > 0) yield "\n";
}

import { nothingRead } from "../inspection/nothing-read.ts";
import type { Report } from "../inspection/report.ts";
import type { Problem } from "../model/problem.ts";

/** The report of a file whose bytes could not be had, or whose stock could not be read. */
export function unreadReport(file: string, problems: readonly Problem[]): Report {
  return { ...nothingRead(file), problems };
}

/** A problem of a whole file: nothing of it was read. */
export function fileProblem(file: string, why: string, expected: string): Problem {
  return {
    code: "file-unreadable",
    weight: "error",
    place: { file, pointer: "", line: 1, column: 1, endLine: 1, endColumn: 1 },
    found: `a file that cannot be read: ${why}`,
    expected,
  };
}

/** The report of a file on which the tool itself failed. */
export function failedReport(file: string, message: string): Report {
  return { ...nothingRead(file), failures: [{ message }] };
}

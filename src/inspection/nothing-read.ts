import type { Report } from "./report.ts";

/** The report of a file of which nothing was read or judged. */
export function nothingRead(file: string): Report {
  return {
    file,
    title: "",
    units: "mm-N-kg",
    verdict: "unread",
    complete: false,
    counts: { bars: 0, joints: 0, cases: 0, parts: 0 },
    problems: [],
    findings: [],
    undecided: [],
    tallies: [],
    failures: [],
    assumed: [],
    changed: [],
    concessionRemarks: [],
    cureTrials: { tried: 0, untried: 0 },
  };
}

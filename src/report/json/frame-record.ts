import type { Finding, Report } from "../../inspection/report.ts";
import { sentence } from "../sentence.ts";

function findingRecord(finding: Finding): object {
  const { rule, key, level, at, where, shown, related, advice, measure, place, print, conceded, cures } = finding;
  return {
    rule,
    message: key,
    level,
    at,
    where,
    text: sentence(finding),
    shown,
    related,
    advice,
    measure,
    place,
    fingerprint: print,
    conceded,
    cures,
  };
}

/** One frame as the published format has it: named here field by field, so that the inside may change and the format not. */
export function frameRecord(report: Report): object {
  const {
    file,
    title,
    revision,
    units,
    verdict,
    complete,
    counts,
    problems,
    findings,
    undecided,
    tallies,
    failures,
    assumed,
    changed,
  } = report;
  return {
    file,
    title,
    revision,
    units,
    verdict,
    complete,
    counts,
    problems,
    findings: findings.map(findingRecord),
    undecided,
    rules: tallies,
    failures,
    assumed,
    changed,
    concessions: report.concessionRemarks,
    cureTrials: report.cureTrials,
  };
}

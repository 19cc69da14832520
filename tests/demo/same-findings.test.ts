import { describe, expect, it } from "vitest";
import type { Finding, Report } from "../../src/inspection/report.ts";
import { FAULTY, inspectText, SOUND, textOf } from "./inspect-demo.ts";
import { REWRITINGS, type Rewriting } from "./same-frame.ts";
import type { Json } from "./walk-frame.ts";

/** Digits that a value keeps under another numbering of the unknowns and another rounding of the coordinates. */
const DIGITS = 6;

function words({ rule, key, level, at, related, measure }: Finding, idBefore: Rewriting["idBefore"]): string {
  // Of two parts that share a fault, the one first in the file bears the finding.
  const parts = [...new Set([at, ...related.map((other) => other.at)].map(({ id }) => idBefore(id)))].sort();
  const value = measure === undefined ? [] : [measure.measured.toPrecision(DIGITS), measure.limit.toPrecision(DIGITS)];
  return [rule, key, level, ...parts, ...value].join(" ");
}

/** All that a report says but its wording, places in the file and the order of equals. */
function said(report: Report, idBefore: Rewriting["idBefore"]) {
  return {
    verdict: report.verdict,
    complete: report.complete,
    counts: report.counts,
    problems: report.problems,
    findings: report.findings.map((finding) => words(finding, idBefore)).sort(),
    undecided: report.undecided.map(({ rules, holds }) => ({ rules, holds })),
    tallies: report.tallies.map(({ rule, closest, ...counts }) => {
      // Below this a utilisation is the rounding of a zero.
      const used = Math.max(closest?.utilisation ?? 0, 1e-9).toPrecision(DIGITS);
      return `${rule} ${JSON.stringify(counts)} closest ${used}`;
    }),
  };
}

/** A faulty demo is written in half of all ways, the sound one it comes from in the others. */
const written = [SOUND, FAULTY].flatMap((demos, half) =>
  demos.map((demo) => ({ demo, ways: REWRITINGS.filter((_, at) => demo === "first-bench" || at % 2 === half) })),
);

describe.each(written)("$demo says the same", ({ demo, ways }) => {
  const first = said(inspectText(demo, textOf(demo)), (id) => id);

  it.each(ways)("$how", ({ rewrite, idBefore }) => {
    const file = JSON.parse(textOf(demo)) as Json;
    const rewritten = JSON.stringify(rewrite(file));
    expect(rewritten).not.toBe(JSON.stringify(file));
    expect(said(inspectText(demo, rewritten), idBefore)).toEqual(first);
  });
});

import { describe, expect, it } from "vitest";
import type { Report } from "../../src/inspection/report.ts";
import { whole } from "../../src/model/generated/report-check.generated.js";
import { jsonReporter } from "../../src/report/json/json-reporter.ts";
import { accepted, cards, rejected, sagging, unread } from "./sample-report.ts";

function print(reports: readonly Report[], faults: readonly string[] = []): string {
  const reporter = jsonReporter({ version: "1.2.3", faults });
  return [
    ...reporter.begin(cards),
    ...reports.flatMap((report) => [...reporter.frame(report)]),
    ...reporter.end(),
  ].join("");
}

describe("the json report", () => {
  it.each([
    ["several frames", [accepted, rejected, unread], []],
    ["no frame at all", [], ["no file matched"]],
  ])("is valid against the published schema with %s", (_, reports, faults) => {
    const document: unknown = JSON.parse(print(reports, faults));
    expect(whole(document), JSON.stringify(whole.errors)).toBe(true);
  });

  it("holds the numbers in SI units, the texts, and the totals", () => {
    const document = JSON.parse(print([accepted, rejected])) as {
      frames: { file: string; findings: { text: string; measure?: { measured: number }; fingerprint: string }[] }[];
      total: object;
    };
    const finding = document.frames[1]?.findings[1];
    expect(finding?.measure?.measured).toBe(0.0081);
    expect(finding?.text).toBe('sags 8.1 mm under "trays"; 4.9 mm allowed (165 %)');
    expect(finding?.fingerprint).toBe(sagging.print);
    expect(document.total).toEqual({ frames: 2, findings: 3, accept: 1, hold: 0, reject: 1, unread: 0 });
  });

  it("refuses a number that JSON cannot hold instead of writing null", () => {
    const measure = { ...sagging.measure, measured: Number.NaN } as Report["findings"][number]["measure"];
    const findings = [measure === undefined ? sagging : { ...sagging, measure }];
    expect(() => print([{ ...rejected, findings }])).toThrow("measured is NaN, which JSON cannot hold");
  });
});

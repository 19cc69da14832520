import { readFileSync } from "node:fs";
import AjvDraft04 from "ajv-draft-04";
import addFormats from "ajv-formats";
import { describe, expect, it } from "vitest";
import type { Report } from "../../src/inspection/report.ts";
import { sarifReporter } from "../../src/report/sarif/sarif-reporter.ts";
import { accepted, cards, loose, openEnd, rejected, sagging, unread } from "./sample-report.ts";

const ajv = new AjvDraft04.default({ strict: false, allErrors: true });
addFormats.default(ajv as never);
// OASIS SARIF 2.1.0 with Errata 01; see the note beside the file.
const valid = ajv.compile(JSON.parse(readFileSync("tests/fixtures/sarif-2.1.0.json", "utf8")));

interface Located {
  readonly physicalLocation: {
    readonly artifactLocation: { readonly uri: string };
    readonly region: Record<string, number>;
  };
}
interface Result {
  readonly ruleId: string;
  readonly ruleIndex?: number;
  readonly kind: string;
  readonly level: string;
  readonly message: { readonly text: string; readonly id?: string; readonly arguments?: readonly string[] };
  readonly locations: readonly Located[];
  readonly relatedLocations: readonly (Located & { readonly id: number })[];
  readonly partialFingerprints: Record<string, string>;
  readonly suppressions: readonly { readonly justification: string }[];
  readonly properties: { readonly measured?: { readonly value: number; readonly limit: number } };
}
interface Run {
  readonly tool: {
    readonly driver: {
      readonly rules: readonly {
        id: string;
        fullDescription: { text: string };
        messageStrings: Record<string, { text: string }>;
      }[];
    };
  };
  readonly columnKind: string;
  readonly results: readonly Result[];
  readonly invocations: readonly {
    executionSuccessful: boolean;
    toolExecutionNotifications: readonly { message: { text: string } }[];
    toolConfigurationNotifications: readonly object[];
  }[];
}

function print(reports: readonly Report[], faults: readonly string[] = []): string {
  const reporter = sarifReporter({ version: "1.2.3", faults });
  return [
    ...reporter.begin(cards),
    ...reports.flatMap((report) => [...reporter.frame(report)]),
    ...reporter.end(),
  ].join("");
}
function runOf(text: string): Run {
  const { runs } = JSON.parse(text) as { runs: readonly [Run] };
  return runs[0];
}

const HOSTILE = "a b/../%41:#?é\u202e[x](1){0}";
const failing: Report = {
  ...rejected,
  complete: false,
  failures: [{ rule: "bar.sags", at: sagging.at, message: "it threw" }],
};
const hostile: Report = {
  ...rejected,
  file: HOSTILE,
  findings: [{ ...sagging, where: HOSTILE, advice: HOSTILE, place: { ...sagging.place, file: HOSTILE } }],
};

const logs: readonly (readonly [string, string])[] = [
  ["frames of every verdict", print([accepted, rejected, unread])],
  ["a rule that failed", print([failing])],
  ["hostile names", print([hostile])],
  ["nothing but a fault", print([], ["no file matches x"])],
];

describe.each(logs)("the SARIF log of %s", (_, text) => {
  const run = runOf(text);

  it("is valid against the schema of SARIF 2.1.0, Errata 01", () => {
    expect(valid(JSON.parse(text)), JSON.stringify(valid.errors)).toBe(true);
  });

  it("names each rule once and points at rules that are there", () => {
    const ids = run.tool.driver.rules.map((rule) => rule.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const result of run.results)
      if (result.ruleIndex !== undefined) expect(ids[result.ruleIndex]).toBe(result.ruleId);
    for (const rule of run.tool.driver.rules) expect(rule.fullDescription.text.length).toBeLessThanOrEqual(1024);
  });

  it("gives each result a place in a relative file, counted from 1 in UTF-16 units", () => {
    expect(run.columnKind).toBe("utf16CodeUnits");
    for (const { physicalLocation } of run.results.flatMap((result) => [
      ...result.locations,
      ...result.relatedLocations,
    ])) {
      expect(physicalLocation.artifactLocation.uri).toMatch(/^(?!\/)[\w.~%!'()*/-]+$/);
      for (const number of Object.values(physicalLocation.region)) expect(number).toBeGreaterThanOrEqual(1);
    }
  });

  it("has suppressions on every result and fingerprints that are unique", () => {
    for (const result of run.results) expect(Array.isArray(result.suppressions)).toBe(true);
    const prints = run.results.map((result) => result.partialFingerprints.primaryLocationLineHash);
    expect(new Set(prints).size).toBe(prints.length);
    expect(prints.every((mark) => /^[0-9a-f]{32}:1$/.test(mark ?? ""))).toBe(true);
  });

  it("has as many arguments as placeholders and no link without its location", () => {
    for (const { ruleIndex, message, relatedLocations } of run.results) {
      for (const [, id] of message.text.matchAll(/\]\((\d+)\)/g))
        expect(relatedLocations.map((place) => String(place.id))).toContain(id);
      if (message.id === undefined) continue;
      const template = run.tool.driver.rules[ruleIndex ?? -1]?.messageStrings[message.id]?.text ?? "";
      const placeholders = new Set(Array.from(template.matchAll(/\{(\d+)\}/g), ([, n]) => n));
      expect(placeholders.size).toBe(message.arguments?.length);
    }
  });
});

describe("what the SARIF log says", () => {
  const run = runOf(print([rejected]));
  const [turns, sags, bare, ...open] = run.results;

  it("maps reject, hold and note, and leaves undecided open", () => {
    expect([turns?.level, sags?.level, bare?.level]).toEqual(["error", "warning", "note"]);
    expect(open.map(({ ruleId, kind, level }) => [ruleId, kind, level])).toEqual([
      ["frame.sways", "open", "none"],
      ["frame.buckles", "open", "none"],
    ]);
  });

  it("keeps message, arguments, numbers and the concession", () => {
    expect(sags?.message.text).toBe(
      'rail-3, between leg-1 and leg-4: sags 8.1 mm under "trays"; 4.9 mm allowed (165 %). See [leg-1](1).',
    );
    expect(sags?.message.arguments).toEqual(["8.1 mm", "trays"]);
    expect(sags?.properties.measured).toMatchObject({ value: 0.0081, limit: 0.0049 });
    expect(bare?.suppressions).toMatchObject([{ justification: "behind the wall" }]);
  });

  it("keeps a finding's mark when lines and values change, and changes it with part or file", () => {
    const markOf = (findings: Report["findings"], file = rejected.file): string | undefined =>
      runOf(print([{ ...rejected, file, findings }])).results[0]?.partialFingerprints["frameElement/v1"];
    const mark = markOf([sagging]);
    expect(markOf([{ ...sagging, place: loose.place, text: "sags 9 mm" }])).toBe(mark);
    expect(markOf([openEnd])).not.toBe(mark);
    expect(markOf([sagging], "other.frame.json")).not.toBe(mark);
  });

  it("tells of unread files, failures and faults as notifications of an unsuccessful run", () => {
    const torn = runOf(print([unread])).invocations[0];
    expect(torn?.executionSuccessful).toBe(false);
    expect(torn?.toolExecutionNotifications[0]?.message.text).toContain('found "20 mn"');
    expect(runOf(print([failing])).invocations[0]?.executionSuccessful).toBe(false);
    expect(runOf(print([], ["no file matches x"])).invocations[0]?.toolConfigurationNotifications).toHaveLength(1);
    expect(run.invocations[0]?.executionSuccessful).toBe(true);
  });
});

import { readFileSync } from "node:fs";
import AjvDraft04 from "ajv-draft-04";
import addFormats from "ajv-formats";
import fc from "fast-check";
import { expect, it } from "vitest";
import type { Finding, Report, Reporter } from "../../src/inspection/report.ts";
import { whole } from "../../src/model/generated/report-check.generated.js";
import { jsonReporter } from "../../src/report/json/json-reporter.ts";
import { sarifReporter } from "../../src/report/sarif/sarif-reporter.ts";
import { textReporter } from "../../src/report/text/text-reporter.ts";
import { cards, openEnd, rejected, sagging, unread } from "./sample-report.ts";

const ajv = new AjvDraft04.default({ strict: false });
addFormats.default(ajv as never);
const sarif = ajv.compile(JSON.parse(readFileSync("tests/fixtures/sarif-2.1.0.json", "utf8")));

const parts = [
  "\u001b[31m",
  "\r\n",
  "\u202e",
  "\u2066",
  "\u200d",
  "\ufeff",
  "\ud800",
  "](0)",
  "{0}",
  "%0A",
  "../",
  "<b>",
  "`",
  "|",
  "::error::",
  "\u0000",
  " ",
  "__proto__",
];
const hostile = fc
  .array(fc.oneof(fc.constantFrom(...parts), fc.string({ unit: "grapheme" })), { minLength: 1, maxLength: 6 })
  .map((pieces) => pieces.join(""));

function withTexts(next: () => string): Report {
  const finding = (base: Finding): Finding => ({
    ...base,
    rule: next(),
    key: next(),
    where: next(),
    text: next(),
    shown: { [next()]: next() },
    advice: next(),
    at: { kind: "bar", id: next() },
    related: [{ at: { kind: "bar", id: next() }, place: { ...base.place, file: next(), pointer: next() } }],
    place: { ...base.place, file: next(), pointer: next() },
    print: next(),
    cures: [{ words: next(), edits: [{ pointer: next(), to: next() }], after: next() }],
  });
  return {
    ...rejected,
    file: next(),
    title: next(),
    complete: false,
    findings: [finding(sagging), finding(openEnd)],
    problems: unread.problems.map((problem) => ({ ...problem, found: next(), expected: next(), mend: next() })),
    failures: [{ rule: next(), message: next() }],
    undecided: [{ why: next(), rules: [next()], at: [{ kind: "bar", id: next() }], holds: true }],
    assumed: [next()],
    changed: [{ what: next(), value: next(), usual: next(), by: "part", parts: [next()] }],
    concessionRemarks: [next()],
  };
}

const reports = fc.infiniteStream(hostile).map((texts) => {
  const next = (): string => String(texts.next().value);
  return withTexts(next);
});

function print(reporter: Reporter, report: Report): string {
  return [...reporter.begin(cards), ...reporter.frame(report), ...reporter.end()].join("");
}

it("no text of a frame can move the cursor or hide in the ticket, or colour it", () => {
  fc.assert(
    fc.property(reports, (report) => {
      expect(print(textReporter(), report).replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
    }),
  );
});

it("no text of a frame makes the json report invalid", () => {
  fc.assert(
    fc.property(reports, (report) => {
      expect(whole(JSON.parse(print(jsonReporter({ version: "1" }), report)))).toBe(true);
    }),
  );
});

it("no text of a frame makes the SARIF log invalid, forms a link or leaves the folder's names", () => {
  fc.assert(
    fc.property(reports, (report) => {
      const log = JSON.parse(print(sarifReporter({ version: "1" }), report)) as {
        runs: {
          results: {
            message: { text: string };
            locations: { physicalLocation: { artifactLocation: { uri: string } } }[];
          }[];
        }[];
      };
      expect(sarif(log), JSON.stringify(sarif.errors)).toBe(true);
      for (const { message, locations } of log.runs[0]?.results ?? []) {
        const links = Array.from(message.text.matchAll(/(?<!\\)\]\(([^)]*)\)/g), ([, id]) => id);
        expect(links.every((id) => id === "1")).toBe(true);
        for (const { physicalLocation } of locations)
          expect(physicalLocation.artifactLocation.uri).not.toMatch(/[^\x21-\x7e]|:/);
      }
    }),
  );
});

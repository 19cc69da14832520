import type { Finding, Report, Reporter, Verdict } from "../../inspection/report.ts";
import { count } from "../count.ts";
import { closingLines, undecidedLines } from "./closing-lines.ts";
import { findingsOfPart } from "./finding-lines.ts";
import { inkFor } from "./ink.ts";
import { type Page, paragraph } from "./page.ts";
import { problemLines } from "./problem-lines.ts";

/** Findings printed for one frame; the line after them says how many more there are. */
export const FINDINGS_SHOWN = 10_000;

const STANDARD_WIDTH = 100;
const VERDICTS: readonly Verdict[] = ["unread", "reject", "hold", "accept"];

export interface TextOptions {
  /** Columns; standard 100. */
  readonly width?: number;
  readonly coloured?: boolean;
}

function headerOf(page: Page, report: Report): string {
  const { counts, verdict, complete } = report;
  const size = [count(counts.bars, "bar"), count(counts.joints, "joint"), count(counts.cases, "load case")].join(", ");
  const word = verdict.toUpperCase() + (complete || verdict === "unread" ? "" : ", INCOMPLETE");
  const colour = { accept: page.ink.sound, hold: page.ink.hold, reject: page.ink.reject, unread: page.ink.reject }[
    verdict
  ];
  const parts = verdict === "unread" ? [report.file] : [report.file, size];
  const line = paragraph(page, [...parts, word].join(" · "));
  return line.endsWith(`${word}\n`) ? `${line.slice(0, -word.length - 1)}${colour(word)}\n` : line;
}

/** Findings of one part under its name, in the order the parts come. */
function byPart(findings: readonly Finding[]): ReadonlyMap<string, readonly Finding[]> {
  const parts = new Map<string, Finding[]>();
  for (const finding of findings) {
    const known = parts.get(finding.where);
    if (known === undefined) parts.set(finding.where, [finding]);
    else known.push(finding);
  }
  return parts;
}

/** Parts of which the same is said stand above one another, and it is said once. */
function* partLines(page: Page, report: Report): Generator<string> {
  const headings = new Map<string, string>();
  for (const [where, findings] of byPart(report.findings.slice(0, FINDINGS_SHOWN))) {
    const place = findings[0]?.place;
    const file = place === undefined || place.file === report.file ? "" : `${place.file}, `;
    const words = place === undefined ? where : `${where} (${file}line ${place.line})`;
    const said = findingsOfPart(page, findings);
    headings.set(said, `${headings.get(said) ?? ""}${paragraph(page, words, 0, page.ink.part)}`);
  }
  for (const [said, heading] of headings) yield `${heading}${said}\n`;
  const left = report.findings.length - FINDINGS_SHOWN;
  if (left > 0)
    yield paragraph(page, `${count(left, "more finding")} not shown here; the json and sarif reports hold all.`);
}

/** The inspection ticket: for each frame its verdict, its parts worst first, then what was looked at and assumed. */
export function textReporter({ width = STANDARD_WIDTH, coloured = false }: TextOptions = {}): Reporter {
  const page: Page = { width, ink: inkFor(coloured) };
  const verdicts = new Map<Verdict, number>();
  let frames = 0;
  let findings = 0;
  let incomplete = 0;
  return {
    begin: () => [],
    *frame(report) {
      if (frames > 0) yield "\n";
      frames++;
      findings += report.findings.length;
      if (!report.complete && report.verdict !== "unread") incomplete++;
      verdicts.set(report.verdict, (verdicts.get(report.verdict) ?? 0) + 1);
      yield headerOf(page, report);
      yield "\n";
      yield* problemLines(page, report);
      yield* partLines(page, report);
      yield* undecidedLines(page, report);
      yield* closingLines(page, report);
    },
    *end() {
      if (frames < 2) return;
      const words = VERDICTS.filter((verdict) => verdicts.has(verdict)).map(
        (verdict) => `${verdicts.get(verdict)} ${verdict}`,
      );
      if (incomplete > 0) words.push(`${incomplete} of them incomplete`);
      yield "\n";
      yield paragraph(
        page,
        `${count(frames, "frame")}: ${words.join(", ")} · ${count(findings, "finding")}`,
        0,
        page.ink.part,
      );
    },
  };
}

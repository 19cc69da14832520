import { sceneOf } from "../../../drawing/scene.ts";
import type { Report } from "../../../inspection/report.ts";
import type { Frame } from "../../../model/frame.ts";
import { count } from "../../count.ts";
import { revisionHash } from "../../sheet/hashes.ts";
import { html, type Markup } from "../../sheet/html.ts";
import { policyOf } from "../../sheet/policy.ts";
import { problemsOf } from "../../sheet/sections/problems.ts";
import { CAUTIONS } from "../../sheet/sections/record.ts";
import { STYLE } from "../../sheet/style.ts";
import type { Comparison } from "../forms.ts";
import { barMarks } from "./bar-marks.ts";
import { barsSection } from "./bars-section.ts";
import { findingsSection } from "./findings-section.ts";
import { overlaySection } from "./overlay-section.ts";
import { partsSection } from "./parts-section.ts";
import { COMPARE_STYLE } from "./style.ts";

/** One revision as it was read. */
export interface Revision {
  /** Absent where the file could not be read. */
  readonly frame?: Frame;
  readonly bytes: Uint8Array;
  /** Name of the house file in force. */
  readonly house?: string;
}

export interface ComparePageInput {
  readonly comparison: Comparison;
  readonly before: Revision;
  readonly after: Revision;
  /** Of trysquare. */
  readonly version: string;
}

const nameOf = ({ title, file }: Report): string => (title === "" ? file : title);

function verdictOf(word: string, report: Report): Markup {
  const { verdict, file, revision, counts, complete } = report;
  return html`<div class="verdict v-${verdict}"><p class="kind">${word}</p><p><strong>${verdict.toUpperCase()}</strong>${complete || verdict === "unread" ? "" : html` <em>incomplete</em>`}</p><p>${revision === undefined ? "" : html`Revision ${revision} · `}${file}</p><p class="tally">${count(counts.bars, "bar")}, ${count(counts.joints, "joint")}</p></div>
`;
}

function head({ before, after }: Comparison): Markup {
  return html`<header class="head">
<div class="name"><p class="kind">Comparison of two revisions</p>
<h1>${nameOf(after)}</h1>
${nameOf(before) === nameOf(after) ? "" : html`<p class="what">was ${nameOf(before)}</p>`}</div>
${verdictOf("Old", before)}${verdictOf("New", after)}</header>
`;
}

/** What keeps one of the two from being judged. */
function unread({ before, after }: Comparison): Markup {
  const problems = [before, after].flatMap((report) => report.problems);
  if (problems.length === 0) return html``;
  return html`<section class="open" id="open"><h2>The files</h2>${problemsOf(problems)}</section>
`;
}

function record({ comparison, before, after, version }: ComparePageInput): Markup {
  const row = (word: string, report: Report, { bytes, house }: Revision): Markup =>
    html`<tr><th scope="row">${word}</th><td>${report.file}</td><td>${report.revision ?? "none given"}</td><td>${house ?? "none: usual limits"}</td><td><code>${revisionHash(bytes)}</code></td></tr>
`;
  return html`<section class="record" id="record">
<h2>Record</h2>
<div class="wide" tabindex="0" role="region" aria-label="Files compared"><table><thead><tr><th scope="col">Frame</th><th scope="col">File</th><th scope="col">Revision</th><th scope="col">House</th><th scope="col">SHA-256 of the file</th></tr></thead><tbody>
${row("old", comparison.before, before)}${row("new", comparison.after, after)}</tbody></table></div>
<p>Both inspected by trysquare ${version}, with the limits in force for each.</p>
<h3>Cautions</h3>
<ul>${CAUTIONS.map((one) => html`<li>${one}</li>`)}</ul>
</section>
`;
}

function compared({ comparison, before, after }: ComparePageInput): Markup {
  const { bars, parts } = comparison;
  if (!bars || !before.frame || !after.frame)
    return html`<p>One of the two files could not be read: neither parts nor findings can be compared.</p>`;
  const marks = barMarks(bars, before.frame, after.frame);
  const [was, is] = [sceneOf(before.frame), sceneOf(after.frame)];
  const title = nameOf(comparison.after);
  return html`${overlaySection(title, was, is, marks)}${barsSection(bars, marks)}${parts ? partsSection(parts) : ""}${findingsSection(title, comparison.findings, { frame: after.frame, scene: is })}`;
}

/** What changed between two revisions as one HTML document without scripts, which needs nothing beside itself. The same input gives the same bytes. */
export function* compareDocument(input: ComparePageInput): Generator<string> {
  const { comparison, version } = input;
  const style = STYLE + COMPARE_STYLE;
  yield "<!doctype html>\n";
  yield html`<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policyOf(style)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="trysquare ${version}">
<title>Comparison: ${nameOf(comparison.after)}</title>
`.markup;
  yield `<style>${style}</style>\n</head>\n<body>\n`;
  yield html`${head(comparison)}<main>${unread(comparison)}${compared(input)}${record(input)}</main>
`.markup;
  yield "</body>\n</html>\n";
}

import type { Finding, Report } from "../../../inspection/report.ts";
import { count } from "../../count.ts";
import { html, type Markup } from "../html.ts";

const MEANS: Readonly<Record<Report["verdict"], string>> = {
  accept: "nothing found that keeps it from being built as drawn",
  hold: "to be settled before it is built",
  reject: "not to be built as drawn",
  unread: "the file could not be read, and nothing was judged",
};

function tally({ findings, undecided }: Report): string {
  const live = (level: Finding["level"]): number =>
    findings.filter((finding) => finding.level === level && !finding.conceded).length;
  const conceded = findings.filter((finding) => finding.conceded).length;
  return [
    `${live("reject")} reject`,
    `${live("hold")} hold`,
    `${live("note")} note`,
    `${conceded} conceded`,
    `${undecided.length} undecided`,
  ].join(" · ");
}

/** The head of the sheet: what was inspected and how it came out. */
export function titleOf(report: Report): Markup {
  const { title, revision, file, counts, verdict, complete } = report;
  const size = [count(counts.bars, "bar"), count(counts.joints, "joint"), count(counts.cases, "load case")].join(", ");
  return html`<header class="head">
<div class="name">
<p class="kind">Inspection sheet</p>
<h1>${title === "" ? file : title}</h1>
<p class="what">${revision === undefined ? "" : html`Revision ${revision} · `}${file} · ${size}</p>
</div>
<div class="verdict v-${verdict}">
<p><strong>${verdict.toUpperCase()}</strong>${complete || verdict === "unread" ? "" : html` <em>incomplete</em>`}</p>
<p>${MEANS[verdict]}</p>
<p class="tally">${tally(report)}</p>
</div>
</header>
`;
}

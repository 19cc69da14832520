import { lineDrawing } from "../../../drawing/line-drawing.ts";
import type { Mark } from "../../../drawing/marks.ts";
import type { Scene } from "../../../drawing/scene.ts";
import { useBar } from "../../../drawing/use-bar.ts";
import { views } from "../../../drawing/view.ts";
import type { FindingChanges, FindingPair } from "../../../inspection/compare.ts";
import type { Finding, Measure } from "../../../inspection/report.ts";
import type { Frame } from "../../../model/frame.ts";
import { listed, percent } from "../../count.ts";
import { sentence } from "../../sentence.ts";
import { findingPoints } from "../../sheet/finding-point.ts";
import { drawn, html, type Markup } from "../../sheet/html.ts";
import { alikeRows } from "./alike-rows.ts";

const levelOf = ({ conceded, level }: Finding): string => (conceded ? "conceded" : level);

function amount(measure: Measure | undefined): Markup {
  if (!measure) return html`–`;
  const { shown, sense, utilisation } = measure;
  return html`${shown.measured}; ${shown.limit} ${sense === "at most" ? "allowed" : "needed"}${utilisation === undefined ? "" : html`<br>${percent(utilisation)} ${drawn(useBar(utilisation))}`}`;
}

const trace = ({ rule, at, place }: Finding, others: readonly Finding[] = []): Markup =>
  html`<p class="trace"><code>${rule}</code>; worked out in docs/rules/${rule}.md. At ${listed([at, ...others.map((other) => other.at)].map(({ id }) => id))}, ${place.file} line ${place.line}.</p>`;

/** Findings of one revision alone that say the same, as of each screw of a joint; what is gone needs no mending. */
function single(
  [finding, ...others]: readonly [Finding, ...Finding[]],
  number: string | undefined,
  advice = finding.advice,
): Markup {
  const level = levelOf(finding);
  return html`<article class="finding l-${level}"><h4>${number === undefined ? "" : html`<span class="balloon w-${level}">${number}</span> `}<span class="level">${level.toUpperCase()}</span> ${finding.where}: ${sentence(finding)}${others.length > 0 ? `, ${others.length + 1} times` : ""}</h4>
${finding.measure ? html`<p>${amount(finding.measure)}</p>` : ""}
${advice === "" || advice === undefined ? "" : html`<p class="mend">To mend it: ${advice}.</p>`}
${trace(finding, others)}
</article>
`;
}

function pair({ before, after }: FindingPair, number: string | undefined): Markup {
  const [was, is] = [levelOf(before), levelOf(after)];
  return html`<article class="finding l-${is}"><h4>${number === undefined ? "" : html`<span class="balloon w-${is}">${number}</span> `}<span class="level">${was === is ? is.toUpperCase() : `${was.toUpperCase()} → ${is.toUpperCase()}`}</span> ${after.where}: ${sentence(after)}</h4>
<table class="pair"><thead><tr><th scope="col">Was</th><th scope="col">Is</th></tr></thead><tbody><tr><td>${amount(before.measure)}</td><td>${amount(after.measure)}</td></tr></tbody></table>
${trace(after)}
</article>
`;
}

/** The new frame with balloons at what is new and what got worse. */
function picture(title: string, scene: Scene, marks: readonly Mark[]): Markup {
  const svg = lineDrawing(scene, {
    view: views.isometric,
    size: [460, 380],
    title: `${title}, findings that are new or worse`,
    marks,
  });
  return html`<figure class="view risen">${drawn(svg)}<figcaption>The new revision; numbers are those of new and worse findings</figcaption></figure>
`;
}

/** Findings from bad news to good: new, worse, better, gone; those as before are counted. */
export function findingsSection(
  title: string,
  { fresh, worse, better, gone, alike }: FindingChanges,
  { frame, scene }: { readonly frame: Frame; readonly scene: Scene },
): Markup {
  const said = (finding: Finding): string =>
    `${finding.rule} ${levelOf(finding)} ${finding.where}: ${sentence(finding)}`;
  const news = alikeRows(fresh, said);
  const risen = [...news, ...worse.map(({ after }) => [after])];
  const numbers = new Map(risen.flatMap((same, i) => same.map((finding) => [finding, String(i + 1)] as const)));
  const pointOf = findingPoints(frame, scene);
  const marks = risen.flatMap(([finding]): Mark[] => {
    if (!finding) return [];
    const at = pointOf(finding);
    const weight =
      finding.conceded || finding.level === "note" ? "light" : finding.level === "hold" ? "plain" : "strong";
    return at ? [{ at, word: numbers.get(finding) ?? "", weight }] : [];
  });
  const list = (id: string, name: string, number: number, items: readonly Markup[]): Markup =>
    items.length === 0
      ? html``
      : html`<section id="${id}"><h3>${name}: ${number}</h3>
${items}</section>
`;
  const lists = html`<div>${list(
    "new",
    "New",
    fresh.length,
    news.map((same) => single(same, numbers.get(same[0]))),
  )}${list(
    "worse",
    "Worse",
    worse.length,
    worse.map((one) => pair(one, numbers.get(one.after))),
  )}${list(
    "better",
    "Better",
    better.length,
    better.map((one) => pair(one, undefined)),
  )}${list(
    "gone",
    "Gone",
    gone.length,
    alikeRows(gone, said).map((same) => single(same, undefined, "")),
  )}</div>`;
  return html`<section class="findings" id="findings">
<h2>Findings</h2>
<p>${fresh.length} new, ${worse.length} worse, ${better.length} better, ${gone.length} gone, ${alike.length} as before.</p>
${marks.length > 0 ? html`<div class="desk">${picture(title, scene, marks)}${lists}</div>` : lists}
</section>
`;
}

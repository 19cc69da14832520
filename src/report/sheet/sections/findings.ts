import { useBar } from "../../../drawing/use-bar.ts";
import type { CureOffered, Finding, Measure, RuleCard } from "../../../inspection/report.ts";
import { percent } from "../../count.ts";
import { sentence } from "../../sentence.ts";
import { LIMIT_FROM, stiffnessWords } from "../../words.ts";
import type { CureDrawn } from "../cure-drawn.ts";
import { drawn, html, type Markup } from "../html.ts";
import type { NumberedFinding, PartOfSheet } from "../parts.ts";

/** Ways a finding may be looked at as a picture. */
export type PictureOf = (finding: Finding) => Markup | undefined;

/** Symbols with what follows "_" set low. */
function symbols(formula: string): readonly Markup[] {
  return formula.split(/_([\w,]+)/).map((part, i) => (i % 2 === 1 ? html`<sub>${part}</sub>` : html`${part}`));
}

function worked({ formula, figures }: NonNullable<Measure["working"]>, value: string): Markup {
  const line = figures === undefined ? "" : html`<br>= ${figures} = ${value}`;
  return html`<div class="long"><dt>Worked</dt><dd>${symbols(formula)}${line}</dd></div>`;
}

function numbers(measure: Measure): Markup {
  const { shown, sense, utilisation, under, from, basis, working } = measure;
  const stiffness = stiffnessWords(measure);
  const share =
    utilisation === undefined
      ? undefined
      : html`<div><dt>Used</dt><dd>${percent(utilisation)} ${drawn(useBar(utilisation))}</dd></div>`;
  return html`<dl class="numbers">
<div><dt>Found</dt><dd>${shown.measured}</dd></div>
<div><dt>${sense === "at most" ? "Allowed" : "Needed"}</dt><dd>${shown.limit}</dd></div>
${share}
<div class="long"><dt>Limit</dt><dd>${LIMIT_FROM[from]}: ${basis}</dd></div>
${under ? html`<div class="long"><dt>Under</dt><dd>${under.combination}</dd></div>` : ""}
${working ? worked(working, shown.measured) : ""}
${stiffness === undefined ? "" : html`<div class="long"><dt>Joints</dt><dd>${stiffness}</dd></div>`}
</dl>
`;
}

function cure({ words, after }: CureOffered, measure: Measure | undefined, picture: Markup | undefined): Markup {
  const change =
    after === undefined || measure === undefined
      ? ""
      : html`<span class="change">${measure.shown.measured} → <b>${after}</b> (${measure.shown.limit} ${measure.sense === "at most" ? "allowed" : "needed"})</span>`;
  return html`<li>${words}${change === "" ? "" : ": "}${change}${picture}</li>`;
}

function findingOf(
  { number, finding }: NumberedFinding,
  card: RuleCard | undefined,
  pictureOf: PictureOf,
  cureDrawn: CureDrawn,
): Markup {
  const { rule, level, measure, conceded, advice, cures, related, place, at } = finding;
  const word = conceded ? "conceded" : level;
  const others = related.map((other) => other.at.id);
  return html`<article class="finding l-${word}" id="f${number}" data-level="${word}" data-group="${card?.group ?? "other"}" data-at="${at.kind} ${at.id}" data-rule="${rule}">
<h4><span class="no">${number}</span> <span class="level">${word.toUpperCase()}</span> ${sentence(finding)}</h4>
${conceded ? html`<p class="concession">A ${level}, conceded by ${conceded.who} until ${conceded.until}: ${conceded.reason}</p>` : ""}
${pictureOf(finding)}
${measure ? numbers(measure) : ""}
${cures.length > 0 ? html`<div class="cures"><p>What would cure it, tried on a copy of the frame:</p><ul>${cures.map((one) => cure(one, measure, cureDrawn(finding, one)))}</ul></div>` : ""}
${advice === undefined ? "" : html`<p class="mend">To mend it: ${advice}.</p>`}
<p class="trace"><code>${rule}</code> ${card?.title ?? ""}; by ${card && card.basis.length > 0 ? card.basis.join("; ") : "the team's own rule"}; worked out in docs/rules/${rule}.md. At ${at.id}, ${place.file} line ${place.line}${others.length > 0 ? html`; with ${others.join(", ")}` : ""}.</p>
</article>
`;
}

/** Of more parts than this a browser lays out only those in sight, so that the sheet opens soon. */
const MANY_PARTS = 100;

/** Findings by part, worst part first. */
export function findingsOf(
  parts: readonly PartOfSheet[],
  cards: readonly RuleCard[],
  pictureOf: PictureOf,
  cureDrawn: CureDrawn,
): Markup {
  const byId = new Map(cards.map((card) => [card.id, card]));
  if (parts.length === 0)
    return html`<section class="findings" id="findings"><h2>Findings</h2><p>None: every rule that applies was met, with the margins below.</p><div class="filters" id="filters"></div></section>
`;
  return html`<section class="findings${parts.length > MANY_PARTS ? " many" : ""}" id="findings">
<h2>Findings</h2>
<div class="filters" id="filters"></div>
${parts.map(
  ({ number, where, findings, level }) => html`<section class="part l-${level}" id="p${number}">
<h3><span class="balloon w-${level}">${number}</span> ${where}</h3>
${findings.map((one) => findingOf(one, byId.get(one.finding.rule), pictureOf, cureDrawn))}</section>
`,
)}</section>
`;
}

import { changedWords } from "../../changed-words.ts";
import { trialWords } from "../../trial-words.ts";
import { CAUTION } from "../../words.ts";
import { revisionHash } from "../hashes.ts";
import { html, type Markup } from "../html.ts";
import type { SheetInput } from "../sheet-input.ts";

/** What every inspection takes for granted, strength by this method; docs/method says it at length. */
const taken = (method: string): readonly string[] => [
  "Bars are straight, as long as drawn, and of the sections in stock; ends are cut true.",
  "The frame is worked out as beams with shear and torsion, joints as springs of their fasteners, once soft, once typical and once stiff where no test backs them (docs/method/joints.md).",
  `Loads are static; strength by ${method}, sag and sway under loads as declared (docs/method/response.md).`,
  "Seats press and do not pull; feet stand on a level floor unless the file says otherwise.",
];

export const CAUTIONS: readonly string[] = [
  CAUTION,
  "Impact, fatigue, fire, earthquakes and lifting of the whole frame are not looked at.",
  "Before people work under, on or beside it: machine guards, working platforms and anything that lifts fall under rules of their own.",
];

/** The record to be signed: what was inspected, with what, on what assumptions, and room for the responsible engineer. */
export function recordOf({ report, bytes, house, version }: SheetInput): Markup {
  const { assumed, changed, title, revision, file, verdict, cureTrials } = report;
  const method = changed.some(({ what }) => what === "method") ? "allowable stress" : "partial factors";
  return html`<section class="record" id="record">
<h2>Record</h2>
<h3>Assumed</h3>
<ul class="two">${assumed.map((one) => html`<li>${one}</li>`)}</ul>
<ul>${taken(method).map((one) => html`<li>${one}</li>`)}</ul>
${changed.length > 0 ? html`<h3>Changed</h3>\n<ul class="two">${changed.map((one) => html`<li>${changedWords(one)}</li>`)}</ul>` : ""}
<h3>Cautions</h3>
<ul>${CAUTIONS.map((one) => html`<li>${one}</li>`)}</ul>
${cureTrials.untried > 0 ? html`<p>${trialWords(cureTrials.tried, cureTrials.untried)}.</p>` : ""}
<div class="block">
<dl>
<div class="t"><dt>Frame</dt><dd>${title === "" ? file : title}</dd></div>
<div><dt>Revision</dt><dd>${revision ?? "none given"}</dd></div>
<div><dt>Verdict</dt><dd>${verdict.toUpperCase()}${report.complete ? "" : ", INCOMPLETE"}</dd></div>
<div class="t"><dt>File</dt><dd>${file}</dd></div>
<div><dt>House</dt><dd>${house ?? "none: usual limits"}</dd></div>
<div><dt>Inspected by</dt><dd>trysquare ${version}</dd></div>
<div class="w"><dt>SHA-256 of the file</dt><dd><code>${revisionHash(bytes)}</code></dd></div>
</dl>
<table class="sign"><thead><tr><th scope="col">Responsible engineer</th><th scope="col">Date</th><th scope="col">Signature</th></tr></thead><tbody><tr><td></td><td></td><td></td></tr></tbody></table>
</div>
</section>
`;
}

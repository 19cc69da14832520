import type { BarChanges } from "../../../inspection/compare.ts";
import { listed } from "../../count.ts";
import { html, type Markup } from "../../sheet/html.ts";
import { alikeRows } from "./alike-rows.ts";
import type { BarMark } from "./bar-marks.ts";

/** Bars by what became of them, under the letters of the drawing. */
export function barsSection({ renamed }: BarChanges, marks: readonly BarMark[]): Markup {
  const names = renamed.map(({ from, to }) => `${from} to ${to}`);
  return html`<section class="bars" id="bars">
<h2>Bars</h2>
${
  marks.length === 0
    ? html`<p>No bar was added, removed, moved or changed.</p>`
    : html`<div class="wide" tabindex="0" role="region" aria-label="Bars that changed"><table>
<thead><tr><th scope="col">Mark</th><th scope="col">Bar</th><th scope="col">Fate</th><th scope="col">What</th></tr></thead>
<tbody>
${alikeRows(marks, ({ fate, what }) => `${fate} ${what}`).map((same) => {
  const [{ fate, what }] = same;
  const words = same.map(({ word }, i) => html`${i > 0 ? " " : ""}<span class="b">${word}</span>`);
  return html`<tr class="${fate}"><td>${words}</td><th scope="row">${listed(same.map(({ bar }) => bar))}</th><td>${fate}</td><td>${what}</td></tr>
`;
})}</tbody></table></div>`
}
${names.length > 0 ? html`<p>Renamed, and as they were otherwise: ${listed(names)}.</p>` : ""}
</section>
`;
}

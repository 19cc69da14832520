import type { WrittenChanges } from "../../../inspection/compare-written.ts";
import { listed } from "../../count.ts";
import { html, type Markup } from "../../sheet/html.ts";
import { changedPartWords, nounOf } from "../part-words.ts";
import { alikeRows } from "./alike-rows.ts";

/** What the files say otherwise beside their bars: panels, doors, joints, stands, masses, loads. */
export function partsSection({ added, removed, changed }: WrittenChanges): Markup {
  const rows = [
    ...added.map((one) => ({ ...one, fate: "added", what: "" })),
    ...removed.map((one) => ({ ...one, fate: "removed", what: "" })),
    ...changed.map((one) => ({ ...one, fate: "changed", what: changedPartWords(one) })),
  ];
  return html`<section class="parts" id="parts">
<h2>Other parts</h2>
${
  rows.length === 0
    ? html`<p>No other part was added, removed or changed.</p>`
    : html`<div class="wide" tabindex="0" role="region" aria-label="Other parts that changed"><table>
<thead><tr><th scope="col">Kind</th><th scope="col">Part</th><th scope="col">Fate</th><th scope="col">What, as written</th></tr></thead>
<tbody>
${alikeRows(rows, ({ list, fate, what }) => `${list} ${fate} ${what}`).map((same) => {
  const [{ list, fate, what }] = same;
  return html`<tr><td>${nounOf(list, same.length)}</td><th scope="row">${listed(same.map(({ part }) => part))}</th><td>${fate}</td><td>${what}</td></tr>
`;
})}</tbody></table></div>`
}
</section>
`;
}

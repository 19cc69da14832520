import { bodies } from "../../../facts/bodies.ts";
import { factOf } from "../../../facts/fact.ts";
import type { Margin, Report } from "../../../inspection/report.ts";
import type { Frame } from "../../../model/frame.ts";
import { formatQuantity } from "../../../model/units/format-quantity.ts";
import { percent } from "../../count.ts";
import { html, type Markup } from "../html.ts";

/** The greatest share of a limit each bar uses, by rule and bar. */
export function sharesOfBars({ margins = [] }: Report): ReadonlyMap<string, ReadonlyMap<string, Margin>> {
  const byRule = new Map<string, Map<string, Margin>>();
  for (const margin of margins) {
    if (margin.at.kind !== "bar") continue;
    const own = byRule.get(margin.rule) ?? new Map<string, Margin>();
    byRule.set(margin.rule, own);
    const known = own.get(margin.at.id);
    if (!known || margin.utilisation > known.utilisation) own.set(margin.at.id, margin);
  }
  return byRule;
}

/** The greatest share of any limit that each bar uses. */
export function greatestShares(report: Report): ReadonlyMap<string, number> {
  const greatest = new Map<string, number>();
  for (const own of sharesOfBars(report).values())
    for (const [bar, { utilisation }] of own) greatest.set(bar, Math.max(utilisation, greatest.get(bar) ?? 0));
  return greatest;
}

/** Every bar with its profile, length and the share of each limit it uses. */
export function barsOf(frame: Frame, report: Report): Markup {
  const all = factOf(bodies, frame);
  const shares = [...sharesOfBars(report)];
  const cell = (margin: Margin | undefined): Markup =>
    margin
      ? html`<td class="num${margin.met ? "" : " not-met"}">${percent(margin.utilisation)}</td>`
      : html`<td class="num">–</td>`;
  return html`<section class="bars" id="bars">
<h2>Bars</h2>
<p>Share of each limit used; – where the rule does not apply.</p>
<div class="wide" tabindex="0" role="region" aria-label="Bars"><table>
<thead><tr><th scope="col">Bar</th><th scope="col">Profile</th><th scope="col" class="num">Cut length</th>${shares.map(([rule]) => html`<th scope="col" class="num"><code>${rule}</code></th>`)}</tr></thead>
<tbody>
${frame.bars.map(
  ({
    ref,
    profile,
  }) => html`<tr><th scope="row">${ref.id}</th><td>${profile.name}</td><td class="num">${formatQuantity(all.get(ref.id)?.cutLength ?? 0, "length", frame.units)}</td>${shares.map(([, own]) => cell(own.get(ref.id)))}</tr>
`,
)}</tbody>
</table></div>
</section>
`;
}

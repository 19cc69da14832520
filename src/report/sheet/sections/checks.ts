import { useBar } from "../../../drawing/use-bar.ts";
import type { Report, RuleCard, Tally } from "../../../inspection/report.ts";
import { count, listed, percent } from "../../count.ts";
import { drawn, html, type Markup } from "../html.ts";
import { problemsOf } from "./problems.ts";

const PARTS_NAMED = 12;

function outcome({ met, notMet, undecided }: Tally): string {
  const words = [];
  if (notMet > 0) words.push(`${notMet} not met`);
  if (undecided > 0) words.push(`${undecided} undecided`);
  if (met > 0) words.push(`${met} met`);
  return words.length > 0 ? words.join(", ") : "nothing it applies to";
}

function row(tally: Tally, card: RuleCard | undefined): Markup {
  const { closest, rule, met, notMet, undecided } = tally;
  const margin = closest
    ? html`${closest.measured}; ${closest.limit} ${closest.sense === "at most" ? "allowed" : "needed"}${closest.at.kind === "frame" ? "" : html`, on ${closest.at.id}`}`
    : "";
  const state = notMet > 0 ? "not-met" : undecided > 0 ? "open" : "met";
  const used = closest ? html` data-used="${closest.utilisation.toFixed(4)}"` : "";
  return html`<tr class="${state}" data-met="${met}"${used}><th scope="row"><code>${rule}</code> <span>${card?.title ?? ""}</span></th><td>${outcome(tally)}</td><td>${margin}</td><td class="num">${closest ? html`${percent(closest.utilisation)} ${drawn(useBar(closest.utilisation))}` : ""}</td></tr>
`;
}

/** Every rule that ran, by group, how it came out and the closest margin of what was met. */
export function checksOf({ tallies }: Report, cards: readonly RuleCard[]): Markup {
  const byId = new Map(cards.map((card) => [card.id, card]));
  const groups = [...new Set(tallies.map(({ rule }) => byId.get(rule)?.group ?? "other"))];
  return html`<section class="checks" id="checks">
<h2>What was checked, and the margins</h2>
<p>${count(tallies.length, "rule")} ran. A margin is that of the part nearest to its limit among those that keep it.</p>
<div class="wide" tabindex="0" role="region" aria-label="Checks and margins"><table>
<thead><tr><th scope="col">Rule</th><th scope="col">Outcome</th><th scope="col">Closest margin</th><th scope="col">Used</th></tr></thead>
${groups.map(
  (group) => html`<tbody data-group="${group}"><tr class="group"><th scope="rowgroup" colspan="4">${group}</th></tr>
${tallies.filter(({ rule }) => (byId.get(rule)?.group ?? "other") === group).map((tally) => row(tally, byId.get(tally.rule)))}</tbody>
`,
)}</table></div>
</section>
`;
}

/** What could not be decided and why, rules that failed, concessions that no longer hold, and faults of the file. */
export function openOf(
  { undecided, failures, concessionRemarks, problems }: Report,
  cards: readonly RuleCard[],
): Markup {
  const groupOf = new Map(cards.map(({ id, group }) => [id, group]));
  const lists: Markup[] = [];
  if (problems.length > 0) lists.push(html`<h3>The file</h3>${problemsOf(problems)}`);
  if (undecided.length > 0)
    lists.push(
      html`<h3>Undecided</h3><ul>${undecided.map(({ why, rules, at, holds }) => {
        const named = at.filter(({ kind }) => kind !== "frame").map(({ id }) => id);
        const groups = new Set(rules.map((rule) => groupOf.get(rule) ?? "other"));
        return html`<li data-undecided="${[...groups].join("|")}">${why}${named.length > 0 ? html`, for ${listed(named, PARTS_NAMED)}` : ""}${holds ? "; keeps the frame from accept" : ""}. Waiting for it: ${listed(rules)}.</li>`;
      })}</ul>`,
    );
  if (failures.length > 0)
    lists.push(
      html`<h3>Failed</h3><p>These are faults of the tool or of a team's rule, not of the frame; the inspection is incomplete.</p><ul>${failures.map(
        ({ rule, fact, at, message }) =>
          html`<li>${[rule, fact, at?.id].filter((word) => word !== undefined).join(", ")}: ${message}</li>`,
      )}</ul>`,
    );
  if (concessionRemarks.length > 0)
    lists.push(
      html`<h3>Concessions that do not hold</h3><ul>${concessionRemarks.map((remark) => html`<li>${remark}</li>`)}</ul>`,
    );
  if (lists.length === 0) return html``;
  return html`<section class="open" id="open"><h2>What is open</h2>
${lists}
</section>
`;
}

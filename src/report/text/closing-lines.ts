import { MOST_TRIED } from "../../inspection/cure-budget.ts";
import type { Report, Tally } from "../../inspection/report.ts";
import { changedWords } from "../changed-words.ts";
import { count, listed, shareOfLimit } from "../count.ts";
import { trialWords } from "../trial-words.ts";
import { CAUTION } from "../words.ts";
import { type Page, paragraph } from "./page.ts";

/** More parts than these in one line help nobody; the machine reports name them all. */
const PARTS_NAMED = 5;

/** What could not be decided, said once for all rules that wait for it. */
export function* undecidedLines(page: Page, report: Report): Generator<string> {
  for (const { why, rules, at, holds } of report.undecided) {
    const parts = at.filter((part) => part.kind !== "frame").map((part) => part.id);
    const where = parts.length === 0 ? "" : `, for ${listed(parts, PARTS_NAMED)}`;
    const weight = holds ? "; keeps the frame from accept" : "";
    yield paragraph(page, `UNDECIDED ${why}${where}${weight}`, 0, holds ? page.ink.hold : page.ink.note);
    yield paragraph(page, `${rules.length === 1 ? "waits" : "wait"} for it: ${listed(rules)}`, 2, page.ink.why);
  }
  if (report.undecided.length > 0) yield "\n";
  for (const remark of report.concessionRemarks) yield paragraph(page, `concession: ${remark}`);
  if (report.concessionRemarks.length > 0) yield "\n";
}

function closestOf(tallies: readonly Tally[]): string | undefined {
  let closest: { readonly rule: string; readonly near: NonNullable<Tally["closest"]> } | undefined;
  for (const { rule, closest: near } of tallies) {
    if (near !== undefined && near.utilisation > (closest?.near.utilisation ?? -1)) closest = { rule, near };
  }
  if (closest === undefined) return undefined;
  const { rule, near } = closest;
  const bound = near.sense === "at most" ? "allowed" : "needed";
  const share = shareOfLimit(near.utilisation, near.sense);
  const numbers =
    near.quantity === "ratio"
      ? `at ${share.replace(" of it", "")} of what is ${bound}`
      : `${near.measured}, ${near.limit} ${bound} (${share})`;
  return `Closest to its limit: ${rule} on ${near.at.id}, ${numbers}`;
}

/** What was looked at and how it came out, also when all is well; then what was assumed; then the caution. */
export function* closingLines(page: Page, report: Report): Generator<string> {
  const { tallies, counts, findings, undecided, assumed, changed } = report;
  if (report.verdict === "unread") {
    yield paragraph(page, "No rule ran: the file was not read.");
  } else {
    const sum = (of: (tally: Tally) => number): number => tallies.reduce((total, tally) => total + of(tally), 0);
    const conceded = findings.filter((finding) => finding.conceded !== undefined).length;
    const outcome = [
      `${sum((tally) => tally.met)} met`,
      `${sum((tally) => tally.notMet)} not met`,
      `${sum((tally) => tally.undecided)} undecided`,
      `${conceded} conceded`,
    ];
    const causes = undecided.length > 0 ? ` (${count(undecided.length, "cause")} of undecided)` : "";
    yield paragraph(
      page,
      `${count(tallies.length, "rule")} ran on ${count(counts.parts, "part")}: ${outcome.join(", ")}${causes}.`,
    );
    const closest = closestOf(tallies);
    yield paragraph(page, closest === undefined ? "No margin to a limit was measured." : `${closest}.`);
  }
  const { tried, untried } = report.cureTrials;
  if (untried > 0) {
    yield paragraph(
      page,
      `${trialWords(tried, untried)} (${tried + untried > MOST_TRIED ? `--cures tries up to ${MOST_TRIED}` : `--cures ${tried + untried} tries them`}).`,
    );
  }
  if (changed.length > 0) yield paragraph(page, `Changed: ${changed.map(changedWords).join("; ")}.`);
  if (assumed.length > 0) yield paragraph(page, `Assumed: ${assumed.join("; ")}.`);
  yield paragraph(page, CAUTION, 0, page.ink.why);
}

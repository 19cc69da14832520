import type { BarChanges, FindingChanges, FindingPair } from "../../inspection/compare.ts";
import type { WrittenChanges } from "../../inspection/compare-written.ts";
import type { Finding, Report } from "../../inspection/report.ts";
import { showHidden } from "../../model/text/quote.ts";
import { count, listed } from "../count.ts";
import { safeJson } from "../json/safe-json.ts";
import { sentence } from "../sentence.ts";
import { CAUTION } from "../words.ts";
import { changedBarWords, movedWords } from "./bar-words.ts";
import { partLines } from "./part-words.ts";

/** Two revisions of a frame and what became of it; bars and other parts only where both files could be read. */
export interface Comparison {
  readonly before: Report;
  readonly after: Report;
  readonly bars?: BarChanges;
  readonly parts?: WrittenChanges;
  readonly findings: FindingChanges;
}

/** Names in one line of text; the json form names them all. */
const NAMED = 12;

/** Bars of which the same is said, under what is said, the most first. */
function alike<T extends { readonly bar: string }>(
  bars: readonly T[],
  said: (bar: T) => string,
): readonly (readonly [string, readonly string[]])[] {
  const groups = new Map<string, string[]>();
  for (const one of bars) groups.set(said(one), [...(groups.get(said(one)) ?? []), one.bar]);
  return [...groups].sort(([, a], [, b]) => b.length - a.length);
}

function* partsTold({ bars, parts, after: { units } }: Comparison): Generator<string> {
  if (!bars) return;
  const { added, removed, renamed, perhaps, moved, changed } = bars;
  const lines: string[] = [];
  if (added.length > 0) lines.push(`${count(added.length, "bar")} added: ${listed(added, NAMED)}`);
  if (removed.length > 0) lines.push(`${count(removed.length, "bar")} removed: ${listed(removed, NAMED)}`);
  if (perhaps.length > 0) {
    const names = perhaps.map(({ from, to }) => `${from} to ${to}`);
    lines.push(`perhaps renamed and moved, as profile and length agree: ${listed(names, NAMED)}`);
  }
  if (renamed.length > 0) {
    const names = renamed.map(({ from, to }) => `${from} to ${to}`);
    lines.push(`renamed: ${listed(names, NAMED)}`);
  }
  for (const [how, names] of alike(moved, (one) => movedWords(one, units)))
    lines.push(`${count(names.length, "bar")} moved by ${how}: ${listed(names, NAMED)}`);
  for (const [how, names] of alike(changed, changedBarWords))
    lines.push(`${count(names.length, "bar")} changed in ${how}: ${listed(names, NAMED)}`);
  if (lines.length === 0) lines.push("no bar was added, removed, moved or changed");
  const others = parts ? partLines(parts, NAMED) : [];
  lines.push(...others);
  if (parts && others.length === 0) lines.push("no other part was added, removed or changed");
  for (const line of lines) yield `${showHidden(line)}\n`;
  yield "\n";
}

const told = (finding: Finding): string =>
  `${finding.where}: ${finding.conceded ? "CONCEDED" : finding.level.toUpperCase()} ${sentence(finding)} [${finding.rule}]`;

/** "was 8.1 mm, is 9.4 mm; 4.9 mm allowed": what a pair says beside its part. */
function change({ before, after }: FindingPair): string {
  const [was, is] = [before.measure, after.measure];
  const level = before.level === after.level ? "" : `${before.level} to ${after.level}, `;
  const conceded = before.conceded === undefined && after.conceded !== undefined ? "now conceded, " : "";
  const numbers =
    was && is
      ? `was ${was.shown.measured} of ${was.shown.limit}, is ${is.shown.measured} of ${is.shown.limit} ${is.sense === "at most" ? "allowed" : "needed"}`
      : sentence(after);
  return `${after.where}: ${level}${conceded}${numbers} [${after.rule}]`;
}

/** Lines that say the same of one part, as of each of its screws, are told once. */
function counted(lines: readonly string[]): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  for (const line of lines) times.set(line, (times.get(line) ?? 0) + 1);
  return times;
}

/** What changed between two revisions, for a reader: bars first, then findings from bad news to good. */
export function* compareText(comparison: Comparison): Generator<string> {
  const { before, after, findings } = comparison;
  const name = ({ file, revision, verdict }: Report): string =>
    `${file}${revision === undefined ? "" : ` revision ${revision}`} (${verdict.toUpperCase()})`;
  yield `${showHidden(`${name(before)} to ${name(after)}`)}\n\n`;
  if (!comparison.bars) {
    yield "Nothing was compared: neither parts nor findings can be, as long as one of the two files cannot be read.\n";
    yield `${CAUTION}\n`;
    return;
  }
  yield* partsTold(comparison);
  const groups: readonly (readonly [string, readonly string[]])[] = [
    ["NEW", findings.fresh.map(told)],
    ["WORSE", findings.worse.map(change)],
    ["BETTER", findings.better.map(change)],
    ["GONE", findings.gone.map(told)],
  ];
  for (const [word, lines] of groups)
    for (const [line, times] of counted(lines))
      yield `${word.padEnd(6)}  ${showHidden(line)}${times > 1 ? `, ${times} times` : ""}\n`;
  if (groups.some(([, lines]) => lines.length > 0)) yield "\n";
  yield `${count(findings.fresh.length, "new finding")}, ${findings.worse.length} worse, ${findings.better.length} better, ${findings.gone.length} gone, ${findings.alike.length} as before.\n`;
  yield `${CAUTION}\n`;
}

/** The same as one JSON document; findings by fingerprint, rule and part, values in SI; without them where nothing was compared. */
export function* compareJson({ before, after, bars, parts, findings }: Comparison): Generator<string> {
  const head = ({ file, title, revision, verdict, complete }: Report): object => ({
    file,
    title,
    revision,
    verdict,
    complete,
  });
  const one = (finding: Finding): object => ({
    rule: finding.rule,
    level: finding.level,
    at: finding.at,
    where: finding.where,
    text: sentence(finding),
    measured: finding.measure?.measured,
    limit: finding.measure?.limit,
    utilisation: finding.measure?.utilisation,
    conceded: finding.conceded,
    fingerprint: finding.print,
  });
  const pair = (both: FindingPair): object => ({ before: one(both.before), after: one(both.after) });
  const grouped = {
    new: findings.fresh.map(one),
    gone: findings.gone.map(one),
    worse: findings.worse.map(pair),
    better: findings.better.map(pair),
    alike: findings.alike.map(pair),
  };
  yield safeJson({
    formatVersion: "1.0",
    before: head(before),
    after: head(after),
    bars,
    parts,
    ...(bars ? { findings: grouped } : {}),
  });
  yield "\n";
}

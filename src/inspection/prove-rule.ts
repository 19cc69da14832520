import { keeps } from "../criteria/keeps.ts";
import { knownOf } from "../facts/fact.ts";
import type { HouseInForce } from "../house/house-in-force.ts";
import { noSettings } from "../house/settings.ts";
import type { Frame } from "../model/frame.ts";
import type { FrameFile } from "../model/generated/frame-file.generated.ts";
import type { Quantity } from "../model/units/quantity.ts";
import { type Judgement, sayFor } from "../rules/shape/judgement.ts";
import type { AnyRule } from "../rules/shape/rule.ts";
import { givenFor } from "./given-for.ts";
import { inspectOnce } from "./inspect-once.ts";
import { Limits } from "./limits.ts";
import type { StockBytes } from "./stock-in-force.ts";

/** What a row expects of one finding: which part, which message, and the measured value in SI where it measures. */
export interface ExpectedFinding {
  readonly at: string;
  readonly key: string;
  /** SI; with the working beside it in the test. */
  readonly measured?: number;
  /** Relative; standard 1e-6. */
  readonly within?: number;
}

/** One edit of the base frame, as a draughtsman would make it, and what the rule must then say. */
export interface ProofRow {
  readonly title: string;
  readonly edit: (file: FrameFile) => void;
  /** No findings of this rule: sound. */
  readonly finds: readonly ExpectedFinding[];
}

/** How near to its limit a measured value must come to count as just under or just over it. */
const NEAR = 0.1;
/** The same where the limit is zero or a count: the smallest step that matters. */
const STEP: Partial<Record<Quantity, number>> = { length: 0.002, area: 1e-4, angle: 0.02, count: 1, ratio: 0.1 };
const WITHIN = 1e-6;

interface Side {
  under: boolean;
  over: boolean;
}

function bytesOf(file: FrameFile): Uint8Array {
  return new TextEncoder().encode(JSON.stringify(file, undefined, 1));
}

function judgementsOf(rule: AnyRule, frame: Frame, house: HouseInForce): readonly Judgement[] {
  const given = givenFor(rule, new Limits(frame, house));
  return [...rule.inspect(knownOf(rule.needs, frame) as never, given as never, sayFor(rule.messages) as never)];
}

function note(sides: Map<string, Side>, rule: AnyRule, judgement: Judgement): void {
  if (judgement.kind !== "measured") return;
  const message = rule.messages[judgement.key];
  const side = sides.get(judgement.key);
  if (!message?.measures || !side) return;
  const { measured, limit } = judgement.m;
  const reach = Math.max(NEAR * Math.abs(limit.value), STEP[message.measures] ?? 0);
  if (Math.abs(measured - limit.value) > reach * (1 + 1e-9)) return;
  if (keeps(measured, limit.value, message.sense ?? "at most")) side.under = true;
  else side.over = true;
}

/**
 * Proves a rule on a table of edits to a sound base frame. Returns what is wrong, in words: nothing when the rule says
 * exactly what every row expects and the table is fit to prove it. A table is not fit without sound rows, without faulty
 * rows, with a message no row brings out, without a value just within and one just beyond the limit of every message that
 * measures, or with a criterion that no row sets. `stock` are stock files beside the built-in stock, in the order they count.
 */
export function proveRule(
  rule: AnyRule,
  base: FrameFile,
  rows: readonly ProofRow[],
  stock: readonly StockBytes[] = [],
): readonly string[] {
  const wrong: string[] = [];
  const house: HouseInForce = { ...noSettings("2000-01-01"), rules: [rule] };
  const sides = new Map<string, Side>();
  for (const [key, message] of Object.entries(rule.messages))
    if (message.measures) sides.set(key, { under: false, over: false });
  const said = new Set<string>();
  const set = new Set<string>();
  const titles = new Set<string>();

  const all: readonly ProofRow[] = [{ title: "the base frame", edit: () => undefined, finds: [] }, ...rows];
  for (const row of all) {
    if (titles.has(row.title)) wrong.push(`${row.title}: a second row of this title`);
    titles.add(row.title);
    const file = structuredClone(base);
    row.edit(file);
    for (const holder of [file, ...file.bars, ...(file.panels ?? [])])
      for (const name of Object.keys(holder.criteria ?? {})) set.add(name);
    const bytes = bytesOf(file);
    const { report, read } = inspectOnce({ file: "proof.frame.json", bytes, stock, house });
    const frame = read?.frame;
    if (report.verdict === "unread" || !frame) {
      wrong.push(
        `${row.title}: cannot be read: ${report.problems.map((p) => `${p.place.pointer} ${p.found}, expected ${p.expected}`).join("; ")}`,
      );
      continue;
    }
    for (const failure of report.failures) wrong.push(`${row.title}: ${failure.message}`);
    for (const judgement of judgementsOf(rule, frame, house)) note(sides, rule, judgement);
    const left = [...report.findings];
    for (const expected of row.finds) {
      const i = left.findIndex((finding) => finding.at.id === expected.at && finding.key === expected.key);
      const [found] = i < 0 ? [] : left.splice(i, 1);
      if (!found) {
        wrong.push(`${row.title}: no "${expected.key}" at ${expected.at}`);
        continue;
      }
      said.add(found.key);
      const { measured } = found.measure ?? {};
      if (expected.measured === undefined) {
        if (measured !== undefined)
          wrong.push(`${row.title}: "${expected.key}" at ${expected.at} measures ${measured}; the row says no value`);
      } else if (
        measured === undefined ||
        !(
          Math.abs(measured - expected.measured) <=
          (expected.within ?? WITHIN) * Math.max(Math.abs(expected.measured), 1e-9)
        )
      ) {
        wrong.push(
          `${row.title}: "${expected.key}" at ${expected.at} measures ${measured ?? "nothing"}, expected ${expected.measured}`,
        );
      }
    }
    for (const finding of left) wrong.push(`${row.title}: also "${finding.key}" at ${finding.at.id}: ${finding.text}`);
  }

  if (!rows.some((row) => row.finds.length > 0)) wrong.push("the table has no faulty row");
  if (!rows.some((row) => row.finds.length === 0)) wrong.push("the table has no sound row");
  for (const key of Object.keys(rule.messages))
    if (!said.has(key)) wrong.push(`no row brings out the message "${key}"`);
  for (const [key, { under, over }] of sides) {
    if (!under) wrong.push(`no row comes just within the limit of "${key}"`);
    if (!over) wrong.push(`no row goes just beyond the limit of "${key}"`);
  }
  for (const { name } of Object.values(rule.criteria))
    if (!set.has(name)) wrong.push(`no row sets the criterion "${name}"`);
  return wrong;
}

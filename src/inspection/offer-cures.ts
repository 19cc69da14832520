import { keeps } from "../criteria/keeps.ts";
import type { Ailment, Cure, Patient, Proposal } from "../cures/cure.ts";
import { isFrameFile } from "../model/validate.ts";
import { applyEdits } from "./apply-edits.ts";
import { type Inspected, type Inspection, inspectOnce } from "./inspect-once.ts";
import type { CureOffered, Finding, Report } from "./report.ts";

/** Proposals of one kind of cure tried for one finding before the next kind gets its turn. */
const TRIES_A_KIND = 3;
/** Cures offered for one finding: a choice, not a catalogue. */
const OFFERED = 2;

/** The worst finding of each rule first, then the second worst of each, and so on. */
function byTurns(findings: readonly Finding[]): readonly Finding[] {
  const turn = new Map<string, number>();
  const ranked = findings.map((finding, order) => {
    const rank = turn.get(finding.rule) ?? 0;
    turn.set(finding.rule, rank + 1);
    return { finding, rank, order };
  });
  return ranked.sort((a, b) => a.rank - b.rank || a.order - b.order).map(({ finding }) => finding);
}

/** A value counts as worse when it moved away from its limit by more than this share: a stiffer bar is a little heavier. */
const WORSE = 0.01;

/** The same thing said of the same part, whichever other parts the sentence names this time. */
const about = ({ rule, key, at }: Finding): string => `${rule} ${key} ${at.id}`;

/** Whether a finding is gone from those of its rule, and has not come back with other parts in its sentence. */
function gone(finding: Finding, before: readonly Finding[], after: readonly Finding[]): boolean {
  const alike = (findings: readonly Finding[]): number =>
    findings.filter((one) => about(one) === about(finding)).length;
  return !after.some((left) => left.print === finding.print) && alike(after) < alike(before);
}

/** Whether every finding left was there before, and no worse. */
function nowhereWorse(before: readonly Finding[], after: readonly Finding[]): boolean {
  const old = new Map<string, Finding>();
  for (const finding of before) {
    old.set(finding.print, finding);
    if (!old.has(about(finding))) old.set(about(finding), finding);
  }
  for (const finding of after) {
    const known = old.get(finding.print) ?? old.get(about(finding));
    if (!known || (known.level === "note" && finding.level !== "note")) return false;
    const [was, is] = [known.measure, finding.measure];
    if (!was || !is) continue;
    const slack = (is.sense === "at most" ? 1 : -1) * WORSE * Math.abs(was.measured);
    if (!keeps(is.measured, was.measured + slack, is.sense)) return false;
  }
  return true;
}

function ailmentOf(finding: Finding): Ailment {
  return {
    rule: finding.rule,
    key: finding.key,
    at: finding.at,
    related: finding.related.map((other) => other.at),
    utilisation: finding.measure?.utilisation,
  };
}

function attempt(
  inspection: Inspection,
  value: unknown,
  proposal: Proposal,
  finding: Finding,
  before: Report,
): CureOffered | undefined {
  const changed = applyEdits(value, proposal.edits);
  if (changed === undefined) return undefined;
  const bytes = new TextEncoder().encode(JSON.stringify(changed));
  const watch = { rule: finding.rule, key: finding.key, at: finding.at.id };
  const fails = (rule: string, after: readonly Finding[]): boolean =>
    !nowhereWorse(before.findings, after) || (rule === finding.rule && !gone(finding, before.findings, after));
  const { report, watched } = inspectOnce({ ...inspection, bytes, margins: false }, { watch, fails });
  // What it did not read, or broke off, is no cure; nor is what leaves more open than before.
  if (report.verdict === "unread" || !report.complete || report.undecided.length > before.undecided.length)
    return undefined;
  return {
    words: proposal.words,
    edits: proposal.edits,
    ...(finding.measure && watched !== undefined ? { after: watched } : {}),
  };
}

/**
 * Looks for changes that mend findings, worst of each rule first. Every proposal is made on a copy of the file, and the
 * copy is inspected whole, or until a rule shows that it is no cure: it is offered only if the finding is gone and nothing anywhere got worse. At most `budget`
 * copies are inspected; the report says how many proposals were left.
 */
export function offerCures(
  inspection: Inspection,
  inspected: Inspected,
  cures: readonly Cure[],
  budget: number,
): Report {
  const { report, read } = inspected;
  if (!read || !isFrameFile(read.document.value)) return report;
  const { document, frame, origins } = read;
  const patient: Patient = {
    frame,
    file: document.value as Patient["file"],
    pointerOf: (part) => origins.originOf(part).pointer,
  };
  const mendable = report.findings.filter((finding) => finding.level !== "note" && !finding.conceded);
  const offered = new Map<string, CureOffered[]>();
  let tried = 0;
  let untried = 0;
  for (const finding of byTurns(mendable)) {
    const found: CureOffered[] = [];
    for (const kind of [...cures].sort((a, b) => a.turn - b.turn)) {
      if (!kind.mends.includes(finding.rule)) continue;
      let tries = 0;
      for (const proposal of kind.propose(ailmentOf(finding), patient)) {
        if (tried >= budget || tries >= TRIES_A_KIND || found.length >= OFFERED) {
          if (found.length < OFFERED) untried += 1;
          continue;
        }
        tried += 1;
        tries += 1;
        const cure = attempt(inspection, document.value, proposal, finding, report);
        if (!cure) continue;
        found.push(cure);
        break;
      }
    }
    if (found.length > 0) offered.set(finding.print, found);
  }
  const findings = report.findings.map((finding) => {
    const found = offered.get(finding.print);
    return found ? { ...finding, cures: found } : finding;
  });
  return { ...report, findings, cureTrials: { tried, untried } };
}

import { keeps } from "../criteria/keeps.ts";
import type { Ailment, Cure, Patient, Proposal } from "../cures/cure.ts";
import { isFrameFile } from "../model/validate.ts";
import { applyEdits } from "./apply-edits.ts";
import { type Inspected, type Inspection, inspectOnce } from "./inspect-once.ts";
import type { CureOffered, Finding, Report } from "./report.ts";

/** Proposals tried for one finding before the next gets its turn. */
const TRIES_A_FINDING = 4;

interface Search {
  readonly finding: Finding;
  readonly proposals: Iterator<Proposal>;
  tries: number;
}

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

/** Whether every finding left was there before, and no worse. */
function nowhereWorse(before: Report, after: Report): boolean {
  const old = new Map(before.findings.map((finding) => [finding.print, finding]));
  for (const finding of after.findings) {
    const known = old.get(finding.print);
    if (!known || (known.level === "note" && finding.level !== "note")) return false;
    const [was, is] = [known.measure, finding.measure];
    if (was && is && !keeps(is.measured, was.measured, is.sense)) return false;
  }
  return true;
}

function* proposalsFor(finding: Finding, cures: readonly Cure[], patient: Patient): Generator<Proposal> {
  const ailment: Ailment = {
    rule: finding.rule,
    key: finding.key,
    at: finding.at,
    related: finding.related.map((other) => other.at),
    utilisation: finding.measure?.utilisation,
  };
  for (const cure of cures) if (cure.mends.includes(finding.rule)) yield* cure.propose(ailment, patient);
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
  const { report, watched } = inspectOnce({ ...inspection, bytes }, watch);
  const mended =
    report.verdict !== "unread" && report.complete && !report.findings.some((left) => left.print === finding.print);
  if (!mended || report.undecided.length > before.undecided.length || !nowhereWorse(before, report)) return undefined;
  return {
    words: proposal.words,
    edits: proposal.edits,
    ...(finding.measure && watched !== undefined ? { after: watched } : {}),
  };
}

/**
 * Looks for changes that mend findings, worst of each rule first. Every proposal is made on a copy of the file, and the
 * copy is inspected whole: it is offered only if the finding is gone and nothing anywhere got worse. At most `budget`
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
  const searches: Search[] = byTurns(
    report.findings.filter((finding) => finding.level !== "note" && !finding.conceded),
  ).map((finding) => ({
    finding,
    proposals: proposalsFor(finding, cures, patient),
    tries: 0,
  }));
  const offered = new Map<string, CureOffered>();
  let tried = 0;
  let untried = 0;
  for (const search of searches) {
    for (let step = search.proposals.next(); !step.done; step = search.proposals.next()) {
      if (tried >= budget || search.tries >= TRIES_A_FINDING) {
        untried += 1;
        continue;
      }
      tried += 1;
      search.tries += 1;
      const cure = attempt(inspection, document.value, step.value, search.finding, report);
      if (!cure) continue;
      offered.set(search.finding.print, cure);
      break;
    }
  }
  const findings = report.findings.map((finding) => {
    const cure = offered.get(finding.print);
    return cure ? { ...finding, cures: [cure] } : finding;
  });
  return { ...report, findings, cureTrials: { tried, untried } };
}

import type { HouseInForce } from "../house/house-in-force.ts";
import type { Frame } from "../model/frame.ts";
import { compareProblems, compareText, isDoubtful, type Problem } from "../model/problem.ts";
import type { FrameReading } from "../model/read-frame.ts";
import type { Ref } from "../model/ref.ts";
import type { Origins } from "../model/resolve/names.ts";
import type { Document } from "../model/text/document.ts";
import type { AnyRule } from "../rules/shape/rule.ts";
import { changedSettings } from "./changed-settings.ts";
import { concede } from "./concede.ts";
import { criteriaProblems } from "./criteria-problems.ts";
import type { Setting, Watch } from "./finding.ts";
import { Limits } from "./limits.ts";
import { nothingRead } from "./nothing-read.ts";
import { inReadingOrder } from "./order.ts";
import { placing } from "./placing.ts";
import { readForInspection, type ToRead } from "./read-for-inspection.ts";
import type { Failure, Finding, Margin, Report, Tally, Undecided, Verdict } from "./report.ts";
import { runRule } from "./run-rule.ts";
import { sheetRoles } from "./sheet-roles.ts";
import { tippedByLeaning } from "./tipped-by-leaning.ts";
import { unansweredQuestions } from "./unanswered.ts";
import { whereabouts } from "./whereabouts.ts";

export interface Inspection extends ToRead {
  readonly house: HouseInForce;
  /** How many changed frames may be inspected in search of cures; none when absent. */
  readonly cureTrials?: number | "usual";
  /** Whether the report keeps every measured judgement, not the closest of each rule alone. */
  readonly margins?: boolean;
  /** Called before each rule, so that a rule that never returns can be named. */
  readonly ruleStarts?: (rule: string) => void;
}

/** The result where there is no frame to judge. */
function unread(file: string, reading: FrameReading | undefined, problems: readonly Problem[]): Report {
  const { title, units } = reading?.frame ?? {};
  return {
    ...nothingRead(file),
    ...(title === undefined ? {} : { title }),
    ...(units === undefined ? {} : { units }),
    problems: [...problems].sort(compareProblems),
  };
}

interface Ran {
  readonly findings: Finding[];
  readonly tallies: Tally[];
  readonly failures: Failure[];
  readonly undecided: Map<string, { rules: Set<string>; at: Map<string, Ref>; holds: boolean }>;
}

/** The rule that a change is to satisfy first: most changes that are no cure show it there. */
function inTurn(rules: readonly AnyRule[], trial: Trial | undefined): readonly AnyRule[] {
  if (!trial) return rules;
  const first = rules.filter(({ id }) => id === trial.watch.rule);
  return [...first, ...rules.filter((rule) => !first.includes(rule))];
}

/** What all rules say; undefined where a trial is over before that. */
function runAll(
  { house, ruleStarts: starts }: Inspection,
  frame: Frame,
  limits: Limits,
  setting: Setting,
  trial?: Trial,
): Ran | undefined {
  const ran: Ran = { findings: [], tallies: [], failures: [], undecided: new Map() };
  for (const rule of inTurn(house.rules, trial)) {
    const strictness = house.strictness.get(rule.id);
    if (strictness === "off") continue;
    starts?.(rule.id);
    const outcome = runRule(rule, frame, limits, strictness, setting);
    if (trial && (outcome.failures.length > 0 || trial.fails(rule.id, outcome.findings))) return undefined;
    for (const one of outcome.findings) ran.findings.push(one);
    ran.tallies.push(outcome.tally);
    for (const failure of outcome.failures) ran.failures.push(failure);
    for (const { at, why } of outcome.undecided) {
      let known = ran.undecided.get(why);
      if (!known) {
        known = { rules: new Set(), at: new Map(), holds: false };
        ran.undecided.set(why, known);
      }
      known.rules.add(rule.id);
      known.at.set(`${at.kind} ${at.id}`, at);
      if ((strictness ?? rule.level) !== "note") known.holds = true;
    }
  }
  return ran;
}

/** The worst of what was found. What could not be decided holds a frame, and so does a value that may be a slip: every number may hang on it. */
function verdictOf(
  findings: readonly Finding[],
  undecided: readonly Undecided[],
  problems: readonly Problem[],
): Verdict {
  const live = findings.filter((finding) => !finding.conceded);
  if (live.some((finding) => finding.level === "reject")) return "reject";
  if (live.some((finding) => finding.level === "hold") || undecided.some((entry) => entry.holds)) return "hold";
  if (problems.some(isDoubtful)) return "hold";
  return "accept";
}

/** The result of one inspection, with what a cure needs to know to change the frame. */
export interface Inspected {
  readonly report: Report;
  /** Absent when the file could not be read. */
  readonly read?: { readonly frame: Frame; readonly document: Document; readonly origins: Origins };
  /** What the judgement under watch came to, as printed. */
  readonly watched?: string;
}

/** An inspection that asks only whether a change is a cure. */
export interface Trial {
  readonly watch: Watch;
  /** Whether what a rule says of the changed frame already shows that it is none. */
  fails(rule: string, findings: readonly Finding[]): boolean;
}

/**
 * Inspects one frame file: bytes in, the whole result out, no cures tried. Pure; the same in every thread. A trial that fails is broken off and
 * gives the report of a file that was not read.
 */
export function inspectOnce(inspection: Inspection, trial?: Trial): Inspected {
  const { file, house } = inspection;
  const { frame, reading, problems: readingProblems } = readForInspection(inspection);
  const problems = [...readingProblems];
  const { document, origins } = reading;
  if (!frame || !document) return { report: unread(file, reading, problems) };

  const place = placing(document, origins, frame);
  problems.push(...unansweredQuestions(frame, place));
  problems.push(
    ...criteriaProblems(
      frame,
      house.rules,
      (pointer) => document.place(pointer),
      (at) => origins.originOf(at).pointer,
    ),
  );
  if (problems.some((problem) => problem.weight === "error")) return { report: unread(file, reading, problems) };

  const limits = new Limits(frame, house);
  const margins: Margin[] | undefined = inspection.margins === true ? [] : undefined;
  const setting: Setting = {
    frame,
    place,
    where: whereabouts(frame),
    ...(trial ? { watch: trial.watch } : {}),
    watched: [],
    ...(margins ? { margins } : {}),
  };
  const ran = runAll(inspection, frame, limits, setting, trial);
  if (!ran) return { report: nothingRead(file) };
  const conceded = concede(inReadingOrder(ran.findings), house, frame.units);
  const undecided: Undecided[] = [...ran.undecided].map(([why, entry]) => ({
    why,
    rules: [...entry.rules].sort(compareText),
    at: [...entry.at.values()],
    holds: entry.holds,
  }));
  undecided.sort((a, b) => compareText(a.why, b.why));
  const report: Report = {
    file,
    title: frame.title,
    ...(frame.revision === undefined ? {} : { revision: frame.revision }),
    units: frame.units,
    verdict: verdictOf(conceded.findings, undecided, problems),
    complete: ran.failures.length === 0,
    counts: {
      bars: frame.bars.length,
      joints: frame.joints.length + frame.fastenings.length + frame.ties.length + frame.pivots.length,
      cases: frame.cases.length,
      parts:
        frame.bars.length +
        frame.joints.length +
        frame.fastenings.length +
        frame.ties.length +
        frame.pivots.length +
        frame.panels.length +
        frame.stands.length +
        frame.masses.length,
    },
    problems: problems.sort(compareProblems),
    findings: inReadingOrder(conceded.findings),
    undecided,
    tallies: ran.tallies,
    ...(margins ? { margins } : {}),
    failures: ran.failures,
    assumed: [
      ...frame.assumed,
      ...(ran.failures.length === 0 ? [...sheetRoles(frame), ...tippedByLeaning(frame, house.rules)] : []),
    ],
    changed: changedSettings(frame, house),
    concessionRemarks: conceded.remarks,
    cureTrials: { tried: 0, untried: 0 },
  };
  const [watched] = setting.watched;
  return { report, read: { frame, document, origins }, ...(watched === undefined ? {} : { watched }) };
}

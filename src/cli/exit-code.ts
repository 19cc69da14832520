import type { Report } from "../inspection/report.ts";
import type { Level } from "../rules/shape/rule.ts";

/** What a run ends with. Fixed for good; of several that apply the gravest counts. */
export const EXIT = {
  /** Complete, nothing at the gate. */
  clean: 0,
  /** Complete, findings at the gate. */
  atGate: 1,
  /** Arguments or house file unusable, or no file matched. */
  unusable: 2,
  /** A frame could not be read, a limit was hit, a rule or fact failed. */
  incomplete: 3,
  /** The report could not be delivered, or trysquare itself failed. */
  undelivered: 4,
} as const;

/** From the mildest to the gravest. */
const LEVELS: readonly Level[] = ["note", "hold", "reject"];
export const GATES = ["note", "hold", "reject", "none"] as const;
/** The level from which a run fails. */
export type Gate = Level | "none";

/** Whether a level is at the gate; nothing is at the gate "none". */
export function atGate(level: Level | undefined, gate: Gate): boolean {
  if (gate === "none" || level === undefined) return false;
  return LEVELS.indexOf(level) >= LEVELS.indexOf(gate);
}

/** The gravest level of a report: of its verdict, or a note where only notes were found. */
export function levelOf(report: Report): Level | undefined {
  if (report.verdict === "hold" || report.verdict === "reject") return report.verdict;
  return report.findings.some((finding) => finding.conceded === undefined) ? "note" : undefined;
}

/** The exit code one report asks for. */
export function exitFor(report: Report, gate: Gate): number {
  if (!report.complete) return EXIT.incomplete;
  return atGate(levelOf(report), gate) ? EXIT.atGate : EXIT.clean;
}

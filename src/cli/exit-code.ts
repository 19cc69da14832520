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

export const GATES = ["note", "hold", "reject", "none"] as const;
/** The level from which a run fails. */
export type Gate = Level | "none";

function atGate(report: Report, gate: Gate): boolean {
  if (gate === "none" || report.verdict === "unread") return false;
  if (report.verdict === "reject") return true;
  if (gate === "reject") return false;
  if (report.verdict === "hold") return true;
  return gate === "note" && report.findings.some((finding) => finding.conceded === undefined);
}

/** The exit code one report asks for. */
export function exitFor(report: Report, gate: Gate): number {
  if (!report.complete) return EXIT.incomplete;
  return atGate(report, gate) ? EXIT.atGate : EXIT.clean;
}

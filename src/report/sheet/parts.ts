import type { Finding, Report } from "../../inspection/report.ts";
import type { Level } from "../../rules/shape/rule.ts";

/** The findings of one part under one number: the number of its balloon on the drawings. */
export interface PartOfSheet {
  readonly number: number;
  readonly where: string;
  readonly findings: readonly NumberedFinding[];
  /** The gravest level among findings that are not conceded; "conceded" where there is none. */
  readonly level: Level | "conceded";
}

export interface NumberedFinding {
  /** "3.2", the second of part 3. */
  readonly number: string;
  readonly finding: Finding;
}

const GRAVITY: Readonly<Record<Level | "conceded", number>> = { conceded: 0, note: 1, hold: 2, reject: 3 };

const weightOf = (finding: Finding): Level | "conceded" => (finding.conceded ? "conceded" : finding.level);

/** Findings by part, worst part first, numbered. */
export function partsOf({ findings }: Report): readonly PartOfSheet[] {
  const byPart = new Map<string, Finding[]>();
  for (const finding of findings) {
    const known = byPart.get(finding.where);
    if (known) known.push(finding);
    else byPart.set(finding.where, [finding]);
  }
  return [...byPart].map(([where, own], i) => ({
    number: i + 1,
    where,
    findings: own.map((finding, j) => ({ number: own.length === 1 ? `${i + 1}` : `${i + 1}.${j + 1}`, finding })),
    level: own.map(weightOf).reduce((a, b) => (GRAVITY[b] > GRAVITY[a] ? b : a), "conceded"),
  }));
}

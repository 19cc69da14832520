import { comparePlaces, compareText } from "../model/problem.ts";
import type { Level } from "../rules/shape/rule.ts";
import type { Finding } from "./report.ts";

const gravity: Readonly<Record<Level, number>> = { note: 1, hold: 2, reject: 3 };

function weight(finding: Finding): number {
  // Levels first, then how far beyond the limit; a conceded finding goes last.
  const excess = Math.min(finding.measure?.utilisation ?? 1, 1e6) / 1e6;
  return (finding.conceded ? 0 : gravity[finding.level]) + Math.min(excess, 0.999);
}

/** Worst part first, then worst finding of the part; ties by place in the file, then rule, then parts: the same in every run. */
export function inReadingOrder(findings: readonly Finding[]): readonly Finding[] {
  const worst = new Map<string, number>();
  for (const finding of findings) worst.set(finding.where, Math.max(worst.get(finding.where) ?? 0, weight(finding)));
  return [...findings].sort(
    (a, b) =>
      (worst.get(b.where) ?? 0) - (worst.get(a.where) ?? 0) ||
      (a.where === b.where ? 0 : comparePlaces(a.place, b.place) || compareText(a.where, b.where)) ||
      weight(b) - weight(a) ||
      comparePlaces(a.place, b.place) ||
      compareText(a.rule, b.rule) ||
      compareText(a.key, b.key) ||
      compareText(a.print, b.print),
  );
}

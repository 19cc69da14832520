import { comparePlaces, compareText, type Place } from "../model/problem.ts";
import type { Level } from "../rules/shape/rule.ts";
import type { Finding } from "./report.ts";

const gravity: Readonly<Record<Level, number>> = { note: 1, hold: 2, reject: 3 };

function weight(finding: Finding): number {
  // Levels first, then how far beyond the limit; a conceded finding goes last.
  // Rounded, so that joints alike stand as in the file and not as the last digit of a calculation has it.
  const excess = Math.min(Number((finding.measure?.utilisation ?? 1).toPrecision(9)), 1e6) / 1e6;
  return (finding.conceded ? 0 : gravity[finding.level]) + Math.min(excess, 0.999);
}

/** What findings of one part share: its worst finding and its first place in the file. */
interface Part {
  readonly worst: number;
  readonly first: Place;
}

function partsOf(findings: readonly Finding[]): ReadonlyMap<string, Part> {
  const parts = new Map<string, Part>();
  for (const finding of findings) {
    const known = parts.get(finding.where);
    parts.set(finding.where, {
      worst: Math.max(known?.worst ?? 0, weight(finding)),
      first: known && comparePlaces(known.first, finding.place) <= 0 ? known.first : finding.place,
    });
  }
  return parts;
}

/** Worst part first, then worst finding of the part; ties by place in the file, then rule, then parts: the same in every run. */
export function inReadingOrder(findings: readonly Finding[]): readonly Finding[] {
  const parts = partsOf(findings);
  const byPart = (a: Finding, b: Finding): number => {
    const [p, q] = [parts.get(a.where), parts.get(b.where)];
    return p && q && a.where !== b.where
      ? q.worst - p.worst || comparePlaces(p.first, q.first) || compareText(a.where, b.where)
      : 0;
  };
  return [...findings].sort(
    (a, b) =>
      byPart(a, b) ||
      weight(b) - weight(a) ||
      gravity[b.level] - gravity[a.level] ||
      comparePlaces(a.place, b.place) ||
      compareText(a.rule, b.rule) ||
      compareText(a.key, b.key) ||
      compareText(a.print, b.print) ||
      compareText(a.text, b.text),
  );
}

import type { Arrival } from "../../facts/arrivals.ts";
import type { CutLine } from "../../facts/cut-list.ts";
import type { Nesting } from "../../facts/nesting.ts";
import type { PartCount } from "../../facts/part-counts.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";

/** Bars of one profile: how they come out of stock lengths. */
export interface ProfilePlan {
  readonly profile: string;
  /** Length of a stock bar, m. */
  readonly stock: number;
  readonly nesting: Nesting;
  /** kg of bars as cut. */
  readonly mass: number;
}

/** What is sawn and laid out weighs, kind by kind, kg; screws, nuts, caps and strips are not weighed. */
export function massesOf({
  lines,
  counts,
}: CutSheet): Readonly<Record<"bar" | "sheet" | "connector" | "stand", number>> {
  const sum = (kind: string): number =>
    kind === "bar"
      ? lines.reduce((all, line) => all + line.mass * line.bars.length, 0)
      : counts.filter((part) => part.kind === kind).reduce((all, part) => all + (part.mass ?? 0) * part.count, 0);
  return { bar: sum("bar"), sheet: sum("sheet"), connector: sum("connector"), stand: sum("stand") };
}

/** Everything that is sawn, bought and laid out for one frame. */
export interface CutSheet {
  readonly file: string;
  readonly title: string;
  readonly units: UnitSystem;
  /** Width of the saw cut, m. */
  readonly kerf: number;
  readonly lines: readonly CutLine[];
  readonly plans: readonly ProfilePlan[];
  readonly counts: readonly PartCount[];
  /** What comes put together and is in none of the lists above. */
  readonly arrivals: readonly Arrival[];
}

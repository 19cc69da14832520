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

import type { StrengthMethod } from "../model/frame.ts";
import type { AnyRule, Level } from "../rules/shape/rule.ts";
import type { Concession } from "./concession.ts";

/** A limit set by a team, as its house file writes it: a number (ratios and counts), text with a unit, or a share of the span. */
export interface HouseCriterion {
  readonly value: number | string;
  readonly basis?: string;
  readonly from: "house";
  /** The house file that says so. */
  readonly said: string;
}

/** How strict a team is about a rule: at another level than the rule's own, or not at all. */
export type Strictness = Level | "off";

/** A team's choices without its rules: plain data that crosses to another thread. */
export interface HouseSettings {
  /** By criterion name. */
  readonly criteria: ReadonlyMap<string, HouseCriterion>;
  /** By rule id; a rule not listed keeps its own level. */
  readonly strictness: ReadonlyMap<string, Strictness>;
  /** How strength is judged where a frame does not say. */
  readonly method?: StrengthMethod;
  readonly concessions: readonly Concession[];
  /** The date of the inspection, "2027-03-31": the only clock there is. */
  readonly today: string;
}

/** A team's choices, resolved for one frame file: everything an inspection needs to know besides frame and stock. */
export interface HouseInForce extends HouseSettings {
  /** Built-in rules first, then the team's own in the order of its house files. */
  readonly rules: readonly AnyRule[];
}

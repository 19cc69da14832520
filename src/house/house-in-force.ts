import type { AnyRule, Level } from "../rules/shape/rule.ts";
import type { Concession } from "./concession.ts";

/** A limit set by a team, as its house file writes it: a number in the frame's unit, text with a unit, or a share of the span. */
export interface HouseCriterion {
  readonly value: number | string;
  readonly basis?: string;
  readonly from: "house";
}

/** How strict a team is about a rule: at another level than the rule's own, or not at all. */
export type Strictness = Level | "off";

/** A team's choices, resolved for one frame file: everything an inspection needs to know besides frame and stock. */
export interface HouseInForce {
  /** By criterion name. */
  readonly criteria: ReadonlyMap<string, HouseCriterion>;
  /** By rule id; a rule not listed keeps its own level. */
  readonly strictness: ReadonlyMap<string, Strictness>;
  /** Built-in rules first, then the team's own in the order of its house files. */
  readonly rules: readonly AnyRule[];
  readonly concessions: readonly Concession[];
  /** The date of the inspection, "2027-03-31": the only clock there is. */
  readonly today: string;
}

/** No house at all: the rules given, at their own levels and limits. */
export function bareHouse(rules: readonly AnyRule[], today: string): HouseInForce {
  return { criteria: new Map(), strictness: new Map(), rules, concessions: [], today };
}

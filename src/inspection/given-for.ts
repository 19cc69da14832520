import type { Criteria, GivenAll } from "../criteria/criterion.ts";
import type { AnyRule } from "../rules/shape/rule.ts";
import type { Limits } from "./limits.ts";

/** What a rule's criteria resolve to. */
export function givenFor(rule: AnyRule, limits: Limits): GivenAll<Criteria> {
  const given: Record<string, unknown> = {};
  for (const [name, criterion] of Object.entries(rule.criteria)) given[name] = limits.given(criterion);
  return given as GivenAll<Criteria>;
}

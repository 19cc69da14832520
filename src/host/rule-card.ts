import type { RuleCard } from "../inspection/report.ts";
import type { AnyRule } from "../rules/shape/rule.ts";

/** What a reporter needs of a rule; plain data that crosses a worker. */
export function ruleCard(rule: AnyRule): RuleCard {
  const { id, title, group, level, basis } = rule;
  const messages: Record<string, RuleCard["messages"][string]> = {};
  for (const [key, { text, overlap, advice }] of Object.entries(rule.messages))
    messages[key] = { text, ...(overlap !== undefined && { overlap }), ...(advice !== undefined && { advice }) };
  const criteria = Object.values(rule.criteria).map(({ name, quantity, standard, within, about, basis }) => ({
    name,
    quantity,
    standard,
    ...(within !== undefined && { within }),
    about,
    basis,
  }));
  return { id, title, group, level, basis: [...basis], messages, criteria };
}

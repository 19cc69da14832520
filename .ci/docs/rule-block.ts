import type { AnyRule } from "../../src/rules/shape/rule.ts";

/** A slot of a message as its name between angle brackets: "<sag>". */
const plain = (text: string): string => text.replace(/\{(\w+):\w+\}/g, "‹$1›");

/** What the rule object says of itself: title, level, group, basis, criteria, messages with what would mend them. */
export function ruleBlock(rule: AnyRule): string {
  const lines = [`**${rule.title}** · ${rule.level} · ${rule.group}`, "", `Basis: ${rule.basis.join("; ")}`];
  const criteria = Object.values(rule.criteria);
  if (criteria.length > 0) {
    lines.push("", "| criterion | usual value | what it limits | from |", "| --- | --- | --- | --- |");
    for (const { name, standard, about, basis } of criteria)
      lines.push(`| \`${name}\` | ${standard} | ${about} | ${basis} |`);
  }
  lines.push("", "| message | says | mend |", "| --- | --- | --- |");
  for (const [key, { text, overlap, advice, exact, level }] of Object.entries(rule.messages)) {
    const says = overlap === undefined ? plain(text) : `${plain(text)}; or ${plain(overlap)}`;
    const mend = [advice, exact].filter((words) => words !== undefined).map(plain);
    lines.push(`| \`${key}\`${level ? ` (${level})` : ""} | ${says} | ${mend.join("; or ")} |`);
  }
  return lines.join("\n");
}

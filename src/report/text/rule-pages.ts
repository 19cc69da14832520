import type { RuleCard } from "../../inspection/report.ts";
import { groups } from "../../rules/shape/rule.ts";
import { type Page, paragraph } from "./page.ts";

/** A slot of a message as its name between angle brackets: "<sag>". */
const plain = (template: string): string => template.replace(/\{(\w+):[^}]*\}/g, "<$1>");

function widest(words: readonly string[]): number {
  let most = 0;
  for (const word of words) most = Math.max(most, word.length);
  return most;
}

/** All rules by group: id, level, and the state of a sound frame. */
export function* ruleList(page: Page, cards: readonly RuleCard[]): Generator<string> {
  const byGroup = new Map<string, RuleCard[]>(groups.map((group) => [group, []]));
  for (const card of cards) byGroup.set(card.group, [...(byGroup.get(card.group) ?? []), card]);
  const idWidth = widest(cards.map((card) => card.id));
  const levelWidth = widest(cards.map((card) => card.level));
  for (const [group, members] of byGroup) {
    if (members.length === 0) continue;
    yield paragraph(page, group, 0, page.ink.part);
    for (const { id, level, title } of members) {
      const front = `  ${id.padEnd(idWidth)}  ${level.padEnd(levelWidth)}  `;
      yield `${front}${paragraph(page, title, front.length).slice(front.length)}`;
    }
    yield "\n";
  }
}

/** One rule in full: level, basis, limits with their sources, and what it says. */
export function* rulePage(page: Page, card: RuleCard): Generator<string> {
  yield paragraph(page, `${card.id} · ${card.group} · ${card.level}`, 0, page.ink.part);
  yield paragraph(page, card.title);
  yield "\n";
  for (const basis of card.basis) yield paragraph(page, `basis: ${basis}`);
  for (const { name, standard, within, about, basis } of card.criteria) {
    yield "\n";
    yield paragraph(
      page,
      `criterion ${name}: ${standard}${within ? ` (may be set from ${within[0]} to ${within[1]})` : ""}`,
    );
    yield paragraph(page, `${about}; ${basis}`, 2);
  }
  for (const { text, overlap, advice } of Object.values(card.messages)) {
    yield "\n";
    yield paragraph(page, `says: ${plain(text)}`);
    if (overlap !== undefined) yield paragraph(page, `or: ${plain(overlap)}`, 2);
    if (advice !== undefined) yield paragraph(page, `mend: ${plain(advice)}`, 2);
  }
}

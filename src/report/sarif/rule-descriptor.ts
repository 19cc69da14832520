import type { RuleCard } from "../../inspection/report.ts";
import { markdownWords, plainWords } from "./words.ts";

/** The only place where our levels have other names. */
export const SARIF_LEVEL = { note: "note", hold: "warning", reject: "error" } as const;

/** Longest fullDescription that ingesters take. */
const DESCRIPTION_UNITS = 1024;
const SLOT = /\{(\w+):[^}]*\}/g;

/** Names of a message's slots, each once, in the order of the text: the order of its arguments. */
export function slotsOf(template: string): readonly string[] {
  return [...new Set(Array.from(template.matchAll(SLOT), ([, name = ""]) => name))];
}

/** "sags {sag:length}" as SARIF has it: "sags {0}". */
function messageString(template: string): string {
  const slots = slotsOf(template);
  return template.replace(SLOT, (_, name: string) => `{${slots.indexOf(name)}}`);
}

/** Under this id stands what a message says of parts that run into each other. */
export const overlapId = (key: string): string => `${key}.overlap`;

/** A sentence ends with a full stop (SARIF readers ask for it). */
function sentenceEnd(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}

function describe(card: RuleCard): string {
  const limits = card.criteria.map(({ about, standard, basis }) => `${about}: ${standard} (${basis})`);
  return [`${card.title}.`, ...limits.map((limit) => `${limit}.`)].join(" ").slice(0, DESCRIPTION_UNITS);
}

function markdownHelp(card: RuleCard): string {
  const limits = card.criteria.map(
    ({ name, about, standard, basis }) =>
      `- ${markdownWords(name)}: ${markdownWords(about)}; ${markdownWords(standard)} (${markdownWords(basis)})`,
  );
  const lines = [
    `**${markdownWords(card.title)}** (${markdownWords(card.id)})`,
    "",
    `Basis: ${markdownWords(card.basis.join("; "))}`,
  ];
  return (limits.length === 0 ? lines : [...lines, "", "Limits:", ...limits]).join("\n");
}

/** A rule in force as a reportingDescriptor. */
export function ruleDescriptor(card: RuleCard): object {
  const messageStrings: Record<string, { readonly text: string }> = {};
  for (const [key, { text, overlap }] of Object.entries(card.messages)) {
    messageStrings[key] = { text: sentenceEnd(messageString(text)) };
    if (overlap !== undefined) messageStrings[overlapId(key)] = { text: sentenceEnd(messageString(overlap)) };
  }
  const description = plainWords(describe(card));
  return {
    id: card.id,
    shortDescription: { text: plainWords(card.title) },
    fullDescription: { text: description },
    help: { text: `${description} ${plainWords(`Basis: ${card.basis.join("; ")}.`)}`, markdown: markdownHelp(card) },
    messageStrings,
    defaultConfiguration: { level: SARIF_LEVEL[card.level] },
    properties: {
      group: card.group,
      level: card.level,
      basis: card.basis,
      criteria: card.criteria,
      tags: [card.group],
    },
  };
}

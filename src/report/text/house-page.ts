import type { HouseInWords } from "../../house/house-in-words.ts";
import { type Page, paragraph } from "./page.ts";

function* section(page: Page, title: string, lines: readonly string[]): Generator<string> {
  if (lines.length === 0) return;
  yield "\n";
  yield paragraph(page, title, 0, page.ink.part);
  for (const line of lines) yield paragraph(page, line, 2);
}

function strictnessLines({ settings, rules }: HouseInWords): readonly string[] {
  const own = new Map(rules.map(({ id, level }) => [id, level]));
  return [...settings.strictness].map(([rule, level]) => {
    const usual = own.get(rule);
    return `${rule}: ${level}${usual === undefined ? "" : `, not ${usual}`}; says ${settings.strictnessSaid.get(rule)}`;
  });
}

function criteriaLines({ settings, rules }: HouseInWords): readonly string[] {
  const usual = new Map(rules.flatMap((rule) => rule.criteria.map(({ name, standard }) => [name, standard] as const)));
  return [...settings.criteria].map(([name, { value, basis, said }]) => {
    const standard = usual.get(name);
    const instead = standard === undefined ? "" : `, not ${standard}`;
    return `${name}: ${value}${instead}; says ${said}${basis === undefined ? "" : ` (${basis})`}`;
  });
}

/** What a house says for a frame, which file says it, and what it replaces; every file that is read or run is named. */
export function* housePage(page: Page, words: HouseInWords): Generator<string> {
  const { house, settings, frame, modules, stock } = words;
  const names = house.sources.map((source) => source.name).reverse();
  const [first = "no house file", ...others] = names;
  yield paragraph(page, others.length === 0 ? first : `${first}, based on ${others.join(", ")}`, 0, page.ink.part);
  yield paragraph(page, frame === undefined ? "for frames outside its areas" : `for ${frame}`);
  const { method, methodSaid } = settings;
  yield* section(page, "method", method === undefined ? [] : [`${method}; says ${methodSaid}`]);
  yield* section(page, "strictness", strictnessLines(words));
  yield* section(page, "criteria", criteriaLines(words));
  yield* section(page, "rules of the team, run only when the command line names the house file", modules);
  yield* section(page, "stock", stock);
  const conceded = settings.concessions.map(
    ({ rule, at, until, who, reason, place }) =>
      `${rule} on ${at.join(", ")}, until ${until}, by ${who}: ${reason} (${place.file}:${place.line})`,
  );
  yield* section(page, "concessions", conceded);
  if (
    method === undefined &&
    settings.strictness.size + settings.criteria.size + modules.length + stock.length + conceded.length === 0
  ) {
    yield paragraph(page, "It changes nothing: every rule is at its own level, with the usual limits.");
  }
}

import { type Limited, readLimit } from "../criteria/read-limit.ts";
import type { HouseFile } from "../model/generated/house-file.generated.ts";
import type { Problem } from "../model/problem.ts";
import { nearest } from "../model/text/nearest.ts";
import { pointerTo } from "../model/text/pointer.ts";
import { quote } from "../model/text/quote.ts";
import type { Quantity } from "../model/units/quantity.ts";
import { faultOfPattern } from "./frame-pattern.ts";
import type { House, HouseSource } from "./house.ts";
import type { KnownRule } from "./known-rule.ts";

interface Known {
  readonly rules: readonly string[];
  readonly criteria: ReadonlyMap<string, Limited>;
}

/** Quantities whose bare number means the same in every frame. */
const UNITLESS: ReadonlySet<Quantity> = new Set(["ratio", "count"]);

function unknown(source: HouseSource, pointer: string, what: string, name: string, names: Iterable<string>): Problem {
  const near = nearest(name, names);
  const problem = {
    code: `unknown-${what}`,
    weight: "error" as const,
    place: source.place(pointer),
    found: `${what} "${quote(name)}", which does not exist`,
    expected: `a ${what} that \`trysquare rules\` lists`,
  };
  return near === undefined ? problem : { ...problem, mend: `write "${near}"` };
}

function checkChoices(
  source: HouseSource,
  at: string,
  part: Pick<HouseFile, "criteria" | "strictness">,
  known: Known,
): readonly Problem[] {
  const problems: Problem[] = [];
  for (const rule of Object.keys(part.strictness ?? {})) {
    const pointer = pointerTo(at, "strictness", rule);
    if (!known.rules.includes(rule)) problems.push(unknown(source, pointer, "rule", rule, known.rules));
  }
  for (const [name, setting] of Object.entries(part.criteria ?? {})) {
    if (setting === undefined) continue;
    const pointer = pointerTo(at, "criteria", name);
    const criterion = known.criteria.get(name);
    if (criterion === undefined) {
      problems.push(unknown(source, pointer, "criterion", name, known.criteria.keys()));
      continue;
    }
    const value = typeof setting === "object" ? setting.value : setting;
    if (typeof value === "number" && !UNITLESS.has(criterion.quantity)) {
      problems.push({
        code: "missing-unit",
        weight: "error",
        place: source.place(pointer),
        found: `${value} without a unit`,
        expected: "text with a unit: a house holds for frames in different units",
      });
      continue;
    }
    // Text has its own unit, so the frames' units do not matter.
    const read = readLimit(value, criterion, "mm-N-kg");
    if ("found" in read)
      problems.push({
        code: "unreadable-criterion",
        weight: "error",
        place: source.place(pointer),
        ...read,
        found: `${name} set to ${read.found}`,
      });
  }
  return problems;
}

/** Names in house and concessions files that no rule in force knows, and limits that cannot be meant: no such quantity, out of range, or with a unit that would depend on the frame. */
export function checkNames(house: House, rules: readonly KnownRule[]): readonly Problem[] {
  const criteria = new Map(rules.flatMap((rule) => rule.criteria.map((criterion) => [criterion.name, criterion])));
  const known: Known = { rules: rules.map((rule) => rule.id), criteria };
  const problems: Problem[] = [];
  for (const source of house.sources) {
    for (const problem of checkChoices(source, "", source.file, known)) problems.push(problem);
    for (const [i, area] of (source.file.areas ?? []).entries()) {
      for (const [j, pattern] of area.frames.entries()) {
        const fault = faultOfPattern(pattern);
        if (fault === undefined) continue;
        problems.push({
          code: "unreadable-pattern",
          weight: "error",
          place: source.place(`/areas/${i}/frames/${j}`),
          found: `the pattern "${quote(pattern)}": ${fault}`,
          expected:
            "a path relative to the house file, in which * and ? stand for characters of a name and ** for folders",
        });
      }
      for (const problem of checkChoices(source, `/areas/${i}`, area, known)) problems.push(problem);
    }
    for (const { concession } of source.conceded?.concessions ?? []) {
      const { rule, place } = concession;
      if (!known.rules.includes(rule)) problems.push({ ...unknown(source, "", "rule", rule, known.rules), place });
    }
  }
  return problems;
}

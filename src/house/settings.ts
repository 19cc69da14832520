import { posix } from "node:path";
import type { StrengthMethod } from "../model/frame.ts";
import type { Area, HouseFile } from "../model/generated/house-file.generated.ts";
import type { Concession } from "./concession.ts";
import { fitsPattern } from "./frame-pattern.ts";
import type { House, HouseSource } from "./house.ts";
import type { HouseCriterion, HouseSettings, Strictness } from "./house-in-force.ts";

/** Settings with the house file that said each: what `trysquare house` prints. */
export interface ExplainedSettings extends HouseSettings {
  readonly strictnessSaid: ReadonlyMap<string, string>;
  readonly methodSaid?: string;
}

function fitsAny(from: string, frame: string, patterns: readonly string[]): boolean {
  const path = posix.relative(posix.dirname(from), frame);
  return patterns.some((pattern) => fitsPattern(path, pattern));
}

function concessionsFor(source: HouseSource, frame: string): readonly Concession[] {
  const { conceded } = source;
  if (conceded === undefined) return [];
  return conceded.concessions
    .filter(({ frames }) => frames === undefined || fitsAny(conceded.path, frame, frames))
    .map(({ concession }) => concession);
}

/**
 * What a house says for one frame file: base houses first, then the house itself, each with its areas after its own choices; later words
 * win. Concessions add up.
 * @param frame absolute path with forward slashes; an empty text asks for what holds outside all areas
 */
export function settingsFor(house: House, frame: string, today: string): ExplainedSettings {
  const criteria = new Map<string, HouseCriterion>();
  const strictness = new Map<string, Strictness>();
  const strictnessSaid = new Map<string, string>();
  const concessions: Concession[] = [];
  let method: { readonly method: StrengthMethod; readonly methodSaid: string } | undefined;
  const take = (said: string, choices: HouseFile | Area): void => {
    const { criteria: limits = {}, strictness: levels = {} } = choices;
    if (choices.method !== undefined) method = { method: choices.method, methodSaid: said };
    for (const [name, setting] of Object.entries(limits)) {
      if (setting === undefined) continue;
      const { value, basis } = typeof setting === "object" ? setting : { value: setting, basis: undefined };
      criteria.set(name, { value, from: "house", said, ...(basis === undefined ? {} : { basis }) });
    }
    for (const [rule, level] of Object.entries(levels)) {
      if (level === undefined) continue;
      strictness.set(rule, level);
      strictnessSaid.set(rule, said);
    }
  };
  for (const source of house.sources) {
    const { file, path, name } = source;
    take(name, file);
    for (const area of file.areas ?? []) {
      if (fitsAny(path, frame, area.frames)) take(`${name}, area ${area.frames.join(", ")}`, area);
    }
    for (const concession of concessionsFor(source, frame)) concessions.push(concession);
  }
  return { criteria, strictness, strictnessSaid, concessions, today, ...method };
}

/** The settings where there is no house: every rule at its own level and limits. */
export function noSettings(today: string): HouseSettings {
  return { criteria: new Map(), strictness: new Map(), concessions: [], today };
}

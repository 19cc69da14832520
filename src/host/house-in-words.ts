import { realpath, stat } from "node:fs/promises";
import { dirname, resolve, sep } from "node:path";
import { checkNames } from "../house/check-names.ts";
import type { HouseInWords } from "../house/house-in-words.ts";
import { settingsFor } from "../house/settings.ts";
import type { Engine } from "./engine.ts";
import { failureWords } from "./failure-words.ts";
import { nameOf } from "./frame-files.ts";
import { findHouse, HouseUnusable, type LoadedHouse, loadHouse } from "./house-files.ts";
import { ruleCard } from "./rule-card.ts";

export interface HouseQuestion {
  readonly engine: Engine;
  readonly today: string;
  /** The house file; the nearest one when left out. */
  readonly house?: string;
  /** A frame file, for what the areas say of it. */
  readonly frame?: string;
}

/** What there is to say about a house, with its files as they were read. */
interface HouseRead extends HouseInWords {
  readonly house: LoadedHouse;
}

/** A frame that is asked about by name must be there. */
export class NoSuchFrame extends Error {
  override readonly name = "NoSuchFrame";
}

async function named(frame: string): Promise<void> {
  try {
    await stat(frame);
  } catch (error) {
    throw new NoSuchFrame(`${nameOf(resolve(frame))}: ${failureWords(error)}`);
  }
}

/**
 * What a house says, and where; undefined when there is none. Runs no code of the team.
 * @throws HouseUnusable, NoSuchFrame
 */
export async function houseInWords({ engine, today, house, frame }: HouseQuestion): Promise<HouseRead | undefined> {
  if (frame !== undefined) await named(frame);
  const path = house ?? (await findHouse(frame === undefined ? "." : dirname(frame)));
  if (path === undefined) return undefined;
  const loaded = await loadHouse(path, house !== undefined);
  const rules = engine.rules.map(ruleCard);
  // Names of a team's own rules and criteria are known only once its code has run, which is not done here.
  const problems = loaded.modules.length === 0 ? checkNames(loaded, rules) : [];
  if (problems.length > 0) throw new HouseUnusable(loaded.name, problems);
  const real = frame === undefined ? "" : await realpath(frame).catch(() => resolve(frame));
  return {
    house: loaded,
    settings: settingsFor(loaded, real.split(sep).join("/"), today),
    modules: loaded.modules.map(nameOf),
    stock: loaded.stock.map(({ file }) => file),
    rules,
    ...(frame === undefined ? {} : { frame: nameOf(resolve(frame)) }),
  };
}

import { realpath } from "node:fs/promises";
import { dirname, sep } from "node:path";
import { checkNames } from "../house/check-names.ts";
import type { HouseSettings } from "../house/house-in-force.ts";
import { noSettings, settingsFor } from "../house/settings.ts";
import type { StockBytes } from "../inspection/inspect-file.ts";
import type { Report, RuleCard } from "../inspection/report.ts";
import type { Engine } from "./engine.ts";
import { type FrameFile, nameOf } from "./frame-files.ts";
import { stockOfFrame } from "./frame-stock.ts";
import { findHouse, HouseUnusable, type LoadedHouse, loadHouse } from "./house-files.ts";
import { readBytes } from "./read-bytes.ts";
import { ruleCard } from "./rule-card.ts";
import { type RuleThread, startRuleThread } from "./rule-thread/rule-thread.ts";
import { failedReport, fileProblem, unreadReport } from "./unread-report.ts";

export interface Inspector {
  readonly cards: readonly RuleCard[];
  /** One report per file, in their order; what goes wrong with one stays with that one. */
  readonly reports: AsyncIterable<Report>;
  /** The house in force for a file, where there is one. */
  houseOf(file: FrameFile): Promise<LoadedHouse | undefined>;
  end(): Promise<void>;
}

export interface InspectorOptions {
  readonly engine: Engine;
  readonly worker: URL;
  readonly today: string;
  /** A house file named on the command line, whose rules are trusted. */
  readonly house?: string;
  /** Changed frames that may be inspected a file in search of cures; none where rules of a team run. */
  readonly cureTrials?: number | "usual";
  /** Whether reports keep every measured judgement. */
  readonly margins?: boolean;
}

/** A house file that was merely found lists rules, which are code. */
export class UntrustedRules extends Error {
  override readonly name = "UntrustedRules";
  constructor(house: string) {
    super(
      `${house} lists rules of a team, which are code and are not run for a file that was merely found.\nIf you trust it, name it: --house ${house}`,
    );
  }
}

type Houses = (folder: string) => Promise<LoadedHouse | undefined>;

/** The house of each folder: the one named, or the nearest; each is loaded once. */
function houses(named: LoadedHouse | undefined): Houses {
  const byFolder = new Map<string, string | undefined>();
  const byPath = new Map<string, LoadedHouse>();
  return async (folder) => {
    if (named !== undefined) return named;
    if (!byFolder.has(folder)) byFolder.set(folder, await findHouse(folder));
    const path = byFolder.get(folder);
    if (path === undefined) return undefined;
    const known = byPath.get(path);
    if (known !== undefined) return known;
    const house = await loadHouse(path, false);
    if (house.modules.length > 0) throw new UntrustedRules(house.name);
    byPath.set(path, house);
    return house;
  };
}

function checked(house: LoadedHouse, cards: readonly RuleCard[]): void {
  const problems = checkNames(house, cards);
  if (problems.length > 0) throw new HouseUnusable(house.name, problems);
}

type Inspect = (
  file: string,
  bytes: Uint8Array,
  stock: readonly StockBytes[],
  settings: HouseSettings,
) => Promise<Report>;

function inspectHere(engine: Engine, cureTrials: number | "usual", margins: boolean): Inspect {
  return async (file, bytes, stock, settings) => {
    try {
      return engine.inspect({ file, bytes, stock, house: { ...settings, rules: engine.rules }, cureTrials, margins });
    } catch (error) {
      return failedReport(file, error instanceof Error ? error.message : String(error));
    }
  };
}

function inspectThere(thread: RuleThread, margins: boolean): Inspect {
  return (file, bytes, stock, settings) => thread.inspect({ file, bytes, stock, settings, margins });
}

async function inspectOne(
  { path, name }: FrameFile,
  house: LoadedHouse | undefined,
  today: string,
  inspect: Inspect,
): Promise<Report> {
  const read = await readBytes(path);
  if ("refused" in read) return unreadReport(name, [fileProblem(name, read.refused, "a frame file")]);
  const own = await stockOfFrame(path, name, read.bytes);
  if (own.problems.length > 0) return unreadReport(name, own.problems);
  const real = (await realpath(path).catch(() => path)).split(sep).join("/");
  const settings = house === undefined ? noSettings(today) : settingsFor(house, real, today);
  return inspect(name, read.bytes, [...(house?.stock ?? []), ...own.stock], settings);
}

/**
 * Gets everything ready to inspect files: houses are found, read and checked before the first report.
 * @throws HouseUnusable, UntrustedRules, RulesUnusable
 */
export async function prepare(files: readonly FrameFile[], options: InspectorOptions): Promise<Inspector> {
  const { engine, today } = options;
  const named = options.house === undefined ? undefined : await loadHouse(options.house, true);
  const modules = named?.modules ?? [];
  const thread =
    modules.length === 0
      ? undefined
      : await startRuleThread(
          options.worker,
          modules.map((path) => ({ path, name: nameOf(path) })),
        );
  try {
    const cards = thread?.cards ?? engine.rules.map(ruleCard);
    const houseOf = houses(named);
    const used = new Set<LoadedHouse>();
    for (const { path } of files) {
      const house = await houseOf(dirname(path));
      if (house !== undefined) used.add(house);
    }
    for (const house of used) checked(house, cards);
    const margins = options.margins === true;
    const inspect =
      thread === undefined ? inspectHere(engine, options.cureTrials ?? 0, margins) : inspectThere(thread, margins);
    const reports = async function* (): AsyncGenerator<Report> {
      for (const file of files) yield await inspectOne(file, await houseOf(dirname(file.path)), today, inspect);
    };
    return {
      cards,
      reports: reports(),
      houseOf: (file) => houseOf(dirname(file.path)),
      end: async () => thread?.end(),
    };
  } catch (error) {
    await thread?.end();
    throw error;
  }
}

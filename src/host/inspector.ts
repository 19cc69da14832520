import { realpath } from "node:fs/promises";
import { dirname, sep } from "node:path";
import { checkNames } from "../house/check-names.ts";
import type { HouseSettings } from "../house/house-in-force.ts";
import { noSettings, settingsFor } from "../house/settings.ts";
import type { InspectedFrame, StockBytes } from "../inspection/inspect-file.ts";
import { readForInspection } from "../inspection/read-for-inspection.ts";
import type { Report, RuleCard } from "../inspection/report.ts";
import type { Frame } from "../model/frame.ts";
import type { Engine } from "./engine.ts";
import { type FrameFile, nameOf } from "./frame-files.ts";
import { stockOfFrame } from "./frame-stock.ts";
import { findHouse, HouseUnusable, type LoadedHouse, loadHouse } from "./house-files.ts";
import { readBytes } from "./read-bytes.ts";
import { ruleCard } from "./rule-card.ts";
import { type RuleThread, startRuleThread } from "./rule-thread/rule-thread.ts";
import { failedReport, fileProblem, unreadReport } from "./unread-report.ts";

/** One file that was inspected. */
export interface InspectedFile {
  readonly report: Report;
  /** What was inspected; absent where the file could not be opened. */
  readonly bytes?: Uint8Array;
  /** The frame as it was judged, to be drawn; undefined where nothing was judged. */
  frame(): Frame | undefined;
}

export interface Inspector {
  readonly cards: readonly RuleCard[];
  /** One report per file, in their order; what goes wrong with one stays with that one. */
  readonly reports: AsyncIterable<Report>;
  /** The same with what was inspected, for those who draw it; files are inspected either way once. */
  readonly inspected: AsyncIterable<InspectedFile>;
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
) => Promise<InspectedFrame>;

function inspectHere(engine: Engine, cureTrials: number | "usual", margins: boolean): Inspect {
  return async (file, bytes, stock, settings) => {
    try {
      return engine.inspect({ file, bytes, stock, house: { ...settings, rules: engine.rules }, cureTrials, margins });
    } catch (error) {
      return { report: failedReport(file, error instanceof Error ? error.message : String(error)) };
    }
  };
}

function inspectThere(thread: RuleThread, margins: boolean): Inspect {
  return async (file, bytes, stock, settings) => ({
    report: await thread.inspect({ file, bytes, stock, settings, margins }),
  });
}

const notOpened = (report: Report): InspectedFile => ({ report, frame: () => undefined });

async function inspectOne(
  { path, name }: FrameFile,
  house: LoadedHouse | undefined,
  today: string,
  inspect: Inspect,
): Promise<InspectedFile> {
  const read = await readBytes(path);
  if ("refused" in read) return notOpened(unreadReport(name, [fileProblem(name, read.refused, "a frame file")]));
  const { bytes } = read;
  const own = await stockOfFrame(path, name, bytes);
  if (own.problems.length > 0) return { ...notOpened(unreadReport(name, own.problems)), bytes };
  const real = (await realpath(path).catch(() => path)).split(sep).join("/");
  const settings = house === undefined ? noSettings(today) : settingsFor(house, real, today);
  const stock = [...(house?.stock ?? []), ...own.stock];
  const { report, frame } = await inspect(name, bytes, stock, settings);
  // One that was judged in another thread is read again here.
  const again = (): Frame | undefined => readForInspection({ file: name, bytes, stock, house: settings }).frame;
  return { report, bytes, frame: () => (report.verdict === "unread" ? undefined : (frame ?? again())) };
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
    const inspected = async function* (): AsyncGenerator<InspectedFile> {
      for (const file of files) yield await inspectOne(file, await houseOf(dirname(file.path)), today, inspect);
    };
    const each = inspected();
    const reports = async function* (): AsyncGenerator<Report> {
      for await (const { report } of each) yield report;
    };
    return {
      cards,
      inspected: each,
      reports: reports(),
      houseOf: (file) => houseOf(dirname(file.path)),
      end: async () => thread?.end(),
    };
  } catch (error) {
    await thread?.end();
    throw error;
  }
}

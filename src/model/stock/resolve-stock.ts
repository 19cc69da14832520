import type { StockFile } from "../generated/stock-file.generated.ts";
import { compareProblems, type Place, type Problem } from "../problem.ts";
import { quote } from "../text/quote.ts";
import { resolveConnector } from "./resolve-connector.ts";
import { resolveNut, resolveScrews, resolveTools } from "./resolve-fasteners.ts";
import { resolveCap, resolveGasket, resolveMaterial, resolveSheets, resolveStand } from "./resolve-others.ts";
import { resolveProfile } from "./resolve-profile.ts";
import { resolveSeries } from "./resolve-series.ts";
import type { Stock } from "./stock.ts";
import { type StockReader, stockReader } from "./stock-reader.ts";

/** A stock file that its schema accepts, and where its values stand. */
export interface StockSource {
  readonly value: StockFile;
  readonly place: (pointer: string) => Place;
}

type Draft = { -readonly [K in keyof Stock]: Stock[K] extends ReadonlyMap<string, infer T> ? Map<string, T> : never };

export const EMPTY_STOCK: Stock = {
  materials: new Map(),
  series: new Map(),
  profiles: new Map(),
  connectors: new Map(),
  screws: new Map(),
  nuts: new Map(),
  caps: new Map(),
  stands: new Map(),
  sheets: new Map(),
  gaskets: new Map(),
  tools: new Map(),
};

function draftOf(base: Stock): Draft {
  return {
    materials: new Map(base.materials),
    series: new Map(base.series),
    profiles: new Map(base.profiles),
    connectors: new Map(base.connectors),
    screws: new Map(base.screws),
    nuts: new Map(base.nuts),
    caps: new Map(base.caps),
    stands: new Map(base.stands),
    sheets: new Map(base.sheets),
    gaskets: new Map(base.gaskets),
    tools: new Map(base.tools),
  };
}

/** Adds one list of a file. Within a file a name may stand once; over an earlier file's part it replaces that part. */
function addList<Raw, Part extends { readonly name: string }>(
  list: readonly Raw[] | undefined,
  at: string,
  into: Map<string, Part>,
  read: StockReader,
  resolve: (raw: Raw, at: string, read: StockReader) => readonly Part[] | Part | undefined,
): void {
  const seen = new Set<string>();
  list?.forEach((raw, i) => {
    const here = `${at}/${i}`;
    const made = read.sound(() => resolve(raw, here, read)) ?? [];
    for (const part of Array.isArray(made) ? (made as readonly Part[]) : [made as Part]) {
      if (seen.has(part.name)) {
        read.refuse(
          "duplicate-name",
          `${here}/name`,
          `a second part "${quote(part.name)}"`,
          "a name of its own for every part",
        );
      }
      seen.add(part.name);
      into.set(part.name, part);
    }
  });
}

function addFile(file: StockFile, draft: Draft, read: StockReader): void {
  addList(file.materials, "/materials", draft.materials, read, resolveMaterial);
  addList(file.series, "/series", draft.series, read, (raw, at) => resolveSeries(raw, at, draft.materials, read));
  addList(file.profiles, "/profiles", draft.profiles, read, (raw, at) => resolveProfile(raw, at, draft, read));
  addList(file.screws, "/screws", draft.screws, read, resolveScrews);
  addList(file.nuts, "/nuts", draft.nuts, read, resolveNut);
  addList(file.connectors, "/connectors", draft.connectors, read, resolveConnector);
  addList(file.caps, "/caps", draft.caps, read, resolveCap);
  addList(file.stands, "/stands", draft.stands, read, resolveStand);
  addList(file.sheets, "/sheets", draft.sheets, read, resolveSheets);
  addList(file.gaskets, "/gaskets", draft.gaskets, read, resolveGasket);
  addList(file.tools, "/tools", draft.tools, read, resolveTools);
}

/** References that may point forward, also into later files. */
function checkReferences(file: StockFile, draft: Draft, read: StockReader): void {
  file.connectors?.forEach((connector, i) => {
    read.expectPart(connector.screw, draft.screws, "screw", `/connectors/${i}/screw`);
  });
  file.caps?.forEach((cap, i) => {
    cap.profiles.forEach((name, j) => {
      read.expectPart(name, draft.profiles, "profile", `/caps/${i}/profiles/${j}`);
    });
  });
}

/**
 * The stock that files add up to, in SI: later parts replace earlier ones and those of `base` by name. Materials and series must come
 * before what uses them; screws and profiles may be named before they appear. Never throws; a part with a problem is left out.
 */
export function resolveStock(
  sources: readonly StockSource[],
  base: Stock,
): { readonly stock: Stock; readonly problems: readonly Problem[] } {
  const draft = draftOf(base);
  const problems: Problem[] = [];
  const readers = sources.map(({ value, place }) => ({ value, read: stockReader(value.units, place, problems) }));
  for (const { value, read } of readers) addFile(value, draft, read);
  for (const { value, read } of readers) checkReferences(value, draft, read);
  return { stock: draft, problems: problems.sort(compareProblems) };
}

import type { Profile, Series, StockFile } from "../generated/stock-file.generated.ts";
import type { Problem } from "../problem.ts";
import type { Complaint } from "../resolve/complaints.ts";
import { quote } from "../text/quote.ts";
import { frozen, readOnly } from "./frozen.ts";
import { resolveConnector } from "./resolve-connector.ts";
import { resolveNut, resolveScrews, resolveTools } from "./resolve-fasteners.ts";
import { resolveCap, resolveGasket, resolveMaterial, resolveSheets, resolveStand } from "./resolve-others.ts";
import { resolveProfile } from "./resolve-profile.ts";
import { resolveSeries } from "./resolve-series.ts";
import type { Stock } from "./stock.ts";
import { type StockPlaces, stockProblems } from "./stock-problems.ts";
import { type NamedKind, type StockReader, stockReader } from "./stock-reader.ts";

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

/** What adding a file works on. */
interface Adding {
  readonly draft: Draft;
  readonly read: StockReader;
  readonly refused: Set<NamedKind>;
}

/** Adds one list of a file. Within a file a name may stand once; over an earlier file's part it replaces that part. */
function addList<Raw, Part extends { readonly name: string }>(
  { read, refused }: Adding,
  list: readonly Raw[] | undefined,
  at: string,
  into: Map<string, Part>,
  resolve: (raw: Raw, at: string, read: StockReader) => readonly (Part | undefined)[],
  kind?: NamedKind,
): void {
  const seen = new Set<string>();
  list?.forEach((raw, i) => {
    const here = `${at}/${i}`;
    for (const part of read.sound(() => resolve(raw, here, read)) ?? [undefined]) {
      if (part === undefined) {
        if (kind !== undefined) refused.add(kind);
        continue;
      }
      if (seen.has(part.name)) {
        const found = `a second part "${quote(part.name)}"`;
        read.refuse("duplicate-name", `${here}/name`, found, "a name of its own for every part of a list");
      }
      seen.add(part.name);
      into.set(part.name, frozen(part));
    }
  });
}

/** A resolver of one part as a resolver of a list. */
function one<Raw, Part>(resolve: (raw: Raw, at: string, read: StockReader) => Part) {
  return (raw: Raw, at: string, read: StockReader): readonly Part[] => [resolve(raw, at, read)];
}

function addFile(file: StockFile, adding: Adding): void {
  const { draft, read } = adding;
  const series = one((raw: Series, at: string) => resolveSeries(raw, at, draft.materials, read));
  const profile = one((raw: Profile, at: string) => resolveProfile(raw, at, draft, read));
  addList(adding, file.materials, "/materials", draft.materials, one(resolveMaterial), "material");
  addList(adding, file.series, "/series", draft.series, series, "series");
  addList(adding, file.profiles, "/profiles", draft.profiles, profile, "profile");
  addList(adding, file.screws, "/screws", draft.screws, resolveScrews, "screw");
  addList(adding, file.nuts, "/nuts", draft.nuts, one(resolveNut));
  addList(adding, file.connectors, "/connectors", draft.connectors, one(resolveConnector));
  addList(adding, file.caps, "/caps", draft.caps, one(resolveCap));
  addList(adding, file.stands, "/stands", draft.stands, one(resolveStand));
  addList(adding, file.sheets, "/sheets", draft.sheets, resolveSheets);
  addList(adding, file.gaskets, "/gaskets", draft.gaskets, one(resolveGasket));
  addList(adding, file.tools, "/tools", draft.tools, resolveTools);
}

/** References that may point forward, also into later files. */
function checkReferences(file: StockFile, { draft, read }: Adding): void {
  file.connectors?.forEach((connector, i) => {
    read.expectPart(connector.screw, draft.screws, "screw", `/connectors/${i}/screw`);
  });
  file.caps?.forEach((cap, i) => {
    cap.profiles.forEach((name, j) => {
      read.expectPart(name, draft.profiles, "profile", `/caps/${i}/profiles/${j}`);
    });
  });
}

/** The stock that files add up to, and what is wrong with each file, by pointer. See `resolveStock`. */
export function addStock(
  files: readonly StockFile[],
  base: Stock,
): { readonly stock: Stock; readonly complaints: readonly (readonly Complaint[])[] } {
  const draft = draftOf(base);
  const refused = new Set<NamedKind>();
  const work = files.map((file) => ({ file, adding: { draft, refused, read: stockReader(file.units, refused) } }));
  for (const { file, adding } of work) addFile(file, adding);
  for (const { file, adding } of work) checkReferences(file, adding);
  for (const map of Object.values(draft)) readOnly<unknown>(map);
  return { stock: Object.freeze(draft), complaints: work.map(({ adding }) => adding.read.complaints) };
}

/** A stock file that its schema accepts, and where its values stand. */
export interface StockSource extends StockPlaces {
  readonly value: StockFile;
}

/**
 * The stock that files add up to, in SI: later parts replace earlier ones and those of `base` by name. Materials and series must come
 * before what uses them; screws and profiles may be named before they appear. Never throws; a part with an error is left out, and the
 * problems say why, at most 200 a file.
 */
export function resolveStock(
  sources: readonly StockSource[],
  base: Stock,
): { readonly stock: Stock; readonly problems: readonly Problem[] } {
  const { stock, complaints } = addStock(
    sources.map(({ value }) => value),
    base,
  );
  const problems = sources.flatMap((source, i) => stockProblems(complaints[i] ?? [], source));
  return { stock, problems };
}

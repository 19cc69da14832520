import type { Bar, Fastening, Pivot, Tie } from "../frame.ts";
import type {
  Fastening as FasteningFile,
  Pivot as PivotFile,
  Tie as TieFile,
} from "../generated/frame-file.generated.ts";
import { ref } from "../ref.ts";
import type { Connector, Profile } from "../stock/stock.ts";
import { quote } from "../text/quote.ts";
import { si } from "../units/quantity.ts";
import { fixed, putOn } from "./connectors.ts";
import { direction, face, notNegative, point, quantities, quantity } from "./values.ts";
import { article, countOne, name, references, refuse, stockPart, type Work } from "./work.ts";

/** A part of stock of one of the kinds. */
export function partOfKind(
  work: Work,
  written: string,
  kinds: readonly Connector["kind"][],
  pointer: string,
): Connector | undefined {
  const part = stockPart(work, work.stock.connectors, "connector", written, pointer);
  if (part === undefined || kinds.includes(part.kind)) return part;
  const found = `"${quote(written)}", ${article(part.kind)}`;
  refuse(work, "part-does-not-fit", pointer, { found, expected: kinds.map(article).join(" or ") });
  return undefined;
}

/** The id written, else one after the first bar and a number: "leg-1.tie-1". */
function idOf(work: Work, written: string | undefined, bar: string, word: string): string {
  return written ?? `${bar}.${word}-${countOne(work, `${word} of ${bar}`) + 1}`;
}

function nameJoint(work: Work, id: string, written: string | undefined, pointer: string): void {
  name(work, id, { kind: "joint", pointer }, written === undefined ? pointer : `${pointer}/id`);
}

function profilesOf(bars: ReadonlyMap<string, Bar>, ids: readonly string[]): readonly Profile[] {
  return ids.map((id) => bars.get(id)?.profile).filter((profile) => profile !== undefined);
}

function resolveFastening(
  work: Work,
  raw: FasteningFile,
  bars: ReadonlyMap<string, Bar>,
  pointer: string,
): Fastening | undefined {
  const holds = references(work, raw.holds, ["bar"], `${pointer}/holds`);
  const id = idOf(work, raw.id, raw.holds[0], "fastening");
  nameJoint(work, id, raw.id, pointer);
  const part = partOfKind(work, raw.part, ["bracket", "plate"], `${pointer}/part`);
  if (part?.kind === "bracket" && raw.against === undefined) {
    const found = `bracket "${quote(raw.part)}" without against`;
    const mend = 'add "against", the face of the second bar held';
    refuse(work, "face-missing", pointer, { found, expected: "the faces of both legs", mend });
  }
  if (part?.kind === "bracket" && holds.length === 1) {
    refuse(work, "bracket-holds-one", `${pointer}/holds`, {
      found: `only "${quote(raw.holds[0])}"`,
      expected: "the two bars of a bracket",
    });
  }
  const at = point(work, raw.at, `${pointer}/at`);
  const turn = raw.turn === undefined ? 0 : quantity(work, raw.turn, "angle", `${pointer}/turn`);
  const choice = part === undefined ? undefined : fixed(work, raw, part, pointer);
  if (choice === undefined || at === undefined || turn === undefined) return undefined;
  const on = face(raw.on);
  const spec = { ...choice, on, shift: si(0, "length") };
  return Object.freeze({
    ref: Object.freeze(ref("joint", id)),
    connector: putOn(`${id}/1`, spec, profilesOf(bars, holds)),
    on,
    ...(raw.against === undefined ? {} : { against: face(raw.against) }),
    at,
    turn,
    holds,
  });
}

/** Two bars of a part that joins two; undefined when they are not two. */
function twoBars(work: Work, raw: readonly string[], pointer: string): readonly [string, string] | undefined {
  const [a, b] = references(work, raw, ["bar"], pointer);
  return a === undefined || b === undefined ? undefined : Object.freeze([a, b] as const);
}

function resolveTie(work: Work, raw: TieFile, pointer: string): Tie | undefined {
  const bars = twoBars(work, raw.bars, `${pointer}/bars`);
  const id = idOf(work, raw.id, raw.bars[0], "tie");
  nameJoint(work, id, raw.id, pointer);
  const part = partOfKind(work, raw.part, ["side-tie"], `${pointer}/part`);
  const at = quantities(work, raw.at, "length", `${pointer}/at`, notNegative, "coordinate");
  if (bars === undefined || part === undefined || at === undefined) return undefined;
  return Object.freeze({ ref: Object.freeze(ref("joint", id)), bars, part, at });
}

function resolvePivot(work: Work, raw: PivotFile, pointer: string): Pivot | undefined {
  const bars = twoBars(work, raw.bars, `${pointer}/bars`);
  const id = idOf(work, raw.id, raw.bars[0], "pivot");
  nameJoint(work, id, raw.id, pointer);
  const part = partOfKind(work, raw.part, ["pivot", "hinge", "side-tie"], `${pointer}/part`);
  const at = point(work, raw.at, `${pointer}/at`);
  const axis = direction(work, raw.axis, `${pointer}/axis`);
  if (bars === undefined || part === undefined || at === undefined || axis === undefined) return undefined;
  return Object.freeze({ ref: Object.freeze(ref("joint", id)), bars, part, at, axis, locked: raw.locked ?? false });
}

/** What resolves of a list, in the order of the file. */
function each<Raw, Part>(
  list: readonly Raw[] | undefined,
  at: string,
  resolve: (raw: Raw, pointer: string) => Part | undefined,
): Part[] {
  const parts: Part[] = [];
  for (const [index, raw] of (list ?? []).entries()) {
    const part = resolve(raw, `${at}/${index}`);
    if (part !== undefined) parts.push(part);
  }
  return parts;
}

export function resolveFastenings(work: Work, bars: readonly Bar[]): Fastening[] {
  const byId = new Map(bars.map((bar) => [bar.ref.id, bar]));
  return each(work.file.fastenings, "/fastenings", (raw, pointer) => resolveFastening(work, raw, byId, pointer));
}

export function resolveTies(work: Work): Tie[] {
  return each(work.file.ties, "/ties", (raw, pointer) => resolveTie(work, raw, pointer));
}

export function resolvePivots(work: Work): Pivot[] {
  return each(work.file.pivots, "/pivots", (raw, pointer) => resolvePivot(work, raw, pointer));
}

import type { FrameFile } from "../generated/frame-file.generated.ts";
import type { Kind } from "../ref.ts";
import type { Stock } from "../stock/stock.ts";
import { kinOf } from "../text/kin.ts";
import { nearestFew } from "../text/nearest.ts";
import { quote, showHidden } from "../text/quote.ts";
import type { UnitSystem } from "../units/unit-system.ts";
import type { Complaint } from "./complaints.ts";
import type { Named, Names } from "./names.ts";

/** What resolving one file reads and fills. */
export interface Work {
  readonly file: FrameFile;
  readonly units: UnitSystem;
  readonly stock: Stock;
  readonly names: Names;
  readonly complaints: Complaint[];
  /** How often each thing was said or tried that is not worth saying thousands of times. */
  readonly tally: Map<string, number>;
  /** What was left open and mattered, in words. */
  readonly assumed: Set<string>;
}

export function startWork(file: FrameFile, stock: Stock): Work {
  return {
    file,
    units: file.units,
    stock,
    names: new Map(),
    complaints: [],
    tally: new Map(),
    assumed: new Set(),
  };
}

type Words = Pick<Complaint, "found" | "expected" | "mend" | "other">;

export function refuse(work: Work, code: string, pointer: string, words: Words, atKey = false): void {
  work.complaints.push({ code, weight: "error", pointer, atKey, ...words });
}

export function warn(work: Work, code: string, pointer: string, words: Words, atKey = false): void {
  work.complaints.push({ code, weight: "warning", pointer, atKey, ...words });
}

/** Counts one more of a thing; the count before. */
export function countOne(work: Work, thing: string): number {
  const before = work.tally.get(thing) ?? 0;
  work.tally.set(thing, before + 1);
  return before;
}

/** Looking for a near word costs a comparison with every candidate: more wrong names than this get no suggestion. */
const SUGGESTIONS = 50;

/** Words as near as the nearest that are suggested beside it. */
const NEAR_WORDS = 3;

/** "did you mean …?" where a candidate is near. */
export function suggestion(work: Work, word: string, candidates: () => Iterable<string>): { readonly mend?: string } {
  if (countOne(work, "suggestions") >= SUGGESTIONS) return {};
  const near = nearestFew(word, candidates(), NEAR_WORDS).map((one) => `"${quote(one)}"`);
  return near.length === 0 ? {} : { mend: `did you mean ${near.join(" or ")}?` };
}

/** Parts of stock that are named where none is near. */
const KIN_WORDS = 5;

/** "did you mean …?" where a part is near, else parts that have something of the word in them, else where they are listed. */
function stockSuggestion(work: Work, word: string, names: Iterable<string>): { readonly mend?: string } {
  const all = [...names];
  const { mend } = suggestion(work, word, () => all);
  if (mend !== undefined) return { mend };
  const kin = kinOf(word, all, KIN_WORDS + 1);
  if (kin.length === 0) return all.length === 0 ? {} : { mend: "docs/stock.md lists what there is" };
  const named = kin.slice(0, KIN_WORDS).map((one) => `"${quote(one)}"`);
  return {
    mend: `there ${named.length === 1 ? "is" : "are"} ${named.join(", ")}${kin.length > KIN_WORDS ? ", …" : ""}`,
  };
}

/** A part of stock by name; complains when there is none. */
export function stockPart<T>(
  work: Work,
  parts: ReadonlyMap<string, T>,
  word: string,
  name: string,
  pointer: string,
): T | undefined {
  const part = parts.get(name);
  if (part !== undefined) return part;
  const mend = stockSuggestion(work, name, parts.keys());
  refuse(work, "unknown-stock", pointer, {
    found: `${word} "${quote(name)}"`,
    expected: `a ${word} of the stock`,
    ...mend,
  });
  return undefined;
}

/** Gives a part its id; complains when another part has it, and when it could be read as another. */
export function name(work: Work, id: string, named: Named, idPointer: string): void {
  if (showHidden(id) !== id) {
    const found = `id "${quote(id)}" with a sign that does not show`;
    refuse(work, "hidden-sign", idPointer, { found, expected: "an id of signs that show" });
  }
  const other = work.names.get(id);
  if (other === undefined) {
    work.names.set(id, named);
    return;
  }
  refuse(work, "duplicate-id", idPointer, {
    found: `id "${quote(id)}"`,
    expected: `an id of its own: ${article(other.kind)} in line {line} has this one`,
    other: other.copyPointer ?? other.pointer,
  });
}

/** A value of the file as a message may repeat it. */
export function asWritten(value: unknown): string {
  return quote(JSON.stringify(value));
}

export function article(kind: string): string {
  return /^[aeiou]/.test(kind) ? `an ${kind}` : `a ${kind}`;
}

function* idsOf(names: Names, kinds: readonly Kind[]): Iterable<string> {
  for (const [id, named] of names) if (kinds.includes(named.kind)) yield id;
}

/** Whether an id names a part of one of the kinds; complains when it does not. */
export function refersTo(work: Work, id: string, kinds: readonly Kind[], pointer: string): boolean {
  const named = work.names.get(id);
  if (named !== undefined && kinds.includes(named.kind)) return true;
  const wanted = kinds.length < 2 ? `${kinds[0]}` : `${kinds.slice(0, -1).join(", ")} or ${kinds.at(-1)}`;
  const found = named === undefined ? `"${quote(id)}"` : `"${quote(id)}", ${article(named.kind)}`;
  const mend = named === undefined ? suggestion(work, id, () => idsOf(work.names, kinds)) : {};
  refuse(work, "unknown-part", pointer, { found, expected: `the id of ${article(wanted)}`, ...mend });
  return false;
}

/** The ids that name parts of the kinds; complains about each of the others, and about one named twice. */
export function references(
  work: Work,
  ids: readonly string[],
  kinds: readonly Kind[],
  pointer: string,
): readonly string[] {
  const seen = new Set<string>();
  for (const [index, id] of ids.entries()) {
    const at = `${pointer}/${index}`;
    if (!refersTo(work, id, kinds, at)) continue;
    if (seen.has(id))
      refuse(work, "named-twice", at, { found: `"${quote(id)}" a second time`, expected: "each part once" });
    seen.add(id);
  }
  return Object.freeze([...seen]);
}

import type { FrameFile } from "../model/generated/frame-file.generated.ts";
import { openDocument } from "../model/text/document.ts";
import { isFrameFile } from "../model/validate.ts";
import type { BarChanges } from "./compare.ts";

/** An entry of a list of the file, bars apart; "frame" is the file's own words about the whole. */
export interface WrittenPart {
  readonly list: string;
  /** Its id, or whom it concerns where its author gave it none. */
  readonly part: string;
}

/** A key and its values as written; absent where it was not given. A dot leads into an object: "site.vibration". */
export interface WrittenKey {
  readonly key: string;
  readonly from?: unknown;
  readonly to?: unknown;
}

export interface WrittenChanged extends WrittenPart {
  readonly keys: readonly WrittenKey[];
}

/** What two files say otherwise beside their bars. */
export interface WrittenChanges {
  readonly added: readonly WrittenPart[];
  readonly removed: readonly WrittenPart[];
  readonly changed: readonly WrittenChanged[];
}

type Entry = Readonly<Record<string, unknown>>;
type Names = ReadonlyMap<string, string>;

/** Words for a reader, and what the head of a comparison tells. */
const WORDS = new Set(["$schema", "format", "title", "revision", "notes"]);
/** What the bars of a frame do not tell of themselves when they are compared. */
const OF_BARS = ["id", "criteria"];
/** Keys that hold ids of bars: a new name for a bar changes nothing else. */
const NAMING = new Set(["bar", "bars", "on", "onto", "holds", "against", "parts", "of"]);
/** Whom an entry without an id concerns, by the first of these it has. */
const CONCERNS = ["bars", "on", "holds", "of", "parts"];

const isEntry = (value: unknown): value is Entry =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** With its keys in one order, as their order says nothing. */
function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (!isEntry(value)) return value;
  const keys = Object.keys(value).sort();
  return Object.fromEntries(keys.map((key) => [key, ordered(value[key])]));
}

const canonical = (value: unknown): string => JSON.stringify(ordered(value)) ?? "";

/** With the bars called as the later file calls them. */
function underNames(value: unknown, names: Names, key = ""): unknown {
  if (typeof value === "string") return NAMING.has(key) ? (names.get(value) ?? value) : value;
  if (Array.isArray(value)) return value.map((one) => underNames(one, names, key));
  if (!isEntry(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([inner, one]) => [inner, underNames(one, names, inner)]));
}

/** Its keys, those of an object in it by a dot. */
const flat = (entry: Entry): Entry =>
  Object.fromEntries(
    Object.entries(entry).flatMap(([key, value]) =>
      isEntry(value) ? Object.entries(value).map(([inner, one]) => [`${key}.${inner}`, one]) : [[key, value]],
    ),
  );

function keysChanged(before: Entry, after: Entry): readonly WrittenKey[] {
  const [old, now] = [flat(before), flat(after)];
  return [...new Set([...Object.keys(old), ...Object.keys(now)])]
    .filter((key) => canonical(old[key]) !== canonical(now[key]))
    .map((key) => ({
      key,
      ...(key in old ? { from: old[key] } : {}),
      ...(key in now ? { to: now[key] } : {}),
    }));
}

const concerned = (entry: Entry): unknown => entry[CONCERNS.find((key) => key in entry) ?? ""];

function partOf(entry: Entry): string {
  if (typeof entry.id === "string") return entry.id;
  const whom = [concerned(entry)].flat().join(" + ");
  return typeof entry.case === "string" ? `${entry.case} on ${whom}` : whom;
}

const alikeKeys = (a: Entry, b: Entry): number =>
  Object.keys(a).filter((key) => canonical(a[key]) === canonical(b[key])).length;

/** The same entry of both lists: by id; else word for word; else the one about the same parts that has most in common. */
function pairs(before: readonly Entry[], after: readonly Entry[]): ReadonlyMap<Entry, Entry> {
  const found = new Map<Entry, Entry>();
  const left = new Set(before);
  const pairBy = (nameOf: (entry: Entry) => string | undefined): void => {
    const known = new Map<string, Entry[]>();
    for (const entry of left) {
      const name = nameOf(entry);
      if (name !== undefined) known.set(name, [...(known.get(name) ?? []), entry]);
    }
    for (const entry of after) {
      const name = found.has(entry) ? undefined : nameOf(entry);
      const options = name === undefined ? [] : (known.get(name) ?? []);
      const most = Math.max(...options.map((one) => alikeKeys(one, entry)));
      const partner = options.find((one) => alikeKeys(one, entry) === most);
      if (!partner) continue;
      found.set(entry, partner);
      left.delete(partner);
      options.splice(options.indexOf(partner), 1);
    }
  };
  pairBy(({ id }) => (typeof id === "string" ? id : undefined));
  pairBy(canonical);
  pairBy((entry) => (entry.id === undefined ? canonical(concerned(entry)) : undefined));
  return found;
}

const entriesOf = (file: Entry, list: string): readonly Entry[] => {
  const entries = file[list];
  if (!Array.isArray(entries)) return [];
  const own = entries.filter(isEntry);
  return list === "bars"
    ? own.map((bar) => Object.fromEntries(Object.entries(bar).filter(([key]) => OF_BARS.includes(key))))
    : own;
};

/** Keys of the file that are no list of parts, as one entry. */
const wholeOf = (file: Entry): Entry =>
  Object.fromEntries(
    Object.entries(file).filter(
      ([key, value]) => !WORDS.has(key) && !(Array.isArray(value) && value.every((one) => isEntry(one))),
    ),
  );

/** What two files say otherwise beside the bars themselves; values as written, whatever their units. */
export function compareFiles(before: FrameFile, after: FrameFile, renamed: BarChanges["renamed"]): WrittenChanges {
  const names = new Map(renamed.map(({ from, to }) => [from, to]));
  const [old, now] = [{ ...before } as Entry, { ...after } as Entry];
  const added: WrittenPart[] = [];
  const removed: WrittenPart[] = [];
  const changed: WrittenChanged[] = [];
  const whole = keysChanged(wholeOf(old), wholeOf(now));
  if (whole.length > 0) changed.push({ list: "frame", part: "frame", keys: whole });
  for (const list of new Set([...Object.keys(old), ...Object.keys(now)])) {
    if (WORDS.has(list)) continue;
    const was = entriesOf(old, list).map((entry) => {
      const known = underNames(entry, names) as Entry;
      return list === "bars" && typeof entry.id === "string"
        ? { ...known, id: names.get(entry.id) ?? entry.id }
        : known;
    });
    const is = entriesOf(now, list);
    const paired = pairs(was, is);
    const kept = new Set(paired.values());
    for (const entry of is) {
      const partner = paired.get(entry);
      const keys = partner ? keysChanged(partner, entry) : [];
      if (keys.length > 0) changed.push({ list, part: partOf(entry), keys });
      // Bars that came or went are told as bars.
      if (!partner && list !== "bars") added.push({ list, part: partOf(entry) });
    }
    if (list === "bars") continue;
    for (const entry of was) if (!kept.has(entry)) removed.push({ list, part: partOf(entry) });
  }
  return { added, removed, changed };
}

/** The same of the bytes of two files; nothing where either is no frame file. */
export function compareWritten(
  before: Uint8Array,
  after: Uint8Array,
  renamed: BarChanges["renamed"],
): WrittenChanges | undefined {
  const [old, now] = [before, after].map((bytes) => openDocument("", bytes).document?.value);
  return isFrameFile(old) && isFrameFile(now) ? compareFiles(old, now, renamed) : undefined;
}

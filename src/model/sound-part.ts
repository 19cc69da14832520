import type { FrameFile } from "./generated/frame-file.generated.ts";
import type { Complaint } from "./resolve/complaints.ts";
import { keysOf } from "./text/pointer.ts";
import { entryIsSound, errorsAroundLists, isFrameFile, LIST_NAMES } from "./validate.ts";

/** What of a file with faults has the form of a frame file, and where its entries stood. */
export interface SoundPart {
  readonly file: FrameFile;
  /** Whether a name in the sound part may mean something that was left out. */
  mayMeanLeftOut(name: string): boolean;
  /** Pointer in the whole file of a pointer in the sound part. */
  pointerOf(pointer: string): string;
}

/** What stands in where a key that every frame has is missing or wrong, so that the rest can be read. */
const STAND_INS: Readonly<Record<string, unknown>> = { format: 1, title: "?", units: "mm-N-kg" };
/** Lists whose entries have no id that other parts name. */
const UNNAMED: ReadonlySet<string> = new Set(["loads", "joints", "fastenings", "ties", "pivots"]);
/** Lists whose entries give names to parts that do not stand in them. */
const NAMING: ReadonlySet<string> = new Set(["copies", "stands"]);
const LIST_ENTRY = /^\/([a-z]+)\/(\d+)(?=\/|$)/;

/**
 * Leaves out what keeps a value from being a frame file: faulty entries of lists and faulty keys. Undefined where too
 * little is left. So the meaning of the rest can be checked in the same run, and all that is wrong is told at once.
 */
export function soundPart(value: unknown): SoundPart | undefined {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return undefined;
  const copy: Record<string, unknown> = { ...value };
  const kept = new Map<string, number[]>();
  const names = new Set<string>();
  // Whether something was left out of which no name can be told.
  let vague = false;
  const leaveOut = (list: string, entry: unknown): void => {
    if (UNNAMED.has(list)) return;
    const id = typeof entry === "object" && entry !== null && "id" in entry ? entry.id : undefined;
    if (typeof id === "string" && !NAMING.has(list)) names.add(id);
    else vague = true;
  };
  for (const list of LIST_NAMES) {
    const entries = copy[list];
    if (!Array.isArray(entries)) continue;
    const numbers = [...entries.keys()].filter((i) => entryIsSound(list, entries[i]));
    kept.set(list, numbers);
    for (const entry of entries) if (!entryIsSound(list, entry)) leaveOut(list, entry);
    copy[list] = numbers.map((i) => entries[i] as unknown);
  }
  for (const { instancePath, params } of errorsAroundLists(copy)) {
    const [key] = instancePath === "" ? [params.additionalProperty ?? params.missingProperty] : keysOf(instancePath);
    if (typeof key !== "string") continue;
    if (Object.hasOwn(STAND_INS, key)) copy[key] = STAND_INS[key];
    else {
      delete copy[key];
      vague = true;
    }
  }
  if (!isFrameFile(copy)) return undefined;
  return {
    file: copy,
    // The name of a copy begins with that of what is copied, the name of an end with that of its bar.
    mayMeanLeftOut: (name) => vague || [...names].some((id) => name.startsWith(id)),
    pointerOf: (pointer) =>
      pointer.replace(LIST_ENTRY, (whole, list: string, index: string) => {
        const old = kept.get(list)?.[Number(index)];
        return old === undefined ? whole : `/${list}/${old}`;
      }),
  };
}

/** Complaints about a name that stands at their pointer, and may be the name of what was left out. */
const OF_NAMES: ReadonlySet<string> = new Set(["unknown-part", "unknown-kit", "unknown-case"]);
/** Complaints that may only come from what was left out, and say nothing then. */
const OF_REFERENCES: ReadonlySet<string> = new Set([
  "jointed-twice",
  "edges-all-free",
  "bracket-holds-one",
  "part-empty",
]);

function valueAt(file: FrameFile, pointer: string): unknown {
  let value: unknown = file;
  for (const key of keysOf(pointer)) {
    if (typeof value !== "object" || value === null) return undefined;
    value = (value as Readonly<Record<string, unknown>>)[key];
  }
  return value;
}

/** What is wrong with the sound part itself, told at the places of the whole file. */
export function ownComplaints(part: SoundPart, complaints: readonly Complaint[]): readonly Complaint[] {
  return complaints
    .filter(({ weight, code, pointer }) => {
      if (weight !== "error" || OF_REFERENCES.has(code)) return false;
      if (!OF_NAMES.has(code)) return true;
      const named = valueAt(part.file, pointer);
      return typeof named === "string" && !part.mayMeanLeftOut(named);
    })
    .map((complaint) => ({
      ...complaint,
      pointer: part.pointerOf(complaint.pointer),
      ...(complaint.other === undefined ? {} : { other: part.pointerOf(complaint.other) }),
    }));
}

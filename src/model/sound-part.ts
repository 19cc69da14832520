import type { FrameFile } from "./generated/frame-file.generated.ts";
import type { Complaint } from "./resolve/complaints.ts";
import { keysOf } from "./text/pointer.ts";
import { entryIsSound, errorsAroundLists, isFrameFile, LIST_NAMES } from "./validate.ts";

/** What of a file with faults has the form of a frame file, and where its entries stood. */
export interface SoundPart {
  readonly file: FrameFile;
  /** Pointer in the whole file of a pointer in the sound part. */
  pointerOf(pointer: string): string;
}

/** What stands in where a key that every frame has is missing or wrong, so that the rest can be read. */
const STAND_INS: Readonly<Record<string, unknown>> = { format: 1, title: "?", units: "mm-N-kg" };
const LIST_ENTRY = /^\/([a-z]+)\/(\d+)(?=\/|$)/;

/**
 * Leaves out what keeps a value from being a frame file: faulty entries of lists and faulty keys. Undefined where too
 * little is left. So the meaning of the rest can be checked in the same run, and all that is wrong is told at once.
 */
export function soundPart(value: unknown): SoundPart | undefined {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return undefined;
  const copy: Record<string, unknown> = { ...value };
  const kept = new Map<string, number[]>();
  for (const list of LIST_NAMES) {
    const entries = copy[list];
    if (!Array.isArray(entries)) continue;
    const numbers = [...entries.keys()].filter((i) => entryIsSound(list, entries[i]));
    kept.set(list, numbers);
    copy[list] = numbers.map((i) => entries[i] as unknown);
  }
  for (const { instancePath, params } of errorsAroundLists(copy)) {
    const [key] = instancePath === "" ? [params.additionalProperty ?? params.missingProperty] : keysOf(instancePath);
    if (typeof key !== "string") continue;
    if (Object.hasOwn(STAND_INS, key)) copy[key] = STAND_INS[key];
    else delete copy[key];
  }
  if (!isFrameFile(copy)) return undefined;
  return {
    file: copy,
    pointerOf: (pointer) =>
      pointer.replace(LIST_ENTRY, (whole, list: string, index: string) => {
        const old = kept.get(list)?.[Number(index)];
        return old === undefined ? whole : `/${list}/${old}`;
      }),
  };
}

/** Complaints that may only come from what was left out, and say nothing then. */
const OF_REFERENCES: ReadonlySet<string> = new Set([
  "unknown-part",
  "unknown-kit",
  "unknown-case",
  "jointed-twice",
  "edges-all-free",
  "bracket-holds-one",
  "part-empty",
]);

/** What is wrong with the sound part itself, told at the places of the whole file. */
export function ownComplaints(part: SoundPart, complaints: readonly Complaint[]): readonly Complaint[] {
  return complaints
    .filter((complaint) => complaint.weight === "error" && !OF_REFERENCES.has(complaint.code))
    .map((complaint) => ({
      ...complaint,
      pointer: part.pointerOf(complaint.pointer),
      ...(complaint.other === undefined ? {} : { other: part.pointerOf(complaint.other) }),
    }));
}

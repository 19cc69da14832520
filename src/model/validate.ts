import schema from "../../schema/frame.schema.json" with { type: "json" };
import { whole as check } from "./generated/frame-check.generated.js";
import {
  bar,
  copy,
  door,
  whole as explain,
  fastening,
  group,
  joint,
  load,
  loadCase,
  mass,
  panel,
  pivot,
  stand,
  tie,
  zone,
} from "./generated/frame-explain.generated.js";
import type { FrameFile } from "./generated/frame-file.generated.ts";
import { compareProblems, type Problem } from "./problem.ts";
import { PROBLEMS_TOLD, untold } from "./resolve/complaints.ts";
import type { Document } from "./text/document.ts";
import { pointerTo } from "./text/pointer.ts";
import type { SchemaError } from "./validation/schema-nodes.ts";
import { explainErrors } from "./validation-message.ts";

/** Whether a value has the form of a frame file. */
export function isFrameFile(value: unknown): value is FrameFile {
  return check(value);
}

/** What the entries of each list of the file must be, and by which definition of the schema. */
const LISTS = new Map([
  ["bars", { validator: bar, definition: "#/$defs/bar" }],
  ["joints", { validator: joint, definition: "#/$defs/joint" }],
  ["fastenings", { validator: fastening, definition: "#/$defs/fastening" }],
  ["ties", { validator: tie, definition: "#/$defs/tie" }],
  ["pivots", { validator: pivot, definition: "#/$defs/pivot" }],
  ["panels", { validator: panel, definition: "#/$defs/panel" }],
  ["doors", { validator: door, definition: "#/$defs/door" }],
  ["stands", { validator: stand, definition: "#/$defs/stand" }],
  ["masses", { validator: mass, definition: "#/$defs/mass" }],
  ["loads", { validator: load, definition: "#/$defs/load" }],
  ["cases", { validator: loadCase, definition: "#/$defs/loadCase" }],
  ["groups", { validator: group, definition: "#/$defs/group" }],
  ["zones", { validator: zone, definition: "#/$defs/zone" }],
  ["copies", { validator: copy, definition: "#/$defs/copy" }],
]);

/** The file with its lists emptied: their entries are looked at one by one. */
function withoutEntries(file: object): object {
  const bare: Record<string, unknown> = { ...file };
  for (const list of LISTS.keys()) if (Array.isArray(bare[list])) bare[list] = [];
  return bare;
}

/** The lists of a frame file. */
export const LIST_NAMES: readonly string[] = [...LISTS.keys()];

/** Whether an entry of one of the lists has its form. */
export function entryIsSound(list: string, entry: unknown): boolean {
  return LISTS.get(list)?.validator(entry) ?? false;
}

/** What is wrong with a file apart from the entries of its lists. */
export function errorsAroundLists(file: object): readonly SchemaError[] {
  return faultsAround(file).errors;
}

interface Faults {
  readonly pointer: string;
  readonly definition: string;
  readonly errors: readonly SchemaError[];
}

/** The faults of the file around its lists; a list that was emptied only here is not too short. */
function faultsAround(file: object): Faults {
  explain(withoutEntries(file));
  const filled = new Set<string>();
  for (const [list, entries] of Object.entries(file)) {
    if (Array.isArray(entries) && entries.length > 0) filled.add(pointerTo("", list));
  }
  const errors = (explain.errors ?? []).filter(
    (error) => error.keyword !== "minItems" || !filled.has(error.instancePath),
  );
  return { pointer: "", definition: "#", errors };
}

/** Faults of entries, one by one: those of the first entries, and how many more entries have any. */
function faultsOfEntries(file: object): { readonly told: readonly Faults[]; readonly more: number } {
  const told: Faults[] = [];
  let more = 0;
  for (const [list, entries] of Object.entries(file)) {
    const about = LISTS.get(list);
    if (about === undefined || !Array.isArray(entries)) continue;
    const { validator, definition } = about;
    for (const [index, entry] of entries.entries()) {
      if (validator(entry)) continue;
      if (told.length < PROBLEMS_TOLD) {
        told.push({
          pointer: `/${list}/${index}`,
          definition,
          errors: validator.errors ?? [],
        });
      } else more++;
    }
  }
  return { told, more };
}

/** Finds all places that the explanations will ask for in one pass over the text. */
function findPlaces(document: Document, faults: readonly Faults[]): void {
  const pointers: string[] = [];
  for (const { pointer, errors } of faults) {
    for (const { instancePath, params } of errors) {
      pointers.push(pointer + instancePath);
      const key = params.additionalProperty ?? params.propertyName;
      if (key !== undefined) pointers.push(pointerTo(pointer + instancePath, String(key)));
    }
  }
  document.places(pointers);
}

function otherFormat(document: Document): Problem | undefined {
  const { value } = document;
  if (typeof value !== "object" || value === null || !("format" in value)) return undefined;
  if (typeof value.format !== "number" || value.format === 1) return undefined;
  return {
    code: "unknown-format",
    weight: "error",
    place: document.place("/format"),
    found: `format ${value.format}`,
    expected: "format 1, the one read here",
  };
}

/**
 * What keeps a document from having the form of a frame file, in the order of the text: nothing when it has it. At most 200 problems are
 * told, then one says how many more entries have faults. A file of another format is only said to be that.
 */
export function validateFrame(document: Document): readonly Problem[] {
  const { value } = document;
  if (isFrameFile(value)) return [];
  const other = otherFormat(document);
  if (other !== undefined) return [other];
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    explain(value);
    return explainErrors(explain.errors ?? [], document, schema);
  }
  const entries = faultsOfEntries(value);
  const faults = [faultsAround(value), ...entries.told];
  findPlaces(document, faults);
  const problems: Problem[] = [];
  for (const { errors, ...beginning } of faults) {
    for (const problem of explainErrors(errors, document, schema, beginning)) problems.push(problem);
  }
  problems.sort(compareProblems);
  const told = problems.slice(0, PROBLEMS_TOLD);
  const more = problems.length - told.length + entries.more;
  if (more > 0) {
    told.push(
      untold(document, `${more} more ${more === 1 ? "problem" : "problems"} or entries with problems`, "error"),
    );
  }
  return told;
}

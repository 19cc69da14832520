import { compareProblems, type Place, type Problem } from "../problem.ts";
import { decode } from "./decode.ts";
import { type Lines, linesOf, type Span } from "./lines.ts";
import { type Located, locate } from "./locate.ts";
import { scan } from "./scan.ts";

/** A JSON text that was read without error, its value, and where in the text each part of the value stands. */
export interface Document {
  readonly file: string;
  /** Without a byte order mark. */
  readonly text: string;
  readonly value: unknown;
  /** Place of the value at a pointer; of the nearest existing ancestor when there is none. The first call for a pointer costs a pass. */
  place(pointer: string): Place;
  /** Place of the key of the value at a pointer; of the value itself when it has no key (a list entry, the whole file). */
  keyPlace(pointer: string): Place;
  /** Places of many values in one pass. */
  places(pointers: Iterable<string>): ReadonlyMap<string, Place>;
  /** Offsets in the text, for edits. */
  span(pointer: string): Span;
}

export interface Opened {
  /** Absent when any of the problems is an error. */
  readonly document?: Document;
  readonly problems: readonly Problem[];
}

function documentOf(file: string, text: string, value: unknown, lines: Lines): Document {
  const known = new Map<string, Located>();
  const find = (pointers: Iterable<string>): void => {
    const missing: string[] = [];
    for (const pointer of pointers) if (!known.has(pointer)) missing.push(pointer);
    if (missing.length === 0) return;
    for (const [pointer, located] of locate(text, missing)) known.set(pointer, located);
  };
  const located = (pointer: string): Located => {
    find([pointer]);
    return known.get(pointer) ?? { value: { start: 0, end: text.length } };
  };
  return {
    file,
    text,
    value,
    place: (pointer) => lines.place(pointer, located(pointer).value),
    keyPlace: (pointer) => lines.place(pointer, located(pointer).key ?? located(pointer).value),
    places(pointers) {
      const wanted = [...pointers];
      find(wanted);
      return new Map(wanted.map((pointer) => [pointer, lines.place(pointer, located(pointer).value)]));
    },
    span: (pointer) => located(pointer).value,
  };
}

/** The text with "-0" written as " 0": JSON.parse would keep the sign, and it would surface in a report. */
function withoutMinusZeros(text: string, offsets: readonly number[]): string {
  if (offsets.length === 0) return text;
  const pieces: string[] = [];
  let from = 0;
  for (const offset of offsets) {
    pieces.push(text.slice(from, offset), " ");
    from = offset + 1;
  }
  pieces.push(text.slice(from));
  return pieces.join("");
}

/**
 * Reads bytes as strict JSON (RFC 8259, UTF-8). Never throws; every fault of the text is in the problems, in the order of the text,
 * and a text with an error gives no document. The file name only labels the places.
 */
export function openDocument(file: string, bytes: Uint8Array): Opened {
  const { text, problems: byteProblems } = decode(file, bytes);
  if (text === undefined) return { problems: byteProblems };
  const lines = linesOf(file, text);
  const { problems: textProblems, minusZeros } = scan(text, lines);
  const problems = [...byteProblems, ...textProblems].sort(compareProblems);
  if (problems.some((problem) => problem.weight === "error")) return { problems };
  const value: unknown = JSON.parse(withoutMinusZeros(text, minusZeros));
  return { document: documentOf(file, text, value, lines), problems };
}

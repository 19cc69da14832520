import type { Frame } from "./frame.ts";
import { compareProblems, type Problem } from "./problem.ts";
import { capped, placed } from "./resolve/complaints.ts";
import { MOST_PARTS } from "./resolve/copies.ts";
import { type Origins, originsOf } from "./resolve/names.ts";
import { resolveFrame } from "./resolve/resolve-frame.ts";
import { startWork } from "./resolve/work.ts";
import { ownComplaints, soundPart } from "./sound-part.ts";
import type { Stock } from "./stock/stock.ts";
import { type Document, openDocument } from "./text/document.ts";
import { isFrameFile, validateFrame } from "./validate.ts";

export interface FrameReading {
  /** Absent when any of the problems is an error. */
  readonly frame?: Frame;
  /** Where each part was written; also of a file that could not be resolved, as far as it was named. */
  readonly origins: Origins;
  /** All there are, at most 200 and a count of the rest; in the order of the text. */
  readonly problems: readonly Problem[];
  /** Absent when the text could not be read. */
  readonly document?: Document;
}

const NOTHING_NAMED = originsOf(new Map());

function isError(problem: Problem): boolean {
  return problem.weight === "error";
}

/** Faults of form, and with them what is wrong with the meaning of the parts whose form is right. */
function problemsOfForm(document: Document, stock: Stock): readonly Problem[] {
  const problems = validateFrame(document);
  const part = soundPart(document.value);
  if (part === undefined || problems.some((problem) => problem.code === "unknown-format")) return problems;
  const work = startWork(part.file, stock);
  resolveFrame(work);
  return capped(
    document,
    [...problems, ...placed(document, ownComplaints(part, work.complaints))].sort(compareProblems),
  );
}

/** Reads a document whose text was read; the stock is the built-in one with the frame's own files. Never throws. */
export function readFrameDocument(document: Document, stock: Stock): FrameReading {
  const { value } = document;
  if (!isFrameFile(value)) return { origins: NOTHING_NAMED, problems: problemsOfForm(document, stock), document };
  if (value.bars.length > MOST_PARTS) {
    const found = `${value.bars.length} bars`;
    const expected = `at most ${MOST_PARTS} bars in a frame`;
    const problem = {
      code: "too-many-parts",
      weight: "error",
      place: document.place("/bars"),
      found,
      expected,
    } as const;
    return { origins: NOTHING_NAMED, problems: [problem], document };
  }
  const work = startWork(value, stock);
  const frame = resolveFrame(work);
  const origins = originsOf(work.names);
  const all = placed(document, work.complaints);
  const problems = capped(document, all);
  return all.some(isError) ? { origins, problems, document } : { frame, origins, problems, document };
}

/**
 * Reads a frame file. Every problem of its form and of its meaning is told at once; problems of its text come alone, for nothing else
 * can be read before they are mended. Never throws.
 */
export function readFrame(input: {
  readonly file: string;
  readonly bytes: Uint8Array;
  /** Resolved, with the stock files that the frame names (`stockNamedBy`). */
  readonly stock: Stock;
}): FrameReading {
  const { document, problems: textProblems } = openDocument(input.file, input.bytes);
  if (document === undefined) return { origins: NOTHING_NAMED, problems: textProblems };
  const reading = readFrameDocument(document, input.stock);
  return { ...reading, problems: [...textProblems, ...reading.problems].sort(compareProblems) };
}

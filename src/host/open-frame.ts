import { type StockBytes, stockInForce } from "../inspection/stock-in-force.ts";
import { unansweredQuestions } from "../inspection/unanswered.ts";
import type { Frame } from "../model/frame.ts";
import { compareProblems, type Problem } from "../model/problem.ts";
import { readFrame } from "../model/read-frame.ts";
import { nameOf } from "./frame-files.ts";
import { stockOfFrame } from "./frame-stock.ts";
import { readBytes } from "./read-bytes.ts";
import { fileProblem } from "./unread-report.ts";

export interface OpenedFrame {
  /** Absent when the file could not be read. */
  readonly bytes?: Uint8Array;
  /** Stock of the house and of the frame, in the order they count. */
  readonly stock: readonly StockBytes[];
  /** Its name in outputs. */
  readonly file: string;
  /** Absent when any of the problems is an error. */
  readonly frame?: Frame;
  readonly problems: readonly Problem[];
}

/** Reads one frame with the stock it names and that of a house, for commands that look at a frame itself. */
export async function openFrame(path: string, houseStock: readonly StockBytes[] = []): Promise<OpenedFrame> {
  const file = nameOf(path);
  const read = await readBytes(path);
  if ("refused" in read) return { file, stock: [], problems: [fileProblem(file, read.refused, "a frame file")] };
  const named = await stockOfFrame(path, file, read.bytes);
  const files = [...houseStock, ...named.stock];
  const { stock, problems: stockProblems } = stockInForce(files);
  const reading = readFrame({ file, bytes: read.bytes, stock });
  const problems = [...named.problems, ...stockProblems, ...reading.problems];
  const { frame, document, origins } = reading;
  if (frame && document)
    problems.push(...unansweredQuestions(frame, (at) => document.place(origins.originOf(at).pointer)));
  problems.sort(compareProblems);
  return frame && !problems.some((problem) => problem.weight === "error")
    ? { file, bytes: read.bytes, stock: files, frame, problems }
    : { file, bytes: read.bytes, stock: files, problems };
}

import type { Frame } from "../../../src/model/frame.ts";
import { type FrameReading, readFrame } from "../../../src/model/read-frame.ts";
import { smallStock } from "./small-stock.ts";

/** Reads a file given as text or as a value. */
export function read(file: string | object): FrameReading {
  const text = typeof file === "string" ? file : JSON.stringify(file, null, 2);
  return readFrame({ file: "a.frame.json", bytes: new TextEncoder().encode(text), stock: smallStock });
}

/** Reads a file that must be without error. */
export function frameOf(file: string | object): Frame {
  const { frame, problems } = read(file);
  if (frame === undefined) throw new Error(JSON.stringify(problems, null, 2));
  return frame;
}

/** Problems as "line:column code: found; expected (mend)". */
export function told(file: string | object): readonly string[] {
  return read(file).problems.map(({ code, weight, place, found, expected, mend }) => {
    const start = `${place.line}:${place.column} ${weight === "warning" ? "warning " : ""}${code}`;
    return `${start}: ${found}; expected ${expected}${mend === undefined ? "" : ` (${mend})`}`;
  });
}

import { dirname } from "node:path";
import type { StockBytes } from "../inspection/inspect-file.ts";
import type { Problem } from "../model/problem.ts";
import { stockNamedBy } from "../model/stock-named.ts";
import { openDocument } from "../model/text/document.ts";
import { readNamed } from "./named-file.ts";

const KEY = Buffer.from('"stock"');
const ESCAPE = Buffer.from("\\u00");
/** Stock files of one frame. */
const MOST_FILES = 1000;

/** The stock files that a frame names, read; a problem for each that cannot be. They must lie under the frame's or the working folder. */
export async function stockOfFrame(
  path: string,
  file: string,
  bytes: Uint8Array,
): Promise<{ readonly stock: readonly StockBytes[]; readonly problems: readonly Problem[] }> {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  // Most frames name none, and need not be read twice; a key may be spelled with escapes.
  if (!buffer.includes(KEY) && !buffer.includes(ESCAPE)) return { stock: [], problems: [] };
  const { document } = openDocument(file, bytes);
  const stock: StockBytes[] = [];
  const problems: Problem[] = [];
  const named = document === undefined ? [] : stockNamedBy(document);
  for (const { path: written, place } of named.slice(0, MOST_FILES)) {
    const found = await readNamed(path, written, [dirname(path), "."]);
    if ("refused" in found) {
      const words = `a stock file that cannot be used: ${found.refused}`;
      problems.push({
        code: "stock-unreadable",
        weight: "error",
        place,
        found: words,
        expected: "a stock file beside the frame",
      });
    } else stock.push({ file: found.name, bytes: found.bytes });
  }
  const beyond = named[MOST_FILES];
  if (beyond !== undefined) {
    const expected = `at most ${MOST_FILES}`;
    problems.push({
      code: "too-many-files",
      weight: "error",
      place: beyond.place,
      found: `${named.length} stock files`,
      expected,
    });
  }
  return { stock, problems };
}

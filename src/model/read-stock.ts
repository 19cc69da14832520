import schema from "../../schema/stock.schema.json" with { type: "json" };
import { whole as check } from "./generated/stock-check.generated.js";
import { whole as explain } from "./generated/stock-explain.generated.js";
import type { StockFile } from "./generated/stock-file.generated.ts";
import type { Problem } from "./problem.ts";
import { capped } from "./resolve/complaints.ts";
import type { StockSource } from "./stock/resolve-stock.ts";
import { openDocument } from "./text/document.ts";
import { explainErrors } from "./validation-message.ts";

function isStockFile(value: unknown): value is StockFile {
  return check(value);
}

function isFrame(value: unknown): boolean {
  return typeof value === "object" && value !== null && "bars" in value && Array.isArray(value.bars);
}

/** Reads one stock file as far as its form; its parts are resolved together with those of the other files. Never throws. */
export function readStockFile(
  file: string,
  bytes: Uint8Array,
): { readonly source?: StockSource; readonly problems: readonly Problem[] } {
  const { document, problems } = openDocument(file, bytes);
  if (!document) return { problems };
  const { value } = document;
  if (isStockFile(value)) return { source: { value, place: (pointer) => document.place(pointer) }, problems };
  if (isFrame(value)) {
    const place = document.keyPlace("/bars");
    const mend = 'name a stock file; a frame names its own under "stock"';
    return {
      problems: [
        ...problems,
        {
          code: "wrong-file",
          weight: "error",
          place,
          found: "a frame file, with bars",
          expected: "a stock file",
          mend,
        },
      ],
    };
  }
  explain(value);
  return {
    problems: [...problems, ...capped(document, explainErrors(explain.errors ?? [], document, schema))],
  };
}

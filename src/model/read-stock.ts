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

/** Reads one stock file as far as its form; its parts are resolved together with those of the other files. Never throws. */
export function readStockFile(
  file: string,
  bytes: Uint8Array,
): { readonly source?: StockSource; readonly problems: readonly Problem[] } {
  const { document, problems } = openDocument(file, bytes);
  if (!document) return { problems };
  const { value } = document;
  if (isStockFile(value)) return { source: { value, place: (pointer) => document.place(pointer) }, problems };
  explain(value);
  return {
    problems: [...problems, ...capped(document, explainErrors(explain.errors ?? [], document, schema))],
  };
}

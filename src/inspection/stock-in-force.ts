import type { Problem } from "../model/problem.ts";
import { readStockFile } from "../model/read-stock.ts";
import { builtinStock } from "../model/stock/builtin-stock.ts";
import { resolveStock, type StockSource } from "../model/stock/resolve-stock.ts";
import type { Stock } from "../model/stock/stock.ts";

/** A stock file that a frame or a house names, as read. */
export interface StockBytes {
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** The built-in stock with what the files add or replace, and what is wrong with them. */
export function stockInForce(files: readonly StockBytes[]): { stock: Stock; problems: readonly Problem[] } {
  if (files.length === 0) return { stock: builtinStock(), problems: [] };
  const problems: Problem[] = [];
  const sources: StockSource[] = [];
  for (const { file, bytes } of files) {
    const read = readStockFile(file, bytes);
    problems.push(...read.problems);
    if (read.source) sources.push(read.source);
  }
  const resolved = resolveStock(sources, builtinStock());
  return { stock: resolved.stock, problems: [...problems, ...resolved.problems] };
}

import type { Place } from "./problem.ts";
import type { Document } from "./text/document.ts";

export interface StockNamed {
  /** As written, relative to the frame file. */
  readonly path: string;
  readonly place: Place;
}

/** The stock files that a frame's document names, in its order, whatever else is wrong with it. */
export function stockNamedBy(document: Document): readonly StockNamed[] {
  const { value } = document;
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, "stock")) return [];
  const list: unknown = "stock" in value ? value.stock : undefined;
  if (!Array.isArray(list)) return [];
  const named: StockNamed[] = [];
  for (const [index, path] of list.entries()) {
    if (typeof path === "string" && path !== "") named.push({ path, place: document.place(`/stock/${index}`) });
  }
  return named;
}

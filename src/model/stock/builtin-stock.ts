import type { StockFile } from "../generated/stock-file.generated.ts";
import connectorsInch from "./builtin/connectors-inch.stock.json" with { type: "json" };
import connectorsMetric from "./builtin/connectors-metric.stock.json" with { type: "json" };
import fastenersInch from "./builtin/fasteners-inch.stock.json" with { type: "json" };
import fastenersMetric from "./builtin/fasteners-metric.stock.json" with { type: "json" };
import materials from "./builtin/materials.stock.json" with { type: "json" };
import panels from "./builtin/panels.stock.json" with { type: "json" };
import panelsInch from "./builtin/panels-inch.stock.json" with { type: "json" };
import profilesInch from "./builtin/profiles-inch.stock.json" with { type: "json" };
import profilesMetric from "./builtin/profiles-metric.stock.json" with { type: "json" };
import stands from "./builtin/stands.stock.json" with { type: "json" };
import standsInch from "./builtin/stands-inch.stock.json" with { type: "json" };
import toolsInch from "./builtin/tools-inch.stock.json" with { type: "json" };
import toolsMetric from "./builtin/tools-metric.stock.json" with { type: "json" };
import { addStock, EMPTY_STOCK } from "./resolve-stock.ts";
import type { Stock } from "./stock.ts";

/** Materials first: series need them. The compiler sees words where the schema has choices, so the files' type is stated here. */
export const BUILTIN_FILES: ReadonlyMap<string, StockFile> = new Map<string, unknown>([
  ["materials", materials],
  ["profiles-metric", profilesMetric],
  ["profiles-inch", profilesInch],
  ["fasteners-metric", fastenersMetric],
  ["fasteners-inch", fastenersInch],
  ["connectors-metric", connectorsMetric],
  ["connectors-inch", connectorsInch],
  ["stands", stands],
  ["stands-inch", standsInch],
  ["panels", panels],
  ["panels-inch", panelsInch],
  ["tools-metric", toolsMetric],
  ["tools-inch", toolsInch],
]) as ReadonlyMap<string, unknown> as ReadonlyMap<string, StockFile>;

let made: Stock | undefined;

/** The generic stock that comes with the tool; made once. Throws when the tool's own data is at fault. */
export function builtinStock(): Stock {
  if (made !== undefined) return made;
  const { stock, complaints } = addStock([...BUILTIN_FILES.values()], EMPTY_STOCK);
  const first = complaints.flat()[0];
  if (first !== undefined) throw new Error(`built-in ${first.pointer}: ${first.found}; expected ${first.expected}`);
  made = stock;
  return made;
}

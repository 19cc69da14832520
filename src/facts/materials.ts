import type { Material } from "../model/stock/stock.ts";
import { defineFact } from "./fact.ts";

/** Materials of the stock in force, by name. */
export const materials = defineFact<ReadonlyMap<string, Material>>({
  id: "materials",
  compute: (_, frame) => frame.stock.materials,
});

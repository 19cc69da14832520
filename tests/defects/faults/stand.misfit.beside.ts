import type { Fault } from "../fault.ts";
import { casterStock, takeCaster } from "../plate-casters.ts";

export const fault: Fault = {
  rule: "stand.misfit",
  key: "beside",
  slip: "casters whose plate is too small to reach the bores of the leg",
  spots: { "seed-trolley": "caster-75-plate-fixed" },
  // Half a plate, mm: bores 15 mm off the middle both ways, of 5 mm.
  sizes: "plain",
  stock: casterStock("caster-75-small", 16),
  consequences: { "end.bare": "a small plate leaves metal of the end open" },
  plant: (file, spot) => takeCaster(file, spot, "caster-75-small"),
};

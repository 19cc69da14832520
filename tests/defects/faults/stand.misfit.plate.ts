import type { Fault } from "../fault.ts";
import { casterStock, takeCaster } from "../plate-casters.ts";

export const fault: Fault = {
  rule: "stand.misfit",
  key: "unmet",
  slip: "casters whose plate is drilled for another profile",
  spots: { "seed-trolley": "caster-75-plate-fixed" },
  sizes: "plain",
  // Holes 28 mm off the middle, bores 15 mm off it.
  stock: casterStock("caster-75-drilled", 77, [
    { id: "h1", at: [28, 28], diameter: 7 },
    { id: "h2", at: [-28, 28], diameter: 7 },
    { id: "h3", at: [-28, -28], diameter: 7 },
    { id: "h4", at: [28, -28], diameter: 7 },
  ]),
  plant: (file, spot) => takeCaster(file, spot, "caster-75-drilled"),
};

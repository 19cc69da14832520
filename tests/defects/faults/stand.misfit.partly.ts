import type { Fault } from "../fault.ts";
import { casterStock, takeCaster } from "../plate-casters.ts";

export const fault: Fault = {
  rule: "stand.misfit",
  key: "partly",
  slip: "casters whose plate has two of its four holes over bores of the leg",
  spots: { "seed-trolley": "caster-75-plate-fixed" },
  sizes: "plain",
  // Bores 15 mm off the middle both ways.
  stock: casterStock("caster-75-skewed", 77, [
    { id: "h1", at: [15, 15], diameter: 7 },
    { id: "h2", at: [-28, 28], diameter: 7 },
    { id: "h3", at: [-15, -15], diameter: 7 },
    { id: "h4", at: [28, -28], diameter: 7 },
  ]),
  plant: (file, spot) => takeCaster(file, spot, "caster-75-skewed"),
};

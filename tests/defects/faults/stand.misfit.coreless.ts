import { bar } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

/** The series of built-in stock, its core left hollow without a bore. */
const stock = JSON.stringify({
  format: 1,
  units: "mm-N-kg",
  title: "profiles of the team",
  series: [
    {
      name: "40-8-hollow",
      pitch: 40,
      slotSize: "8",
      weight: "standard",
      material: "6060-T66",
      stockLength: 6000,
      slot: { opening: 8.2, lip: 4, cavity: 18, depth: 12.5, web: 2.8 },
      cornerRadius: 4,
      cornerWall: 2,
      cellWall: 2.4,
      closedWall: 2.2,
      ratedNut: [20, 17],
    },
  ],
  profiles: [{ kind: "generated", name: "40x40-8-coreless", series: "40-8-hollow", columns: 1, rows: 1 }],
});

export const fault: Fault = {
  rule: "stand.misfit",
  key: "coreless",
  slip: "legs of a profile without a bore, on feet with a stem",
  spots: { "braced-trestle": "post-1 post-2", "timber-table": "leg-1 leg-2" },
  sizes: "plain",
  stock,
  consequences: OVERLOAD,
  plant(file, spot) {
    const legs = spot.split(" ");
    for (const leg of legs) bar(file, leg).profile = "40x40-8-coreless";
    return legs.map((leg) => `${leg}.foot`);
  },
};

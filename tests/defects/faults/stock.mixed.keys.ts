import { changeConnector } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "stock.mixed",
  key: "keys",
  slip: "screws as they lay about: four sizes of key",
  spots: { "braced-trestle": "bearer-1 bearer-2 low-back", "timber-table": "bearer-1 bearer-2 bearer-3" },
  sizes: "plain",
  consequences: OVERLOAD,
  plant(file, spot) {
    // Keys of 5, 4 and 3 mm beside the 6 mm of the rest (ISO 7380-1, ISO 4762).
    for (const [i, id] of spot.split(" ").entries())
      changeConnector(file, id, "to", { screw: ["M8x16-button", "M6x16-button", "M5x16-button"][i] ?? "" });
    return ["frame"];
  },
};

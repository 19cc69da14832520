import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "frame.sways",
  key: "sways",
  slip: "the customer's drawing asks for a firmer frame",
  spots: { "plant-display": "", "saw-guard": "", workstation: "", "seed-trolley": "" },
  sizes: { sound: 0, faulty: 20 }, // 1 mm over this, less a hair, is what the customer allows
  consequences: { "frame.unbraced": "held to the same limit" },
  plant(file, _, size) {
    file.criteria = { sway: `${50 / (1 + size * size)} mm` };
    return ["frame"];
  },
};

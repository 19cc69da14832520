import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.uncut",
  key: "crossed",
  slip: "a bar added between two others, and the sheet there left whole",
  spots: { "saw-guard": "back-upper" },
  sizes: "plain",
  consequences: { "panel.uncut/edge": "its nuts lie in the slots of the sheet" },
  plant(file, spot) {
    file.bars.push({ id: "mullion", profile: "45x45-10", from: [400, 677.5, 640], to: [400, 677.5, 1300] });
    file.joints?.push({ bars: ["mullion"], by: "left" });
    return [spot];
  },
};

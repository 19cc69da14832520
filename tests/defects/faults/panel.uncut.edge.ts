import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.uncut",
  key: "edge",
  slip: "a plate screwed onto the face whose slot a sheet runs in",
  spots: { "saw-guard": "back-upper" },
  sizes: "plain",
  consequences: { "nut.clash": "its nuts share the slot with the sheet", "screw.no-room": "the sheet is in the way" },
  plant(file, spot) {
    file.fastenings = [{ id: "patch", part: "plate-I-45", on: "+z", at: [400, 677.5, 662.5], holds: ["mid-back"] }];
    return [spot];
  },
};

import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.uncut",
  key: "lies",
  slip: "a plate put on top of a bar that a board lies on",
  spots: { workstation: "front" },
  sizes: "plain",
  consequences: {
    "screw.no-room": "the board covers its screws",
    "screw.buried": "the board covers its screws",
    ...OVERLOAD,
  },
  plant(file, spot) {
    file.fastenings = [
      ...(file.fastenings ?? []),
      { id: "patch", part: "plate-I-30", on: "+z", at: [400, 15, 760], holds: [spot] },
    ];
    return ["top"];
  },
};

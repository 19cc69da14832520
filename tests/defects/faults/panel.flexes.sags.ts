import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.flexes",
  key: "sags",
  slip: "a load of a board typed ten times too large",
  spots: { workstation: "shelf" },
  sizes: { sound: 0.2, faulty: 40 }, // kPa
  consequences: { ...OVERLOAD, "panel.flexes": "a board that sags is stressed as well", "frame.loose": "feet lift" },
  plant(file, spot, size) {
    for (const load of file.loads ?? []) if (load.on === spot) load.pressure = size;
    return [spot];
  },
};

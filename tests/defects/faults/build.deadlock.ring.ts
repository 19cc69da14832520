import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "build.deadlock",
  key: "ring",
  slip: "two rails close together, the end fasteners of each turned to the other",
  spots: { "timber-table": "rail lower" },
  sizes: "plain",
  consequences: {
    "screw.no-room": "whichever rail goes in first, its screws are reached before the other, and not after",
    "screw.crowded": "the ties of the beam are turned when the legs' brackets are on",
  },
  plant(file, spot) {
    const [upper = "", lower = ""] = spot.split(" ");
    for (const [id, z, on] of [
      [upper, 500, "below"],
      [lower, 430, "above"],
    ] as const) {
      file.bars.push({ id, profile: "40x40-8", from: [100, 20, z], to: [1100, 20, z] });
      file.joints?.push({ bars: [id], by: [{ connector: "end-fastener-8", on }] });
    }
    return [upper, lower];
  },
};

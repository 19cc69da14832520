import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "stand.misfit",
  key: "thread",
  slip: "feet of another series, as high and no weaker",
  spots: {
    "braced-trestle": "foot-45-M10",
    "camera-rig": "foot-30-M6",
    "hoist-gantry": "foot-45-M10-wide",
    "pump-base": "foot-45-M10",
    "roller-stand": "foot-45-M10",
    "seed-cabinet": "foot-45-M10",
    "step-platform": "foot-45-M10",
    "timber-table": "foot-45-M10",
    workstation: "foot-40-M8",
  },
  sizes: "plain",
  consequences: { "end.bare": "the collar of a smaller foot leaves metal of the end open" },
  plant(file, spot) {
    const stand = file.stands?.[0];
    if (!stand) throw new Error(`${file.title} has no feet`);
    stand.part = spot;
    return stand.bars.map((leg) => `${leg}.foot`);
  },
};

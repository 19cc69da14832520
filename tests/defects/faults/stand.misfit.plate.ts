import type { Fault } from "../fault.ts";

/** A caster like caster-75-plate, its plate drilled for another profile: holes 28 mm off the middle, bores 15 mm off it. */
const stock = JSON.stringify({
  format: 1,
  units: "mm-N-kg",
  title: "casters of the team",
  stands: [
    {
      name: "caster-75-drilled",
      kind: "caster",
      mount: {
        by: "plate",
        size: [77, 77],
        thickness: 4,
        holes: [
          { id: "h1", at: [28, 28], diameter: 7 },
          { id: "h2", at: [-28, 28], diameter: 7 },
          { id: "h3", at: [-28, -28], diameter: 7 },
          { id: "h4", at: [28, -28], diameter: 7 },
        ],
      },
      diameter: 75,
      collar: 77,
      raise: [100, 100],
      capacity: 700,
      mass: 0.6,
    },
  ],
});

export const fault: Fault = {
  rule: "stand.misfit",
  key: "unmet",
  slip: "casters whose plate is drilled for another profile",
  spots: { "seed-trolley": "caster-75-plate-fixed" },
  sizes: "plain",
  stock,
  plant(file, spot) {
    const stand = file.stands?.find(({ part }) => part === spot);
    if (!stand) throw new Error(`${file.title} has no ${spot}`);
    stand.part = "caster-75-drilled";
    return stand.bars.map((leg) => `${leg}.caster`);
  },
};

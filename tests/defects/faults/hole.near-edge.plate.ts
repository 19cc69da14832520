import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "hole.near-edge",
  key: "plate",
  slip: "a plate of the team's own, cut too narrow",
  spots: { "timber-table": "leg-1 front" },
  sizes: { just: 0.1, far: 4 }, // mm short of 1.2 holes of 9 mm
  plant(file, spot, size) {
    const [leg, rail] = spot.split(" ") as [string, string];
    // Stem down the leg; from its middle to its long edge is what is left.
    file.fastenings = [
      { id: "cheek", part: `narrow-${size}`, on: "-y", at: [100, 0, 760], turn: 180, holds: [leg, rail] },
    ];
    return ["cheek/1/h1"];
  },
  stock: JSON.stringify({
    format: 1,
    units: "mm-N-kg",
    title: "Plates cut in the workshop",
    connectors: [0.1, 4].map((short) => {
      const half = 1.2 * 9 - short;
      const hole = (id: string, u: number, v: number) => ({ id, at: [u, v], diameter: 9 });
      return {
        kind: "plate",
        name: `narrow-${short}`,
        slotSize: "8",
        mass: 0.1,
        thickness: 5,
        outline: [
          [-half, -60],
          [half, -60],
          [half, -19],
          [80, -19],
          [80, 19],
          [half, 19],
          [half, 60],
          [-half, 60],
        ],
        holes: [hole("h1", 0, -40), hole("h2", 0, 40), hole("h3", 60, 0)],
        screw: "M8x16",
      };
    }),
  }),
};

import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "guard.within-reach",
  key: "low",
  slip: "a hazard over a platform taken for a guard",
  spots: { "step-platform": "900" },
  sizes: "plain",
  consequences: { "guard.within-reach": "it stands open on all sides" },
  plant(file) {
    file.zones = [
      {
        id: "belt",
        box: [
          [400, 300, 600],
          [500, 400, 700],
        ],
        risk: "low",
      },
    ];
    return ["belt"];
  },
};

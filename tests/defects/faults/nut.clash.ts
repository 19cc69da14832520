import { bar, changeConnector, point } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "nut.clash",
  key: "clash",
  slip: "a second rail drawn close over the first, both on end fasteners",
  // Fasteners 9.5 mm under the faces that look at each other, in bars of 45 mm; their nuts are 22 mm long.
  spots: { "saw-guard": "low-left" },
  sizes: { just: 0.2, far: 2.8 }, // mm by which the nuts overlap
  consequences: {
    "guard.within-reach": "the panel there no longer fits and is left out",
    "screw.no-room": "no key goes in between the rails",
    "build.deadlock": "the screws of either rail lie behind the other",
    "screw.crowded": "the keys have no room between the rails",
    ...OVERLOAD,
  },
  plant(file, spot, size) {
    const first = bar(file, spot);
    const [from, to] = [point(file, spot, "from"), point(file, spot, "to")];
    const apart = 22 - size + 2 * (45 / 2 - 9.5);
    from[2] += apart;
    to[2] += apart;
    file.bars.push({ ...first, id: "second", from, to });
    for (const end of ["from", "to"] as const) changeConnector(file, spot, end, { on: "above" });
    file.joints?.push({ bars: ["second"], by: [{ connector: "end-fastener-10", on: "below" }] });
    file.panels = (file.panels ?? []).filter(({ id }) => id !== "left-lower");
    return ["post-1", "post-4"];
  },
};

import { addLoad, bar, forSlot, point, runsAlong } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.sags",
  key: "sags",
  slip: "a heavier load on the middle of a bar, from which a peg hangs that touches nothing else",
  spots: { "plant-display": "back", "timber-table": "stretcher" },
  sizes: { sound: 0, faulty: 20000 }, // N
  consequences: OVERLOAD,
  plant(file, spot, size) {
    addLoad(file, { case: "hoist", on: spot, force: size });
    const axis = runsAlong(file, spot);
    const middle = point(file, spot, "from");
    middle[axis] = (middle[axis] + point(file, spot, "to")[axis]) / 2;
    const connector = forSlot(file, spot, { 6: "gusset-bracket-30", 8: "gusset-bracket-40" });
    file.bars.push({
      id: "peg",
      profile: bar(file, spot).profile,
      from: middle,
      to: [middle[0], middle[1], middle[2] - 150],
    });
    file.joints?.push({ bars: ["peg/from"], by: [{ connector, on: axis === 0 ? "+x" : "+y" }] });
    return [spot];
  },
};

import { kitOf, refasten } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.turns",
  key: "knocked",
  slip: "one bracket of one screw at one end, where trolleys run into the bar",
  spots: { "braced-trestle": "low-back", "plant-display": "back", "pot-rack": "front" },
  sizes: { sound: 50, faulty: 1000 }, // N of a knock
  consequences: OVERLOAD,
  plant(file, spot, size) {
    const [first] = kitOf(file, spot, "to");
    if (first) refasten(file, spot, "to", [{ ...first, connector: first.connector.replace("gusset-", "inside-") }]);
    file.criteria = { knock: `${size} N` };
    return [`${spot}.to`];
  },
};

import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "foot.overloaded",
  key: "overloaded",
  slip: "feet chosen for a quarter of the weight, and a floor of which the hollows were forgotten",
  spots: { "braced-trestle": "foot-40-light" },
  sizes: { sound: 0, faulty: 15 }, // mm
  consequences: OVERLOAD,
  stock: JSON.stringify({
    format: 1,
    units: "mm-N-kg",
    title: "Light feet",
    stands: [
      {
        name: "foot-40-light",
        kind: "foot",
        mount: { by: "stem", thread: "M8", engagement: 20 },
        diameter: 40,
        collar: 38,
        raise: [28, 52],
        capacity: 450,
        mass: 0.03,
      },
    ],
  }),
  plant(file, spot, size) {
    file.stock = ["./team.stock.json"];
    for (const stand of file.stands ?? []) stand.part = spot;
    file.floor = { ...file.floor, uneven: size };
    return [];
  },
};

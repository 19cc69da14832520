import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "caster.unbraked",
  key: "rolls",
  slip: "brakes forgotten",
  spots: { "seed-trolley": "post-1 post-4" },
  sizes: { just: 1, far: 2 }, // brakes left off
  consequences: OVERLOAD,
  plant(file, spot, size) {
    const posts = spot.split(" ");
    file.stands = (file.stands ?? []).flatMap((stand) =>
      stand.brake === true
        ? posts.map((post, i) => ({ part: stand.part, bars: [post] as [string], brake: i >= size }))
        : [stand],
    );
    return ["frame"];
  },
};

import { mm } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "screw.no-room",
  key: "entry",
  slip: "a hinge drawn on the inside of the post, where a sheet runs in its slot",
  spots: { "saw-guard": "door" },
  sizes: "plain",
  consequences: {
    "screw.no-room/swing": "where a key goes in it does not turn",
    "panel.uncut": "the hinge's nuts lie in the slot of the sheet",
  },
  plant(file, spot) {
    const hinge = file.doors?.find(({ id }) => id === spot)?.hinges[1];
    if (!hinge) throw new Error(`${file.title} has no second hinge`);
    const [x, y, z] = hinge.at;
    hinge.at = [x, Number(y) + mm(file, 45), z];
    return [`${spot}/hinge-2`];
  },
};

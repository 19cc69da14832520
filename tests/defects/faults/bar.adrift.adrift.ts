import { unfasten } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.adrift",
  key: "adrift",
  slip: "the joints left out that hold a part of several bars",
  spots: {
    "seed-trolley": "stem-1/from stem-2/from",
    "step-platform": "step-left/to step-right/to",
    workstation: "upright-1/from upright-2/from upright-3/from",
  },
  sizes: "plain",
  consequences: {
    "load.none/lost": "nothing carries the loads on that part",
    "frame.loose": "a part that stands on feet of its own is free to walk away",
    "frame.tips": "it is reckoned with feet that carry something else",
  },
  plant(file, spot) {
    const ends = spot.split(" ");
    unfasten(file, ...ends);
    return ends.map((end) => end.split("/")[0] ?? "");
  },
};

import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "build.deadlock",
  key: "apart",
  slip: "two bars that stand apart to be built as one piece, what joins them left out of it",
  spots: { "saw-guard": "post-1 post-3" },
  sizes: "plain",
  plant(file, spot) {
    file.groups = [{ id: "pair", parts: spot.split(" ") as [string, ...string[]] }];
    return ["pair"];
  },
};

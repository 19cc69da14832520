import { CAPPED_ENDS } from "../capped-ends.ts";
import { bar } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "end.bare",
  key: "bare",
  slip: "one cap left off",
  spots: CAPPED_ENDS,
  sizes: "plain",
  plant(file, spot) {
    const [id = "", end = ""] = spot.split("/");
    bar(file, id).ends = { [end]: { cap: "none" } };
    return [spot];
  },
};

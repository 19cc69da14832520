import { CAPPED_ENDS } from "../capped-ends.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "end.bare",
  key: "bare",
  slip: "no caps ordered at all",
  spots: CAPPED_ENDS,
  sizes: "plain",
  plant(file, spot) {
    file.defaults = { ...file.defaults, caps: "none" };
    return [spot];
  },
};

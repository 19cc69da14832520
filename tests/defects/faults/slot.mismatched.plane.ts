import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "slot.mismatched",
  key: "plane",
  slip: "a pivot with leaves drawn where two bars cross, face on face",
  spots: { "braced-trestle": "pin-5" },
  sizes: "plain",
  plant(file, spot) {
    const pin = file.pivots?.find(({ id }) => id === spot);
    if (pin) pin.part = "pivot-40";
    return [`${spot}/1`];
  },
};

import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.hung",
  key: "unseated",
  slip: "a customer who trusts hanging screws with less",
  spots: { "step-platform": "cross-2" },
  // Share allowed; a person on the cross bar uses 0.53 of what its screws are trusted with.
  sizes: { just: 0.53, far: 0.2 },
  plant(file, spot, size) {
    file.criteria = { "hung-utilisation": size };
    return [`${spot}.from`];
  },
};

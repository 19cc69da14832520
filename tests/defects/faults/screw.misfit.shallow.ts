import { changeConnector } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "screw.misfit",
  key: "shallow",
  slip: "an end screw shorter than its connector's",
  spots: { "pump-base": "bearer-1" },
  sizes: { just: 18, far: 16 }, // mm long, less 4 mm of lip; the connector wants 16 mm of thread
  plant(file, spot, size) {
    changeConnector(file, spot, "to", { screw: `M8x${size}-button` });
    return [`${spot}.to/1-1/a1`, `${spot}.to/1-4/a1`];
  },
};

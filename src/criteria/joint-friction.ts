import { defineCriterion } from "./criterion.ts";

/** Friction between pressed faces. */
export const jointFriction = defineCriterion({
  name: "joint-friction",
  quantity: "ratio",
  standard: "0.15",
  within: ["0.01", "1"],
  about:
    "middle value of the friction between a connector and a bar; from screw to screw it scatters as 0.10 to 0.20 does",
  basis: "common practice: anodised bar and plated connector 0.10 to 0.20",
});

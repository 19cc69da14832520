import { defineCriterion } from "./criterion.ts";

/** How far the frame may give sideways when pushed. */
export const sway = defineCriterion({
  name: "sway",
  of: "frame",
  quantity: "length",
  standard: "span / 150",
  within: ["0.1 mm", "500 mm"],
  about: "how far the frame may give sideways under a push at working height; the span is the height of the push",
  basis: "common practice: the height of the push / 150 still feels firm",
});

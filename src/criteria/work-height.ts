import { defineCriterion } from "./criterion.ts";

/** Up to which height screws are driven without reaching overhead. */
export const workHeight = defineCriterion({
  name: "work-height",
  of: "frame",
  quantity: "length",
  standard: "1400 mm",
  within: ["500 mm", "3000 mm"],
  about: "height over the floor above which screws are better driven on the bench",
  basis: "common practice: shoulder height of a person of middle size",
});

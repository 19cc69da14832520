import { defineCriterion } from "./criterion.ts";

/** Partial factor on the strength of bars. */
export const memberFactor = defineCriterion({
  name: "member-factor",
  of: "bars",
  quantity: "ratio",
  standard: "1.1",
  within: ["1", "3"],
  about: "partial factor by which the proof strength of a bar is divided",
  basis: "EN 1999-1-1:2007, 6.1.3: gamma M1 = 1.10",
});

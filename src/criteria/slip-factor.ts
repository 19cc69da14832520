import { defineCriterion } from "./criterion.ts";

/** Partial factor on slip. */
export const slipFactor = defineCriterion({
  name: "slip-factor",
  quantity: "ratio",
  standard: "1.25",
  within: ["1", "5"],
  about: "factor by which the slip load that 95 of 100 screws exceed is divided",
  basis: "value of gamma M3 of EN 1993-1-8:2005, 2.2, in a screening formula of trysquare (docs/method/joints)",
});

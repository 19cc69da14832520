import { defineCriterion } from "./criterion.ts";

/** Safety factor of the allowable-stress method. */
export const safetyFactor = defineCriterion({
  name: "safety-factor",
  quantity: "ratio",
  standard: "1.5",
  within: ["1", "5"],
  about: "only where the method is allowable-stress: by what strengths are divided besides their own factors",
  basis:
    "the partial factor on variable loads (EN 1990:2002, Table A1.2(B)); with 1.1 it makes the customary 1.65 on yielding",
});

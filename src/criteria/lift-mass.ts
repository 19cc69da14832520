import { defineCriterion } from "./criterion.ts";

/** What one person may lift. */
export const liftMass = defineCriterion({
  name: "lift-mass",
  of: "frame",
  quantity: "mass",
  standard: "25 kg",
  within: ["1 kg", "50 kg"],
  about:
    "mass one person lifts; two lift two thirds of it each, three and more half: guidance on manual handling, from memory",
  basis: "ISO 11228-1: reference mass for men of 20 to 45 years; 20 kg for women of that age",
});

/** How many people build. */
export const lifters = defineCriterion({
  name: "lifters",
  of: "frame",
  quantity: "count",
  standard: "2",
  within: ["0", "8"],
  about: "people who lift together; with a hoist nobody lifts, so set 0",
  basis: "common practice",
});

import { defineCriterion } from "./criterion.ts";

/** Sawn metal that may stay open at one end. */
export const openEndArea = defineCriterion({
  name: "open-end-area",
  of: "bars",
  quantity: "area",
  standard: "20 mm²",
  within: ["1 mm²", "10000 mm²"],
  about: "sawn metal left open at one end; slivers below it are what a fingertip does not catch on",
  basis: "common practice",
});

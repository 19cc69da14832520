import { defineCriterion } from "./criterion.ts";

/** Up to which height over the floor people touch the frame. */
export const touchHeight = defineCriterion({
  name: "touch-height",
  of: "frame",
  quantity: "length",
  standard: "2500 mm",
  within: ["100 mm", "5000 mm"],
  about: "height over the floor up to which people touch the frame",
  basis: "ISO 13857:2019, 4.2.1: reach upwards where the risk is low",
});

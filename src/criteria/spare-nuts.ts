import { defineCriterion } from "./criterion.ts";

/** How many nuts more than are used lie in every slot that takes nuts. */
export const spareNuts = defineCriterion({
  name: "spare-nuts",
  of: "bars",
  quantity: "count",
  standard: "0",
  within: ["0", "100"],
  about: "nuts to leave over in every slot that takes nuts, for what is added later",
  basis: "common practice: one in each slot that will ever carry more",
});

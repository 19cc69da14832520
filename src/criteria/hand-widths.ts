import { defineCriterion } from "./criterion.ts";

/** Free width across a key or T-handle for the fingers on it. */
export const fingerRoom = defineCriterion({
  name: "finger-room",
  quantity: "length",
  standard: "60 mm",
  within: ["10 mm", "150 mm"],
  about: "width across a key or T-handle that is free for the fingers all along its swing",
  basis: "common practice: 60 mm for a hand",
});

/** Free width across the handle of a ratchet or wrench for the fist round it. */
export const fistRoom = defineCriterion({
  name: "fist-room",
  quantity: "length",
  standard: "100 mm",
  within: ["10 mm", "150 mm"],
  about: "width across the handle of a ratchet or wrench that is free for the fist all along its swing",
  basis: "common practice: 100 mm for a hand with a wrench",
});

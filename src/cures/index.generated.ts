// Generated from the files of this folder by `npm run generate`; do not edit.
import { alongSlot } from "./along-slot.ts";
import { barUnderPanel } from "./bar-under-panel.ts";
import { buttCut } from "./butt-cut.ts";
import { coverEnd } from "./cover-end.ts";
import { diagonalBrace } from "./diagonal-brace.ts";
import { fittingSheet } from "./fitting-sheet.ts";
import { kneeBrace } from "./knee-brace.ts";
import { otherFace } from "./other-face.ts";
import { otherScrew } from "./other-screw.ts";
import { postAtMidSpan } from "./post-at-mid-span.ts";
import { railBetweenPosts } from "./rail-between-posts.ts";
import { screwedSheet } from "./screwed-sheet.ts";
import { seatOnPost } from "./seat-on-post.ts";
import { stifferProfile } from "./stiffer-profile.ts";
import { sturdierJoint } from "./sturdier-joint.ts";
import { thickerSheet } from "./thicker-sheet.ts";
import type { Cure } from "./cure.ts";

/** Every cure that is tried. */
export const builtInCures: readonly Cure[] = [
  alongSlot,
  barUnderPanel,
  buttCut,
  coverEnd,
  diagonalBrace,
  fittingSheet,
  kneeBrace,
  otherFace,
  otherScrew,
  postAtMidSpan,
  railBetweenPosts,
  screwedSheet,
  seatOnPost,
  stifferProfile,
  sturdierJoint,
  thickerSheet,
];

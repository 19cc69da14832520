import type { Source } from "../criteria/criterion.ts";
import type { Measure } from "../inspection/report.ts";
import type { Governing } from "../rules/shape/message.ts";

/** Where a limit came from. */
export const LIMIT_FROM: Readonly<Record<Source, string>> = {
  default: "usual limit",
  stock: "limit from stock",
  house: "limit of the house",
  frame: "limit of the frame's criteria",
  part: "limit set on the part",
  computed: "limit computed",
};

export const JOINTS: Readonly<Record<Governing["bound"], string>> = {
  tested: "joints as tested",
  soft: "joints soft",
  typical: "joints typical",
  stiff: "joints stiff",
};

/** With which joint stiffness the value governs and what it is otherwise; nothing where that makes no difference to the number. */
export function stiffnessWords(measure: Measure): string | undefined {
  const others = Object.entries(measure.otherBounds ?? {}).filter(([, value]) => value !== measure.shown.measured);
  const alike = measure.otherBounds !== undefined && others.length === 0;
  const words = measure.under === undefined || alike ? [] : [JOINTS[measure.under.bound]];
  for (const [bound, value] of others) words.push(`${value} if ${bound}`);
  // The values beside it say so themselves where there are any.
  if (measure.hangsOnStiffness && others.length === 0) words.push("hangs on joint stiffness");
  if (measure.soundAbove !== undefined)
    words.push(`sound where a plain 40 mm bracket is stiffer than ${measure.soundAbove.shown}`);
  return words.length > 0 ? words.join(", ") : undefined;
}

export const CAUTION = "A screening aid, not a stamp: local codes and a licensed engineer decide.";

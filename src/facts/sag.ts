import { sag } from "../mechanics/member/sag.ts";
import { valueAt } from "../mechanics/piecewise.ts";
import type { Quantity } from "../model/units/quantity.ts";
import { type Governed, governing } from "./governing.ts";
import type { View } from "./response.ts";
import type { Span } from "./spans.ts";

/** Largest distance of the bar from the line between the ends of a span; on an overhang, of its tip from where it is held, m. */
export function sagOf(view: View, bar: string, span: Span): number | undefined {
  const moved = view.deflections(bar);
  if (!moved) return undefined;
  if (span.kind === "between") return Math.abs(sag(moved, span.from, span.to).value);
  const tip = span.held === span.from ? span.to : span.from;
  return Math.hypot(
    valueAt(moved.y, tip) - valueAt(moved.y, span.held),
    valueAt(moved.z, tip) - valueAt(moved.z, span.held),
  );
}

/** Sag of one span as it governs under service loads. */
export function governedSag(views: readonly View[], bar: string, span: Span): Governed<"length"> | undefined {
  return governing(views, ["service"], "length" satisfies Quantity, (view) => sagOf(view, bar, span));
}

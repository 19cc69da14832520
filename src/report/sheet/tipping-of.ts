import { GRAVITY } from "../../facts/acting.ts";
import { factOf } from "../../facts/fact.ts";
import { type Tipping, type TippingLine, tipping } from "../../facts/tipping.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";

/** The line that a finding has the frame tip over; with how it stands there, where that is known again from what was said. */
export interface TippedOver {
  readonly over: TippingLine;
  readonly state: Tipping | undefined;
}

/** Distances that differ by no more are of one state, m. */
const SAME = 1e-6;

/** What a finding on tipping is about; undefined for other findings. */
export function tippingOf(frame: Frame, { rule, key, related, amounts, measure }: Finding): TippedOver | undefined {
  const found = factOf(tipping, frame);
  if (rule !== "frame.tips" || found.kind !== "stands") return undefined;
  if (key === "tilt") {
    const state = found.tilted();
    return { over: state, state };
  }
  const named = new Set(related.map(({ at }) => at.id));
  const over = found.lines.find(({ feet }) => feet.every(({ id }) => named.has(id)));
  const { inside, height, weight } = amounts;
  if (!over || !measure || inside === undefined || height === undefined || weight === undefined) return undefined;
  const pushed = found.pushed({ force: measure.limit, share: measure.limit / weight, height });
  const same = Math.abs(pushed.inside - inside) < SAME && Math.abs(pushed.mass * GRAVITY - weight) < weight * SAME;
  return { over, state: same ? pushed : undefined };
}

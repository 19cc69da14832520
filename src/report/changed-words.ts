import type { ChangedSetting } from "../inspection/report.ts";
import { listed } from "./count.ts";

/** More parts than these in one line help nobody; the machine reports name them all. */
const PARTS_NAMED = 5;

/** "slot-skew 2°, usually 1°, by the frame", "bar.sags off, usually hold, by the house". */
export function changedWords({ what, value, usual, by, parts }: ChangedSetting): string {
  const where = by === "part" ? `on ${listed(parts, PARTS_NAMED)}` : `by the ${by}`;
  return `${what} ${value}, usually ${usual}, ${where}`;
}

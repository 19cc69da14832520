import type { InspectedFrame, Inspection } from "../inspection/inspect-file.ts";
import type { AnyRule } from "../rules/shape/rule.ts";

/** What inspects: bytes in, a report with its frame out; pure, and the same in every thread. */
export interface Engine {
  /** The built-in rules. */
  readonly rules: readonly AnyRule[];
  inspect(inspection: Inspection): InspectedFrame;
}

import type { Inspection } from "../inspection/inspect-file.ts";
import type { Report } from "../inspection/report.ts";
import type { AnyRule } from "../rules/shape/rule.ts";

/** What inspects: bytes in, a report out; pure, and the same in every thread. */
export interface Engine {
  /** The built-in rules. */
  readonly rules: readonly AnyRule[];
  inspect(inspection: Inspection): Report;
}

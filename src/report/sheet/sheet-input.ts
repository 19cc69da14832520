import type { Report, RuleCard } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";

/** What a sheet is made from: the result of an inspection and, where the file could be read, the frame itself. */
export interface SheetInput {
  readonly report: Report;
  readonly frame?: Frame;
  readonly cards: readonly RuleCard[];
  /** The bytes that were inspected. */
  readonly bytes: Uint8Array;
  /** Name of the house file in force. */
  readonly house?: string;
  /** Of trysquare. */
  readonly version: string;
}

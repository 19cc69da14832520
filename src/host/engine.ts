import type { HouseInForce } from "../house/house-in-force.ts";
import type { Report } from "../inspection/report.ts";
import type { AnyRule } from "../rules/shape/rule.ts";

/** A stock file that a frame or a house names, as read. */
export interface StockBytes {
  readonly file: string;
  readonly bytes: Uint8Array;
}

export interface Inspection {
  /** The frame file's name in outputs. */
  readonly file: string;
  readonly bytes: Uint8Array;
  /** In the order they count: later files replace earlier parts of one name. */
  readonly stock: readonly StockBytes[];
  readonly house: HouseInForce;
  /** Called before each rule, so that a rule that never returns can be named. */
  readonly ruleStarts?: (rule: string) => void;
}

/** What inspects: bytes in, a report out; pure, and the same in every thread. */
export interface Engine {
  readonly rules: readonly AnyRule[];
  inspect(inspection: Inspection): Report;
}

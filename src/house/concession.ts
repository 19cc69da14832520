import type { Place } from "../model/problem.ts";

/** Permission to use what does not conform (ISO 9000:2015, 3.12.5): for named parts, for a reason, by somebody, until a date. */
export interface Concession {
  readonly rule: string;
  /** Message of the rule; absent when any message of the rule is meant. */
  readonly key?: string;
  /** Ids of the parts, as findings name them. */
  readonly at: readonly string[];
  /** The measured value when it was granted, rounded as it was printed: "8.1 mm". It lapses when the value gets worse. */
  readonly measured?: number | string;
  readonly reason: string;
  readonly who: string;
  /** Last day it holds, "2027-03-31". */
  readonly until: string;
  readonly place: Place;
}

/** A concession as a file has it: for which frames, by patterns relative to the file's folder; for all when there are none. */
export interface FiledConcession {
  readonly concession: Concession;
  readonly frames?: readonly string[];
}

import type { Ref } from "../model/ref.ts";

/** Something the geometry cannot settle: the author has to say which of several is meant. Reported as a problem of the file. */
export interface Question {
  readonly at: Ref;
  /** Member of the part's entry the answer belongs to, for example "ends". */
  readonly found: string;
  readonly expected: string;
  readonly mend: string;
}

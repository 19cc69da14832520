import type { Frame } from "../model/frame.ts";
import type { FrameFile } from "../model/generated/frame-file.generated.ts";
import type { Ref } from "../model/ref.ts";

/** A change to the frame file: the value at an RFC 6901 pointer; "/-" at the end of a list appends, undefined removes. */
export interface Edit {
  readonly pointer: string;
  readonly to: unknown;
}

/** One way to put a finding right, not yet tried. */
export interface Proposal {
  /** In words: "profile 40x80-8". */
  readonly words: string;
  readonly edits: readonly Edit[];
}

/** What is to be put right. */
export interface Ailment {
  readonly rule: string;
  readonly key: string;
  readonly at: Ref;
  readonly related: readonly Ref[];
  /** Demand over capacity, where the finding measures. */
  readonly utilisation: number | undefined;
}

/** The frame as it stands: resolved, and as its author wrote it. */
export interface Patient {
  readonly frame: Frame;
  readonly file: FrameFile;
  /** Where a part was written. */
  pointerOf(part: Ref): string;
}

/** A kind of change that may put findings right. It only proposes; the whole changed frame is inspected before it is offered. */
export interface Cure {
  readonly id: string;
  /** Tried in this order: what changes least first. */
  readonly turn: number;
  /** Rules whose findings it may mend. */
  readonly mends: readonly string[];
  propose(ailment: Ailment, patient: Patient): Iterable<Proposal>;
}

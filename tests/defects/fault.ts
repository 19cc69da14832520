import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";

/** Findings that follow from a fault beside the one it is planted for: rule or rule/message, and why they follow. */
export type Consequences = Readonly<Record<string, string>>;

/** How large a slip is made. */
export type Sizes =
  /** There or not there. */
  | "plain"
  /** Worked by hand: a hair beyond the limit, and far beyond, in the unit the edit takes. */
  | { readonly just: number; readonly far: number }
  /** Turned from a sound value to a faulty one until the rule just says no. */
  | { readonly sound: number; readonly faulty: number };

/** One slip of a draughtsman and where in the sound frames it is made. */
export interface Fault {
  readonly rule: string;
  /** The message that must be given. */
  readonly key: string;
  /** The slip in words. */
  readonly slip: string;
  /** Frame by frame the part it is made at; the edit knows what the words mean. */
  readonly spots: Readonly<Record<string, string>>;
  readonly sizes: Sizes;
  readonly consequences?: Consequences;
  /** Stock of the team that the frame uses, as text. */
  readonly stock?: string;
  /** Makes the slip; gives the parts of which each must bear or share a finding; none: any part may. */
  plant(file: FrameFile, spot: string, size: number, frame: string): readonly string[];
}

/** What a heavier load on the same path may bring with it before the rule in question speaks. */
export const OVERLOAD: Consequences = Object.fromEntries(
  [
    "bar.buckles",
    "bar.overstressed",
    "bar.sags",
    "bar.twists",
    "bar.weak-hole",
    "foot.overloaded",
    "frame.buckles",
    "frame.sways",
    "frame.tips",
    "frame.unbraced",
    "joint.hung",
    "joint.loosens",
    "joint.slips",
    "joint.turns/torsion",
    "joint.unclamped",
    "nut.pulls-out",
    "tie.slips",
  ].map((rule) => [rule, "everything under the load bears more"]),
);

import type { Source } from "../criteria/criterion.ts";
import type { Place, Problem } from "../model/problem.ts";
import type { Ref } from "../model/ref.ts";
import type { Quantity } from "../model/units/quantity.ts";
import type { UnitSystem } from "../model/units/unit-system.ts";
import type { Governing } from "../rules/shape/message.ts";
import type { Level } from "../rules/shape/rule.ts";

/** One thing a rule says is not as it should be: everything a reader or a machine needs, and no more work to do. */
export interface Finding {
  readonly rule: string;
  readonly key: string;
  readonly level: Level;
  readonly at: Ref;
  /** Where in the frame, in words: "rail-3, between leg-1 and leg-4". */
  readonly where: string;
  /** The sentence, in the frame's units, without the part's own name in front. */
  readonly text: string;
  /** The values of the sentence as printed, by slot name, in the order of the text. */
  readonly shown: Readonly<Record<string, string>>;
  /** The numbers it was said and worked out with, SI, by slot name. */
  readonly amounts: Readonly<Record<string, number>>;
  /** Other parts the sentence names, with their places. */
  readonly related: readonly { readonly at: Ref; readonly place: Place }[];
  readonly advice?: string;
  readonly measure?: Measure;
  readonly place: Place;
  /** Fingerprint of rule, message and parts: unchanged by reformatting, reordering or another value. */
  readonly print: string;
  readonly conceded?: { readonly reason: string; readonly who: string; readonly until: string };
  readonly cures: readonly CureOffered[];
}

export interface Measure {
  readonly quantity: Quantity;
  /** SI */
  readonly measured: number;
  /** SI */
  readonly limit: number;
  readonly sense: "at most" | "at least";
  /** Printed with enough digits that they differ. */
  readonly shown: { readonly measured: string; readonly limit: string };
  readonly from: Source;
  readonly basis: string;
  /** Demand over capacity; absent where the limit is zero. */
  readonly utilisation?: number;
  readonly under?: Governing;
  readonly otherBounds?: Readonly<Record<string, string>>;
  readonly hangsOnStiffness: boolean;
  /** How the value comes about: in symbols, and with figures as printed. */
  readonly working?: { readonly formula: string; readonly figures?: string };
  /** Joint stiffness from which the limit is kept, as that of a plain bracket of 40 mm pitch; where soft joints go beyond it and stiff ones do not. */
  readonly soundAbove?: { readonly stiffness: number; readonly shown: string };
}

/** A change to the file that was tried: the changed frame, inspected whole, lacks the finding and is nowhere worse. */
export interface CureOffered {
  readonly words: string;
  readonly edits: readonly { readonly pointer: string; readonly to: unknown }[];
  /** What the finding's value then is, as printed. */
  readonly after?: string;
}

/** How one rule came out over the whole frame. */
export interface Tally {
  readonly rule: string;
  readonly met: number;
  readonly notMet: number;
  readonly notApplicable: number;
  readonly undecided: number;
  /** The met judgement nearest its limit. */
  readonly closest?: {
    readonly at: Ref;
    readonly quantity: Quantity;
    readonly utilisation: number;
    readonly sense: "at most" | "at least";
    readonly measured: string;
    readonly limit: string;
  };
}

/** One judgement that was measured against a limit, met or not. */
export interface Margin {
  readonly rule: string;
  readonly at: Ref;
  readonly met: boolean;
  /** Demand over capacity. */
  readonly utilisation: number;
  readonly sense: "at most" | "at least";
  readonly measured: string;
  readonly limit: string;
  readonly under?: Governing;
}

/** A limit that is not at its usual value, or a rule not at its own level. */
export interface ChangedSetting {
  /** Name of the criterion, id of the rule, or "method". */
  readonly what: string;
  /** As it is, and as it usually is: in the units of the frame; levels, or "off". */
  readonly value: string;
  readonly usual: string;
  readonly by: "house" | "frame" | "part";
  /** Parts it holds for, where not for all. */
  readonly parts: readonly string[];
}

export interface Undecided {
  readonly why: string;
  readonly rules: readonly string[];
  readonly at: readonly Ref[];
  /** Whether it keeps the frame from accept. */
  readonly holds: boolean;
}

/** A rule or fact that failed: a fault of the tool or of a team's rule, never of the frame. */
export interface Failure {
  readonly rule?: string;
  readonly fact?: string;
  readonly at?: Ref;
  readonly message: string;
}

export type Verdict = "accept" | "hold" | "reject" | "unread";

/** The whole result of inspecting one file. */
export interface Report {
  readonly file: string;
  readonly title: string;
  readonly revision?: string;
  readonly units: UnitSystem;
  readonly verdict: Verdict;
  /** False when the file could not be read whole, or a rule or fact failed. */
  readonly complete: boolean;
  readonly counts: { readonly bars: number; readonly joints: number; readonly cases: number; readonly parts: number };
  /** What was wrong with the file itself. */
  readonly problems: readonly Problem[];
  /** Worst part first. */
  readonly findings: readonly Finding[];
  readonly undecided: readonly Undecided[];
  readonly tallies: readonly Tally[];
  /** Every measured judgement with its share of the limit; only when asked for. */
  readonly margins?: readonly Margin[];
  readonly failures: readonly Failure[];
  readonly assumed: readonly string[];
  /** What house, frame or parts set otherwise than usual. */
  readonly changed: readonly ChangedSetting[];
  /** Concessions that matched nothing, lapsed or ended, in words. */
  readonly concessionRemarks: readonly string[];
  /** Changed frames that were inspected in search of cures, and proposals left untried for want of budget. */
  readonly cureTrials: { readonly tried: number; readonly untried: number };
}

/** What a reporter must know of a rule in force. */
export interface RuleCard {
  readonly id: string;
  readonly title: string;
  readonly group: string;
  readonly level: Level;
  readonly basis: readonly string[];
  readonly messages: Readonly<
    Record<string, { readonly text: string; readonly overlap?: string; readonly advice?: string }>
  >;
  readonly criteria: readonly {
    readonly name: string;
    readonly quantity: Quantity;
    readonly standard: string;
    /** Smallest and largest value that may be set, as the criterion writes them. */
    readonly within?: readonly [string, string];
    readonly about: string;
    readonly basis: string;
  }[];
}

/** Turns reports into a stream of text; pure, and holds one report at a time. */
export interface Reporter {
  begin(rules: readonly RuleCard[]): Iterable<string>;
  frame(report: Report): Iterable<string>;
  end(): Iterable<string>;
}

// Generated from schema/ by `npm run generate`; do not edit.

/**
 * This interface was referenced by `ReportFile`'s JSON-Schema
 * via the `definition` "level".
 */
export type Level = ("note" | "hold" | "reject")
/**
 * This interface was referenced by `ReportFile`'s JSON-Schema
 * via the `definition` "tallyCount".
 */
export type TallyCount = number
/**
 * This interface was referenced by `ReportFile`'s JSON-Schema
 * via the `definition` "sourceOfLimit".
 */
export type SourceOfLimit = ("default" | "stock" | "house" | "frame" | "part" | "computed")
/**
 * Assumed joint stiffness; tested where a test backs it.
 * 
 * This interface was referenced by `ReportFile`'s JSON-Schema
 * via the `definition` "bound".
 */
export type Bound = ("tested" | "soft" | "typical" | "stiff")

/**
 * What `trysquare inspect --as json` writes, format 1. A reader ignores properties it does not know: a minor version only adds. Numbers are in SI units (m, N, kg, s, rad, Pa); texts are in the units of the frame.
 */
export interface ReportFile {
/**
 * Version of this format.
 */
formatVersion: string
tool: {
name: "trysquare"
version: string
}
/**
 * Why the run as a whole could not do what was asked; empty when it could.
 */
faults: string[]
/**
 * The rules in force.
 */
rules: RuleCard[]
/**
 * One entry per file, in the order of their names.
 */
frames: Frame[]
total: {
frames: TallyCount
findings: TallyCount
accept: TallyCount
hold: TallyCount
reject: TallyCount
unread: TallyCount
}
}
/**
 * This interface was referenced by `ReportFile`'s JSON-Schema
 * via the `definition` "ruleCard".
 */
export interface RuleCard {
id: string
title: string
group: string
level: Level
basis: string[]
messages: {
[k: string]: {
text: string
advice?: string
} | undefined
}
criteria: {
name: string
quantity: string
standard: string
/**
 * @minItems 2
 * @maxItems 2
 */
within?: [string, string]
about: string
basis: string
}[]
}
/**
 * This interface was referenced by `ReportFile`'s JSON-Schema
 * via the `definition` "frame".
 */
export interface Frame {
file: string
title: string
revision?: string
units: ("mm-N-kg" | "in-lbf-lb")
verdict: ("accept" | "hold" | "reject" | "unread")
/**
 * False when the file could not be read whole, or a rule or fact failed.
 */
complete: boolean
counts: {
bars: TallyCount
joints: TallyCount
cases: TallyCount
parts: TallyCount
}
problems: Problem[]
/**
 * Worst part first.
 */
findings: Finding[]
undecided: {
why: string
rules: string[]
at: Part[]
/**
 * Whether it keeps the frame from accept.
 */
holds: boolean
}[]
/**
 * How each rule came out.
 */
rules: {
rule: string
met: TallyCount
notMet: TallyCount
notApplicable: TallyCount
undecided: TallyCount
closest?: {
at: Part
utilisation: number
measured: string
limit: string
sense: ("at most" | "at least")
}
}[]
/**
 * Faults of the tool or of a team's rule, never of the frame.
 */
failures: {
rule?: string
fact?: string
at?: Part
message: string
}[]
assumed: string[]
/**
 * Limits that are not at their usual value, and rules not at their own level.
 */
changed: {
/**
 * Name of the criterion, or id of the rule.
 */
what: string
/**
 * In the units of the frame; of a rule a level, or off.
 */
value: string
usual: string
by: ("house" | "frame" | "part")
/**
 * Parts it holds for; none: all.
 */
parts: string[]
}[]
/**
 * Changed frames inspected in search of cures, and proposals left untried.
 */
cureTrials: {
tried: TallyCount
untried: TallyCount
}
/**
 * Concessions that matched nothing, lapsed or ended.
 */
concessions: string[]
}
/**
 * What is wrong with the file itself.
 * 
 * This interface was referenced by `ReportFile`'s JSON-Schema
 * via the `definition` "problem".
 */
export interface Problem {
code: string
weight: ("error" | "warning")
place: Place
found: string
expected: string
mend?: string
}
/**
 * Where in a file. Lines and columns start at 1, columns count UTF-16 units, the end is exclusive.
 * 
 * This interface was referenced by `ReportFile`'s JSON-Schema
 * via the `definition` "place".
 */
export interface Place {
file: string
/**
 * RFC 6901.
 */
pointer: string
line: number
column: number
endLine: number
endColumn: number
}
/**
 * This interface was referenced by `ReportFile`'s JSON-Schema
 * via the `definition` "finding".
 */
export interface Finding {
rule: string
message: string
level: Level
at: Part
where: string
text: string
/**
 * The values of the sentence, as printed.
 */
shown: {
[k: string]: string | undefined
}
related: {
at: Part
place: Place
}[]
advice?: string
measure?: Measure
place: Place
/**
 * The same as long as rule, message and parts are: never made from lines or values.
 */
fingerprint: string
conceded?: {
reason: string
who: string
until: string
}
cures: Cure[]
}
/**
 * A part or sub-part of the frame.
 * 
 * This interface was referenced by `ReportFile`'s JSON-Schema
 * via the `definition` "part".
 */
export interface Part {
kind: string
id: string
}
/**
 * This interface was referenced by `ReportFile`'s JSON-Schema
 * via the `definition` "measure".
 */
export interface Measure {
quantity: string
/**
 * SI.
 */
measured: number
/**
 * SI.
 */
limit: number
sense: ("at most" | "at least")
shown: {
measured: string
limit: string
}
from: SourceOfLimit
basis: string
/**
 * Demand over capacity; absent where the limit is zero.
 */
utilisation?: number
under?: {
combination: string
bound: Bound
}
otherBounds?: {
[k: string]: string | undefined
}
hangsOnStiffness: boolean
/**
 * How the value comes about: in symbols, and with figures in the units of the frame, which give it.
 */
working?: {
formula: string
figures?: string
}
/**
 * Joint stiffness from which the limit is kept, as that of a plain bracket of 40 mm pitch.
 */
soundAbove?: {
/**
 * N·m/rad.
 */
stiffness: number
shown: string
}
}
/**
 * This interface was referenced by `ReportFile`'s JSON-Schema
 * via the `definition` "cure".
 */
export interface Cure {
words: string
edits: {
pointer: string
to: unknown
}[]
/**
 * The value after the cure.
 */
after?: string
}

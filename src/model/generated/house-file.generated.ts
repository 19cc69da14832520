// Generated from schema/ by `npm run generate`; do not edit.

/**
 * A file, relative to this one, with forward slashes.
 * 
 * This interface was referenced by `HouseFile`'s JSON-Schema
 * via the `definition` "path".
 */
export type Path = string
/**
 * How strength is judged where a frame does not say: partial-factors (usual) or allowable-stress.
 * 
 * This interface was referenced by `HouseFile`'s JSON-Schema
 * via the `definition` "method".
 */
export type Method = ("partial-factors" | "allowable-stress")
/**
 * A limit: a value, a share of the span ("span / 300"), or a value with its basis.
 * 
 * This interface was referenced by `HouseFile`'s JSON-Schema
 * via the `definition` "criterion".
 */
export type Criterion = ((number | string) | {
value: (number | string)
/**
 * Where the limit comes from.
 */
basis: string
})
/**
 * Id of a rule; `trysquare rules` lists them.
 * 
 * This interface was referenced by `HouseFile`'s JSON-Schema
 * via the `definition` "ruleId".
 */
export type RuleId = string

/**
 * A team's choices, format 1: which rules, how strict, which limits, own rules, stock and concessions. Paths are relative to this file.
 */
export interface HouseFile {
/**
 * Where an editor finds this schema.
 */
$schema?: string
/**
 * The version of this file format: 1.
 */
format: 1
/**
 * Free words for the reader of the file.
 */
notes?: (string | string[])
/**
 * House files whose choices hold where this file does not say otherwise; later ones before earlier ones.
 */
basedOn?: Path[]
method?: Method
criteria?: Criteria
strictness?: Strictness
/**
 * Other choices for some of the frame files; later areas before earlier ones.
 */
areas?: Area[]
/**
 * Modules with rules of the team. They are run only when the command line names the house file.
 */
rules?: Path[]
/**
 * Stock files of the team, for every frame; a frame's own come after them.
 */
stock?: Path[]
/**
 * A file, relative to this one, with forward slashes.
 */
concessions?: string
}
/**
 * Limits used instead of the usual ones, by criterion name.
 * 
 * This interface was referenced by `HouseFile`'s JSON-Schema
 * via the `definition` "criteria".
 */
export interface Criteria {
[k: string]: Criterion | undefined
}
/**
 * How strict to be about rules, by id.
 * 
 * This interface was referenced by `HouseFile`'s JSON-Schema
 * via the `definition` "strictness".
 */
export interface Strictness {
[k: string]: "note" | "hold" | "reject" | "off" | undefined
}
/**
 * Choices for some frame files.
 * 
 * This interface was referenced by `HouseFile`'s JSON-Schema
 * via the `definition` "area".
 */
export interface Area {
/**
 * Patterns of frame files, relative to this file: * stands for any part of a name, ** for any folders.
 * 
 * @minItems 1
 */
frames: [string, ...(string)[]]
method?: Method
criteria?: Criteria
strictness?: Strictness
}

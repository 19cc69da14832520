// Generated from schema/ by `npm run generate`; do not edit.

/**
 * Concessions of a team, format 1: findings that are let through for a reason, by somebody, until a date. They stay in every report.
 */
export interface ConcessionsFile {
/**
 * Where an editor finds this schema.
 */
$schema?: string
/**
 * The version of this file format: 1.
 */
format: 1
/**
 * The concessions.
 */
concessions: Concession[]
}
/**
 * Permission for one finding.
 * 
 * This interface was referenced by `ConcessionsFile`'s JSON-Schema
 * via the `definition` "concession".
 */
export interface Concession {
/**
 * Id of the rule.
 */
rule: string
/**
 * Which message of the rule; any of them when left out.
 */
message?: string
/**
 * Ids of the parts, as findings name them.
 * 
 * @minItems 1
 */
at: [string, ...(string)[]]
/**
 * Patterns of frame files, relative to this file; every frame of the house when left out.
 * 
 * @minItems 1
 */
frames?: [string, ...(string)[]]
/**
 * The measured value when it was granted, as the report printed it. The concession lapses when the value gets worse.
 */
measured?: (number | string)
/**
 * Why it may stay so.
 */
reason: string
/**
 * Who granted it.
 */
who: string
/**
 * The last day it holds, as year-month-day.
 */
until: string
}

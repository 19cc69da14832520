/**
 * What a team needs to write its own rules: the same functions that the built-in rules are made and proven with, and all facts.
 * A module of rules exports them; a house file lists the module.
 */
export type { Criteria, Criterion, Given, GivenAll, Limit, Source } from "./criteria/criterion.ts";
export { defineCriterion } from "./criteria/criterion.ts";
export type { Fact, Known, Needs } from "./facts/fact.ts";
export { defineFact } from "./facts/fact.ts";
export * as facts from "./facts/index.generated.ts";
export type { ExpectedFinding, ProofRow } from "./inspection/prove-rule.ts";
export { proveRule } from "./inspection/prove-rule.ts";
export type { Bar, Frame } from "./model/frame.ts";
export type { FrameFile } from "./model/generated/frame-file.generated.ts";
export type { EndName, Kind, Ref } from "./model/ref.ts";
export { endRef, frameRef, ref } from "./model/ref.ts";
export type { Quantity, Si } from "./model/units/quantity.ts";
export { si } from "./model/units/quantity.ts";
export type { Judgement, Say } from "./rules/shape/judgement.ts";
export { notApplicable, undecided } from "./rules/shape/judgement.ts";
export type { Governing, Measurement, Message, Messages, Values } from "./rules/shape/message.ts";
export type { AnyRule, Level, Rule } from "./rules/shape/rule.ts";
export { defineRule } from "./rules/shape/rule.ts";

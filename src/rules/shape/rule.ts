import type { Criteria, GivenAll } from "../../criteria/criterion.ts";
import type { Known, Needs } from "../../facts/fact.ts";
import type { Judgement, Say } from "./judgement.ts";
import type { Messages } from "./message.ts";

/** A note hangs on an assumption or could be better; a hold is beyond a limit of practice; a reject falls, jams or injures. */
export type Level = "note" | "hold" | "reject";

export const groups = ["bars", "frame", "stands", "joints", "access and build", "safety", "panels", "drawing"] as const;
export type RuleGroup = (typeof groups)[number];

/** Everything about one thing that can go wrong: how it is judged, from what, against which limits, and in which words. */
export interface Rule<N extends Needs = Needs, C extends Criteria = Criteria, M extends Messages = Messages> {
  /** `<thing>.<condition>`, for ever; a team's own carry a prefix: "acme:joint.gusset-gap". */
  readonly id: string;
  /** The state of a sound frame, as a sentence: "Cut ends are covered". */
  readonly title: string;
  readonly group: RuleGroup | (string & {});
  readonly level: Level;
  readonly basis: readonly string[];
  readonly needs: N;
  readonly criteria: C;
  readonly messages: M;
  inspect(known: Known<N>, given: GivenAll<C>, say: Say<M>): Iterable<Judgement>;
}

/** A rule as the engine holds it, its types forgotten. */
export interface AnyRule extends Omit<Rule, "inspect"> {
  readonly api: 1;
  readonly inspect: (known: never, given: never, say: never) => Iterable<Judgement>;
}

/** Declares a rule; built-in rules and a team's own are made by the same function. */
export function defineRule<const N extends Needs, const C extends Criteria, const M extends Messages>(
  rule: Rule<N, C, M>,
): AnyRule {
  return Object.freeze({ ...rule, inspect: rule.inspect as AnyRule["inspect"], api: 1 as const });
}

import type { Limited } from "../criteria/read-limit.ts";
import type { Level } from "../rules/shape/rule.ts";

/** What a house must know of a rule to speak about it. */
export interface KnownRule {
  readonly id: string;
  readonly level: Level;
  readonly criteria: readonly Limited[];
}

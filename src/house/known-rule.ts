import type { Quantity } from "../model/units/quantity.ts";
import type { Level } from "../rules/shape/rule.ts";

/** What a house must know of a rule to speak about it. */
export interface KnownRule {
  readonly id: string;
  readonly level: Level;
  readonly criteria: readonly { readonly name: string; readonly quantity: Quantity; readonly standard: string }[];
}

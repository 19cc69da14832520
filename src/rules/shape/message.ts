import type { Limit } from "../../criteria/criterion.ts";
import type { Ref } from "../../model/ref.ts";
import type { Quantity, Si } from "../../model/units/quantity.ts";

/** What a slot of a message may hold besides a quantity: a reference of that kind, a part of any kind, or plain words. */
interface Words {
  bar: Ref<"bar">;
  end: Ref<"end">;
  joint: Ref<"joint">;
  connector: Ref<"connector">;
  screw: Ref<"screw">;
  nut: Ref<"nut">;
  panel: Ref<"panel">;
  stand: Ref<"stand">;
  part: Ref;
  parts: readonly Ref[];
  word: string;
}
type Word<S> = S extends Quantity ? Si<S> : S extends keyof Words ? Words[S] : never;

/** "the {end:end} is open: {area:area}" → { end: Ref<"end">, area: Si<"area"> } */
export type Values<T extends string> = T extends `${string}{${infer N}:${infer S}}${infer R}`
  ? { readonly [K in N]: Word<S> } & Values<R>
  : unknown;

/** The formula of a measured value in symbols; and the same with its figures in typed slots, which gives that value. */
export interface Working {
  readonly formula: string;
  readonly figures?: string;
}

/**
 * What a rule can say. Text holds typed slots, so that nothing is written for what passes and a value prints in the
 * frame's own units. A message that measures is compared by the engine, never by the rule.
 */
export interface Message {
  readonly text: string;
  /**
   * Said in place of the text where the measured value is below nought, as of parts that run into each other: holds slots of
   * the text, of which the measured one prints without its sign.
   */
  readonly overlap?: string;
  /** In words, what would put it right; may hold slots of the text. */
  readonly advice?: string;
  /** The advice with its figures: said in its place where the rule gives what its slots hold. */
  readonly exact?: string;
  readonly measures?: Quantity;
  readonly sense?: "at most" | "at least";
  /** How the measured value comes about: shown where a finding is looked into. */
  readonly working?: Working;
  /** Overrides the rule's level for this message. */
  readonly level?: "note" | "hold" | "reject";
}
export type Messages = Readonly<Record<string, Message>>;

/** Which combination of load cases and which assumed joint stiffness governs a value. */
export interface Governing {
  readonly combination: string;
  readonly bound: "tested" | "soft" | "typical" | "stiff";
}

export interface Measurement<Q extends Quantity = Quantity> {
  readonly measured: Si<Q>;
  readonly limit: Limit<Q>;
  readonly under?: Governing;
  /** The same value for the other joint stiffnesses. */
  readonly otherBounds?: Readonly<Record<string, Si<Q>>>;
}

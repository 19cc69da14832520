import type { Ref } from "../../model/ref.ts";
import type { Quantity } from "../../model/units/quantity.ts";
import type { Measurement, Message, Messages, Values } from "./message.ts";

/** What a rule yields: one judgement of one part. The engine compares, levels and words it. */
export type Judgement =
  | {
      readonly kind: "measured";
      readonly at: Ref;
      readonly key: string;
      readonly values: object;
      readonly m: Measurement;
    }
  | { readonly kind: "stated"; readonly at: Ref; readonly key: string; readonly values: object; readonly met: boolean }
  | { readonly kind: "not applicable" | "undecided"; readonly at: Ref; readonly why: string };

type SayOf<M extends Message> = M extends { readonly measures: infer Q extends Quantity }
  ? (at: Ref, values: Values<M["text"]>, m: Measurement<Q>) => Judgement
  : (at: Ref, values: Values<M["text"]>, met: boolean) => Judgement;

/** One function for each message of the rule: an unknown message, a missing value or a wrong quantity does not compile. */
export type Say<M extends Messages> = { readonly [K in keyof M]: SayOf<M[K]> };

export function notApplicable(at: Ref, why: string): Judgement {
  return { kind: "not applicable", at, why };
}

/** The rule could not decide; `lacks` says what was missing. Never the same as a pass. */
export function undecided(at: Ref, lacks: string): Judgement {
  return { kind: "undecided", at, why: lacks };
}

/** Makes the functions of `Say` for the messages of a rule. */
export function sayFor<M extends Messages>(messages: M): Say<M> {
  const say: Record<string, unknown> = {};
  for (const [key, message] of Object.entries(messages)) {
    say[key] = message.measures
      ? (at: Ref, values: object, m: Measurement): Judgement => ({ kind: "measured", at, key, values, m })
      : (at: Ref, values: object, met: boolean): Judgement => ({ kind: "stated", at, key, values, met });
  }
  return say as Say<M>;
}

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

type Figures<M extends Message> = M extends { readonly working: { readonly figures: infer F extends string } }
  ? Values<F>
  : unknown;
/** Either all that the exact advice holds, or nothing of it but what the text holds as well. */
type Exact<M extends Message> = M extends { readonly exact: infer T extends string }
  ? Values<T> | { readonly [K in Exclude<keyof Values<T>, keyof Values<M["text"]>>]?: never }
  : unknown;
type SayOf<M extends Message> = M extends { readonly measures: infer Q extends Quantity }
  ? (at: Ref, values: Values<M["text"]> & Figures<M> & Exact<M>, m: Measurement<Q>) => Judgement
  : (at: Ref, values: Values<M["text"]> & Exact<M>, met: boolean) => Judgement;

/** One function for each message of the rule: an unknown message, a missing value or a wrong quantity does not compile. */
export type Say<M extends Messages> = { readonly [K in keyof M]: SayOf<M[K]> };

export function notApplicable(at: Ref, why: string): Judgement {
  return { kind: "not applicable", at, why };
}

/** The rule could not decide; `lacks` says what was missing. Never the same as a pass. */
export function undecided(at: Ref, lacks: string): Judgement {
  return { kind: "undecided", at, why: lacks };
}

function isObject(value: unknown): boolean {
  return typeof value === "object" && value !== null;
}

/** Rules of a team may be plain JavaScript, in which no compiler asks for what is missing. */
function whole(key: string, at: unknown, values: unknown): void {
  if (!isObject(at)) throw new Error(`say.${key} lacks the part it speaks of`);
  if (!isObject(values)) throw new Error(`say.${key} lacks its values: it takes a part and an object that holds them`);
}

/** Makes the functions of `Say` for the messages of a rule. */
export function sayFor<M extends Messages>(messages: M): Say<M> {
  const say: Record<string, unknown> = {};
  for (const [key, message] of Object.entries(messages)) {
    say[key] = message.measures
      ? (at: Ref, values: object, m: Measurement): Judgement => {
          whole(key, at, values);
          if (!isObject(m))
            throw new Error(`say.${key} lacks what was measured: it takes a part, values and { measured, limit }`);
          return { kind: "measured", at, key, values, m };
        }
      : (at: Ref, values: object, met: boolean): Judgement => {
          whole(key, at, values);
          return { kind: "stated", at, key, values, met };
        };
  }
  return say as Say<M>;
}

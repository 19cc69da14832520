import { keeps, utilisation } from "../criteria/keeps.ts";
import { soundAbove } from "../facts/sound-above.ts";
import type { Frame } from "../model/frame.ts";
import type { Place } from "../model/problem.ts";
import type { Ref } from "../model/ref.ts";
import { formatPair, formatQuantity } from "../model/units/format-quantity.ts";
import type { Judgement } from "../rules/shape/judgement.ts";
import type { Measurement, Message } from "../rules/shape/message.ts";
import type { AnyRule, Level } from "../rules/shape/rule.ts";
import { fingerprint } from "./fingerprint.ts";
import type { Finding, Margin, Measure } from "./report.ts";
import { fill } from "./sentence.ts";

/** A judgement whose value is wanted even when it is met. */
export interface Watch {
  readonly rule: string;
  readonly key: string;
  readonly at: string;
}

/** What is the same for all findings of one frame. */
export interface Setting {
  readonly frame: Frame;
  place(at: Ref): Place;
  where(at: Ref): string;
  readonly watch?: Watch;
  /** Filled with the value under watch, as printed. */
  readonly watched: string[];
  /** Filled with every measured judgement, where they are wanted. */
  readonly margins?: Margin[];
}

function measureOf(
  frame: Frame,
  rule: AnyRule,
  judgement: Judgement & { readonly kind: "measured" },
): Measure | undefined {
  const message = rule.messages[judgement.key];
  if (!message?.measures) return undefined;
  const { measured, limit, under, otherBounds } = judgement.m;
  const sense = message.sense ?? "at most";
  const quantity = message.measures;
  const share = utilisation(measured, limit.value, sense);
  const others =
    otherBounds &&
    Object.fromEntries(
      Object.entries(otherBounds).map(([bound, value]) => [bound, formatQuantity(value, quantity, frame.units)]),
    );
  return {
    quantity,
    measured,
    limit: limit.value,
    sense,
    shown: formatPair(measured, limit.value, quantity, frame.units),
    from: limit.from,
    basis: limit.basis,
    ...(share === undefined ? {} : { utilisation: share }),
    ...(under ? { under } : {}),
    ...(others ? { otherBounds: others } : {}),
    hangsOnStiffness: hangs(judgement.m, sense),
    ...soundFrom(judgement.m, sense, frame),
    ...workingOf(message, judgement.values, frame),
  };
}

function workingOf({ working }: Message, values: object, frame: Frame): Pick<Measure, "working"> {
  if (!working) return {};
  const { formula, figures } = working;
  return {
    working: { formula, ...(figures === undefined ? {} : { figures: fill(figures, values, frame.units).text }) },
  };
}

function soundFrom(
  { measured, limit, under, otherBounds }: Measurement,
  sense: "at most" | "at least",
  frame: Frame,
): Pick<Measure, "soundAbove"> {
  if (!under) return {};
  const values: Readonly<Record<string, number>> = { ...otherBounds, [under.bound]: measured };
  const { soft, typical, stiff } = values;
  if (soft === undefined || typical === undefined || stiff === undefined) return {};
  const stiffness = soundAbove({ soft, typical, stiff }, limit.value, sense);
  if (stiffness === undefined) return {};
  return { soundAbove: { stiffness, shown: formatQuantity(stiffness, "rotationalStiffness", frame.units) } };
}

/** Whether the limit is kept with one joint stiffness and not with another. */
export function hangs({ measured, limit, otherBounds }: Measurement, sense: "at most" | "at least"): boolean {
  const kept = keeps(measured, limit.value, sense);
  return Object.values(otherBounds ?? {}).some((other) => keeps(other, limit.value, sense) !== kept);
}

/** The exact advice of a message where the rule gave all it holds. */
function exactly({ exact }: Message, values: object): string | undefined {
  const slots = [...(exact ?? "").matchAll(/\{(\w+):/g)].map(([, name]) => name ?? "");
  const given = new Map<string, unknown>(Object.entries(values));
  return slots.every((name) => given.get(name) !== undefined) ? exact : undefined;
}

/** Words a judgement that is not met, with its place, numbers and fingerprint. */
export function finding(
  setting: Setting,
  rule: AnyRule,
  strict: Level | undefined,
  judgement: Judgement & { readonly kind: "measured" | "stated" },
): Finding {
  const { frame } = setting;
  const message = rule.messages[judgement.key];
  if (!message) throw new Error(`${rule.id} has no message "${judgement.key}"`);
  const measure = judgement.kind === "measured" ? measureOf(frame, rule, judgement) : undefined;
  const shown = measure?.shown.measured ?? "";
  const overlaps = message.overlap !== undefined && shown.startsWith("-");
  const said = fill(
    overlaps ? message.overlap : message.text,
    judgement.values,
    frame.units,
    measure && { value: measure.measured, quantity: measure.quantity, shown: overlaps ? shown.slice(1) : shown },
  );
  const advised = exactly(message, judgement.values) ?? message.advice;
  const advice = advised && fill(advised, judgement.values, frame.units).text;
  const { at } = judgement;
  const others = said.parts.filter((part) => part.id !== at.id);
  return {
    rule: rule.id,
    key: judgement.key,
    level: strict ?? message.level ?? rule.level,
    at,
    where: setting.where(at),
    text: said.text,
    shown: said.shown,
    amounts: Object.fromEntries(Object.entries(judgement.values).filter(([, value]) => typeof value === "number")),
    related: others.map((part) => ({ at: part, place: setting.place(part) })),
    ...(advice === undefined ? {} : { advice }),
    ...(measure ? { measure } : {}),
    place: setting.place(at),
    print: fingerprint(rule.id, judgement.key, [at, ...others]),
    cures: [],
  };
}

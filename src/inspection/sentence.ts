import type { Ref } from "../model/ref.ts";
import { formatQuantity } from "../model/units/format-quantity.ts";
import type { Quantity } from "../model/units/quantity.ts";
import type { UnitSystem } from "../model/units/unit-system.ts";

/** Parts a sentence names before it only counts the rest. */
const NAMED = 6;
const SLOT = /\{(\w+):(\w+)\}/g;

const quantities: ReadonlySet<string> = new Set<Quantity>([
  "length",
  "area",
  "sectionModulus",
  "secondMoment",
  "angle",
  "force",
  "moment",
  "stress",
  "pressure",
  "lineLoad",
  "mass",
  "lineMass",
  "massDensity",
  "frequency",
  "velocity",
  "temperature",
  "stiffness",
  "rotationalStiffness",
  "ratio",
  "count",
]);

function isRef(value: unknown): value is Ref {
  return typeof value === "object" && value !== null && "kind" in value && "id" in value;
}

function list(refs: readonly Ref[]): string {
  const names = refs.slice(0, NAMED).map((part) => part.id);
  const rest = refs.length - names.length;
  if (rest > 0) return `${names.join(", ")} and ${rest} more`;
  const last = names.pop() ?? "";
  return names.length === 0 ? last : `${names.join(", ")} and ${last}`;
}

function show(value: unknown, kind: string, units: UnitSystem): string {
  if (typeof value === "number" && quantities.has(kind)) return formatQuantity(value, kind as Quantity, units);
  if (isRef(value)) return value.id;
  if (Array.isArray(value)) return list(value.filter(isRef));
  if (typeof value === "string") return value;
  throw new Error(`a message wants ${kind} and was given ${typeof value}`);
}

export interface Sentence {
  readonly text: string;
  readonly shown: Readonly<Record<string, string>>;
  readonly parts: readonly Ref[];
}

/**
 * Fills a message. The slot that holds the measured value prints as it is compared: with the digits that tell it from its limit.
 * @throws Error where a value is missing or of the wrong kind: a fault of the rule.
 */
export function fill(
  template: string,
  values: object,
  units: UnitSystem,
  measured?: { readonly value: number; readonly quantity: Quantity; readonly shown: string },
): Sentence {
  const given = new Map(Object.entries(values));
  const shown: Record<string, string> = {};
  const parts: Ref[] = [];
  const text = template.replace(SLOT, (_, name: string, kind: string) => {
    const value = given.get(name);
    if (value === undefined) throw new Error(`a message lacks its ${name}`);
    const same = measured && value === measured.value && kind === measured.quantity;
    const words = same ? measured.shown : show(value, kind, units);
    shown[name] = words;
    if (isRef(value)) parts.push(value);
    else if (Array.isArray(value)) for (const part of value) if (isRef(part)) parts.push(part);
    return words;
  });
  return { text, shown, parts };
}

import type { Choice, CriterionSetting, FaceChoice, Triple } from "../frame.ts";
import type { Choice as ChoiceFile, Criteria, Direction, Face } from "../generated/frame-file.generated.ts";
import { plausible, type Role } from "../units/plausibility.ts";
import type { Quantity, Si } from "../units/quantity.ts";
import { readQuantity } from "../units/read-quantity.ts";
import { asWritten, countOne, refuse, type Work, warn } from "./work.ts";

/** One slip in a unit makes every number doubtful: more of one role than this are not told. */
const DOUBTS_PER_ROLE = 5;

/** A value in SI; complains and gives undefined when it cannot be read, warns where no frame has such a value. */
export function quantity<Q extends Quantity>(
  work: Work,
  raw: number | string,
  kind: Q,
  pointer: string,
  role?: Role,
): Si<Q> | undefined {
  const reading = readQuantity(raw, kind, work.units);
  if (!("si" in reading)) {
    refuse(work, "wrong-quantity", pointer, reading);
    return undefined;
  }
  if (role !== undefined) doubt(work, reading.si, role, pointer);
  return reading.si;
}

export function doubt(work: Work, si: number, role: Role, pointer: string): void {
  const reason = plausible(si, role, work.units);
  if (reason !== undefined && countOne(work, `doubt: ${role}`) < DOUBTS_PER_ROLE) {
    warn(work, "doubtful-value", pointer, reason);
  }
}

/** A value above zero. */
export function positive<Q extends Quantity>(
  work: Work,
  raw: number | string,
  kind: Q,
  pointer: string,
  role?: Role,
): Si<Q> | undefined {
  const value = quantity(work, raw, kind, pointer, role);
  if (value === undefined || value > 0) return value;
  refuse(work, "not-positive", pointer, { found: asWritten(raw), expected: "more than 0" });
  return undefined;
}

/** A value of zero or more. */
export function notNegative<Q extends Quantity>(
  work: Work,
  raw: number | string,
  kind: Q,
  pointer: string,
  role?: Role,
): Si<Q> | undefined {
  const value = quantity(work, raw, kind, pointer, role);
  if (value === undefined || value >= 0) return value;
  refuse(work, "negative", pointer, { found: asWritten(raw), expected: "0 or more" });
  return undefined;
}

/** Several values, or undefined when one of them cannot be read. */
export function quantities<Q extends Quantity>(
  work: Work,
  raw: readonly (number | string)[],
  kind: Q,
  pointer: string,
  read: typeof quantity = quantity,
  role?: Role,
): readonly Si<Q>[] | undefined {
  const values: Si<Q>[] = [];
  for (const [index, one] of raw.entries()) {
    const value = read(work, one, kind, `${pointer}/${index}`, role);
    if (value !== undefined) values.push(value);
  }
  return values.length === raw.length ? Object.freeze(values) : undefined;
}

export function pair<Q extends Quantity>(values: readonly Si<Q>[] | undefined): readonly [Si<Q>, Si<Q>] | undefined {
  const [a, b] = values ?? [];
  return a === undefined || b === undefined ? undefined : Object.freeze([a, b] as const);
}

export function triple(x: number, y: number, z: number): Triple {
  return Object.freeze([x, y, z] as const);
}

/** A point in m. */
export function point(
  work: Work,
  raw: readonly [number | string, number | string, number | string],
  pointer: string,
): Triple | undefined {
  const x = quantity(work, raw[0], "length", `${pointer}/0`, "coordinate");
  const y = quantity(work, raw[1], "length", `${pointer}/1`, "coordinate");
  const z = quantity(work, raw[2], "length", `${pointer}/2`, "coordinate");
  return x === undefined || y === undefined || z === undefined ? undefined : triple(x, y, z);
}

const GLOBAL: ReadonlyMap<string, Triple> = new Map([
  ["+x", triple(1, 0, 0)],
  ["-x", triple(-1, 0, 0)],
  ["+y", triple(0, 1, 0)],
  ["-y", triple(0, -1, 0)],
  ["+z", triple(0, 0, 1)],
  ["-z", triple(0, 0, -1)],
]);

/** A unit vector as a word where it has one, else as [x, y, z]. */
export function directionWords(direction: Triple): string {
  const rounded = direction.map((value) => Math.round(value * 1e6) / 1e6);
  for (const [word, one] of GLOBAL) if (one.every((value, axis) => value === rounded[axis])) return word;
  return `[${rounded.map((value) => value + 0).join(", ")}]`;
}

/** A unit vector; complains about one without length. */
export function direction(work: Work, raw: Direction, pointer: string): Triple | undefined {
  if (typeof raw === "string") return GLOBAL.get(raw);
  // Scaled first: the squares of very large or small components would overflow or vanish.
  const scale = Math.max(Math.abs(raw[0]), Math.abs(raw[1]), Math.abs(raw[2]));
  if (scale === 0) {
    refuse(work, "zero-vector", pointer, { found: "[0, 0, 0]", expected: "a direction with a length" });
    return undefined;
  }
  const [x, y, z] = [raw[0] / scale, raw[1] / scale, raw[2] / scale];
  const length = Math.sqrt(x * x + y * y + z * z);
  return triple(x / length, y / length, z / length);
}

export function directionChoice(direction: Triple): {
  readonly by: "direction";
  readonly direction: Triple;
  readonly written: string;
} {
  return Object.freeze({ by: "direction", direction, written: directionWords(direction) });
}

const FACES: ReadonlyMap<Face, FaceChoice> = new Map<Face, FaceChoice>([
  ...(["+x", "-x", "+y", "-y", "+z", "-z"] as const).map((word): [Face, FaceChoice] => [
    word,
    directionChoice(GLOBAL.get(word) ?? triple(0, 0, 1)),
  ]),
  ...(["above", "below", "inner", "outer"] as const).map((word): [Face, FaceChoice] => [
    word,
    Object.freeze({ by: "word", word }),
  ]),
  ...(["A", "B", "C", "D"] as const).map((letter): [Face, FaceChoice] => [
    letter,
    Object.freeze({ by: "name", name: letter }),
  ]),
]);

export function face(raw: Face): FaceChoice {
  return FACES.get(raw) ?? Object.freeze({ by: "word", word: "above" });
}

const ALL: Choice = Object.freeze({ by: "all" });

export function choice(raw: ChoiceFile): Choice {
  if (raw === "all") return ALL;
  if (typeof raw === "number") return Object.freeze({ by: "number", number: raw });
  return directionChoice(GLOBAL.get(raw) ?? triple(0, 0, 1));
}

const NO_CRITERIA: ReadonlyMap<string, CriterionSetting> = new Map();

/** Limits as written; what they mean is known where the criteria are. */
export function criteria(raw: Criteria | undefined): ReadonlyMap<string, CriterionSetting> {
  if (raw === undefined) return NO_CRITERIA;
  const settings = new Map<string, CriterionSetting>();
  for (const [name, setting] of Object.entries(raw)) {
    if (setting !== undefined)
      settings.set(name, Object.freeze(typeof setting === "object" ? setting : { value: setting }));
  }
  return settings;
}

import type { Bar, Load, LoadAmount, Triple } from "../frame.ts";
import type { Load as LoadFile } from "../generated/frame-file.generated.ts";
import type { Kind } from "../ref.ts";
import { ref } from "../ref.ts";
import { quote } from "../text/quote.ts";
import type { Role } from "../units/plausibility.ts";
import type { Si } from "../units/quantity.ts";
import { looksNowhere } from "./section-axes.ts";
import { direction, face, pair, quantities, quantity, triple } from "./values.ts";
import { lengthOf, minus } from "./vectors.ts";
import { article, asWritten, countOne, name, refersTo, refuse, type Work, warn } from "./work.ts";

type AmountKey = "force" | "line" | "pressure" | "moment";
const AMOUNTS = {
  force: { quantity: "force", role: "load force", on: ["bar", "panel", "mass"] },
  line: { quantity: "lineLoad", role: "line load", on: ["bar"] },
  pressure: { quantity: "pressure", role: "pressure", on: ["panel"] },
  moment: { quantity: "moment", role: "load moment", on: ["bar", "mass"] },
} as const satisfies Record<
  AmountKey,
  { readonly quantity: string; readonly role: Role; readonly on: readonly Kind[] }
>;
const AMOUNT_KEYS: readonly AmountKey[] = ["force", "line", "pressure", "moment"];
const ONE_OF = "exactly one of force, line, pressure, moment";

function amountKey(work: Work, raw: LoadFile, pointer: string): AmountKey | undefined {
  const [first, second] = AMOUNT_KEYS.filter((key) => raw[key] !== undefined);
  if (first === undefined)
    refuse(work, "load-without-amount", pointer, { found: "a load without an amount", expected: ONE_OF });
  else if (second !== undefined) {
    const words = { found: `${first} and ${second} of one load`, expected: ONE_OF, mend: "write two loads" };
    refuse(work, "two-amounts", `${pointer}/${second}`, words, true);
  } else return first;
  return undefined;
}

function amountOf(work: Work, raw: LoadFile, key: AmountKey, pointer: string): LoadAmount | undefined {
  const at = `${pointer}/${key}`;
  const written = raw[key] ?? 0;
  if (key === "force") {
    const value = quantity(work, written, "force", at, AMOUNTS.force.role);
    return value === undefined ? undefined : Object.freeze({ kind: "force", value });
  }
  if (key === "line") {
    const value = quantity(work, written, "lineLoad", at, AMOUNTS.line.role);
    return value === undefined ? undefined : Object.freeze({ kind: "line", value });
  }
  if (key === "pressure") {
    const value = quantity(work, written, "pressure", at, AMOUNTS.pressure.role);
    return value === undefined ? undefined : Object.freeze({ kind: "pressure", value });
  }
  const value = quantity(work, written, "moment", at, AMOUNTS.moment.role);
  return value === undefined ? undefined : Object.freeze({ kind: "moment", value });
}

/** The parts a load acts on; complains where a part cannot carry its kind of amount. */
function partsOf(work: Work, raw: LoadFile, key: AmountKey | undefined, pointer: string): readonly string[] {
  const list = typeof raw.on === "string" ? [raw.on] : raw.on;
  const parts = new Set<string>();
  for (const [index, id] of list.entries()) {
    const at = typeof raw.on === "string" ? `${pointer}/on` : `${pointer}/on/${index}`;
    if (!refersTo(work, id, ["bar", "panel", "mass"], at)) continue;
    const kind = work.names.get(id)?.kind ?? "bar";
    const carried: readonly Kind[] = key === undefined ? [kind] : AMOUNTS[key].on;
    if (!carried.includes(kind)) {
      refuse(work, "load-does-not-fit", at, {
        found: `${key} on "${quote(id)}", ${article(kind)}`,
        expected: `${key} on ${carried.map(article).join(" or ")}`,
      });
    } else if (parts.has(id)) {
      refuse(work, "named-twice", at, { found: `"${quote(id)}" a second time`, expected: "each part once" });
    }
    parts.add(id);
  }
  return Object.freeze([...parts]);
}

const MIDDLE: Load["at"] = Object.freeze({ kind: "middle" });
const WORST: Load["at"] = Object.freeze({ kind: "worst" });
const DOWN: Triple = triple(0, 0, -1);

function idle(work: Work, raw: LoadFile, key: "at" | "part" | "face", only: string, pointer: string): void {
  if (raw[key] === undefined) return;
  const words = {
    found: `${key} of a load that is not ${only}`,
    expected: `${key} only with ${only}`,
    mend: `leave out ${key}`,
  };
  refuse(work, "load-key-idle", `${pointer}/${key}`, words, true);
}

function atOf(work: Work, raw: LoadFile, pointer: string): Load["at"] | undefined {
  if (raw.at === undefined || raw.at === "middle") return MIDDLE;
  if (raw.at === "worst") return WORST;
  const value = quantity(work, raw.at, "length", `${pointer}/at`);
  return value === undefined ? undefined : Object.freeze({ kind: "distance", value });
}

/** Drawn lengths repeat in decimals of the file's unit; more than this past an end is meant. */
const PAST_END = 1e-9; // m

/** Complains about a distance that lies past the drawn ends of a bar it is meant for. */
function onBars(
  work: Work,
  distance: number,
  parts: readonly string[],
  bars: ReadonlyMap<string, Bar>,
  pointer: string,
): void {
  for (const id of parts) {
    const bar = bars.get(id);
    if (bar === undefined) continue;
    if (distance >= -PAST_END && distance <= lengthOf(minus(bar.to, bar.from)) + PAST_END) continue;
    refuse(work, "load-off-bar", pointer, {
      found: `a place past the end of "${quote(id)}"`,
      expected: "a distance from its from point, at most its drawn length",
    });
    return;
  }
}

/** Complains about a face that a bar under the load does not have. */
function onFace(
  work: Work,
  raw: LoadFile,
  parts: readonly string[],
  bars: ReadonlyMap<string, Bar>,
  pointer: string,
): void {
  if (raw.face === undefined) return;
  const meant = face(raw.face);
  const bar = parts.map((id) => bars.get(id)).find((one) => one !== undefined && looksNowhere(one, meant));
  if (bar === undefined) return;
  refuse(work, "load-off-face", `${pointer}/face`, {
    found: `face "${quote(raw.face)}" of "${quote(bar.ref.id)}", none of whose faces looks that way`,
    expected: "a face across the bar: a direction square to it, or a letter from A to D",
  });
}

function coverOf(work: Work, raw: LoadFile, pointer: string): readonly [Si<"length">, Si<"length">] | undefined {
  if (raw.part === undefined) return undefined;
  const part = pair(quantities(work, raw.part, "length", `${pointer}/part`));
  if (part === undefined || part[0] < part[1]) return part;
  refuse(work, "part-empty", `${pointer}/part`, {
    found: asWritten(raw.part),
    expected: "two distances, the smaller first",
  });
  return undefined;
}

function resolveLoad(work: Work, raw: LoadFile, bars: ReadonlyMap<string, Bar>, pointer: string): Load | undefined {
  const key = amountKey(work, raw, pointer);
  const on = partsOf(work, raw, key, pointer);
  const onBar = on.some((id) => work.names.get(id)?.kind === "bar");
  const along = onBar && (key === "force" || key === "moment");
  if (key !== undefined && on.length > 0) {
    if (!along) idle(work, raw, "at", "a force or moment on a bar", pointer);
    if (key !== "line") idle(work, raw, "part", "a line load", pointer);
    if (!onBar) idle(work, raw, "face", "a load on a bar", pointer);
  }
  const amount = key === undefined ? undefined : amountOf(work, raw, key, pointer);
  if (amount?.value === 0) {
    const words = { found: `${amount.kind} 0`, expected: "an amount", mend: "leave out the load" };
    warn(work, "load-of-nothing", `${pointer}/${amount.kind}`, words);
  }
  const pointing = raw.direction === undefined ? DOWN : direction(work, raw.direction, `${pointer}/direction`);
  const at = atOf(work, raw, pointer);
  if (along && raw.at === undefined) work.assumed.add("loads act at the middle of their bar where no place is given");
  if (at?.kind === "distance" && along) onBars(work, at.value, on, bars, `${pointer}/at`);
  onFace(work, raw, on, bars, pointer);
  const part = coverOf(work, raw, pointer);
  for (const [index, distance] of (part ?? []).entries()) onBars(work, distance, on, bars, `${pointer}/part/${index}`);
  const id = raw.id ?? `${raw.case}.load-${countOne(work, `load of ${raw.case}`) + 1}`;
  name(work, id, { kind: "load", pointer }, raw.id === undefined ? pointer : `${pointer}/id`);
  if (amount === undefined || pointing === undefined || at === undefined) return undefined;
  return Object.freeze({
    ref: Object.freeze(ref("load", id)),
    case: raw.case,
    on,
    amount,
    direction: pointing,
    at,
    ...(part === undefined ? {} : { part }),
    ...(raw.face === undefined ? {} : { face: face(raw.face) }),
  });
}

/** Loads in the order of the file; one without an id is named after its case: "trays.load-1". */
export function resolveLoads(work: Work, bars: readonly Bar[]): Load[] {
  const byId = new Map(bars.map((bar) => [bar.ref.id, bar]));
  const loads: Load[] = [];
  for (const [index, raw] of (work.file.loads ?? []).entries()) {
    const load = resolveLoad(work, raw, byId, `/loads/${index}`);
    if (load !== undefined) loads.push(load);
  }
  return loads;
}

import type { Bar, Joint } from "../frame.ts";
import type { Joint as JointFile, KitItem } from "../generated/frame-file.generated.ts";
import { type EndName, ref } from "../ref.ts";
import type { Profile } from "../stock/stock.ts";
import { pointerTo } from "../text/pointer.ts";
import { quote } from "../text/quote.ts";
import { type ConnectorSpec, putOn, resolveConnector } from "./connectors.ts";
import { countOne, name, refersTo, refuse, suggestion, type Work, warn } from "./work.ts";

interface Kit {
  readonly pointer: string;
  /** Incomplete when something in it is wrong. */
  readonly specs: readonly ConnectorSpec[];
}

function kitOf(work: Work, items: readonly KitItem[], pointer: string): Kit {
  const specs: ConnectorSpec[] = [];
  for (const [index, item] of items.entries()) {
    const spec = resolveConnector(work, item, `${pointer}/${index}`);
    if (spec !== undefined) specs.push(spec);
  }
  return { pointer, specs };
}

function kitsOf(work: Work): ReadonlyMap<string, Kit> {
  const kits = new Map<string, Kit>();
  for (const [id, items] of Object.entries(work.file.kits ?? {})) {
    if (items !== undefined) kits.set(id, kitOf(work, items, pointerTo("/kits", id)));
  }
  return kits;
}

const UNKNOWN_KIT = "unknown kits";

function kitBy(work: Work, by: JointFile["by"], kits: ReadonlyMap<string, Kit>, pointer: string): Kit | undefined {
  if (typeof by !== "string") return kitOf(work, by, `${pointer}/by`);
  countOne(work, `kit: ${by}`);
  const kit = kits.get(by);
  if (kit !== undefined) return kit;
  countOne(work, UNKNOWN_KIT);
  const mend = suggestion(work, by, () => kits.keys());
  const expected = kits.size === 0 ? "a list of connectors: this file has no kits" : "the name of a kit of this file";
  refuse(work, "unknown-kit", `${pointer}/by`, { found: `kit "${quote(by)}"`, expected, ...mend });
  return undefined;
}

interface NamedEnd {
  readonly bar: string;
  readonly end: EndName;
  readonly pointer: string;
}

const END_OF = /^(.*)\/(from|to)$/;

/** "rail-1/to" as bar and end; an id alone leaves the end open. */
export function barAndEnd(written: string): { readonly bar: string; readonly end?: EndName } {
  const split = END_OF.exec(written);
  if (split === null) return { bar: written };
  return { bar: split[1] ?? written, end: split[2] === "from" ? "from" : "to" };
}

function endsOf(work: Work, raw: JointFile, pointer: string): readonly NamedEnd[] {
  const named: NamedEnd[] = [];
  for (const [index, written] of raw.bars.entries()) {
    const at = `${pointer}/bars/${index}`;
    const { bar, end } = barAndEnd(written);
    if (!refersTo(work, bar, ["bar"], at)) continue;
    const which = raw.ends ?? "both";
    for (const one of ["from", "to"] as const) {
      if (end === undefined ? which === "both" || which === one : end === one)
        named.push({ bar, end: one, pointer: at });
    }
  }
  return named;
}

/** Where each end was jointed: an end is jointed once. */
export type Jointed = Map<string, string>;

/** Whether the end was free until now; complains with both places when it was not. */
export function takeEnd(
  work: Work,
  jointed: Jointed,
  bar: string,
  end: EndName,
  pointer: string,
  mend = "put all its connectors into one joint",
): boolean {
  const id = `${bar}/${end}`;
  const other = jointed.get(id);
  if (other === undefined) {
    jointed.set(id, pointer);
    return true;
  }
  refuse(work, "jointed-twice", pointer, {
    found: `a second joint on ${quote(id)}`,
    expected: "one joint for each end; line {line} has the first",
    mend,
    other,
  });
  return false;
}

function jointsOf(
  work: Work,
  raw: JointFile,
  kits: ReadonlyMap<string, Kit>,
  profiles: ReadonlyMap<string, Profile>,
  jointed: Jointed,
  pointer: string,
): readonly Joint[] {
  const kit = kitBy(work, raw.by, kits, pointer);
  const ends = endsOf(work, raw, pointer);
  if (raw.id !== undefined && ends.length > 1) {
    const mend = 'leave out "id": the joints are named after bar and end';
    refuse(work, "id-of-several", `${pointer}/id`, {
      found: `one id for ${ends.length} joints`,
      expected: "a joint of one end",
      mend,
    });
    return [];
  }
  const ontoKnown = raw.onto === undefined || refersTo(work, raw.onto, ["bar"], `${pointer}/onto`);
  const joints: Joint[] = [];
  for (const { bar, end, pointer: at } of ends) {
    if (raw.onto === bar) {
      const found = `"${quote(bar)}" fastened onto itself`;
      refuse(work, "names-itself", `${pointer}/onto`, { found, expected: "the id of another bar" });
    }
    if (!takeEnd(work, jointed, bar, end, at)) continue;
    const id = raw.id ?? `${bar}.${end}`;
    const origin = { kind: "joint" as const, pointer };
    name(
      work,
      id,
      kit === undefined ? origin : { ...origin, connectors: kit.pointer },
      raw.id === undefined ? at : `${pointer}/id`,
    );
    if (kit === undefined || !ontoKnown) continue;
    const clamped = [profiles.get(bar), raw.onto === undefined ? undefined : profiles.get(raw.onto)].filter(
      (profile) => profile !== undefined,
    );
    joints.push(
      Object.freeze({
        ref: Object.freeze(ref("joint", id)),
        bar,
        end,
        ...(raw.onto === undefined ? {} : { onto: raw.onto }),
        connectors: Object.freeze(kit.specs.map((spec, index) => putOn(`${id}/${index + 1}`, spec, clamped))),
      }),
    );
  }
  return joints;
}

/** One joint per end, in the order of the file. */
export function resolveJoints(work: Work, bars: readonly Bar[], jointed: Jointed): Joint[] {
  const profiles = new Map(bars.map((bar) => [bar.ref.id, bar.profile]));
  const kits = kitsOf(work);
  const joints: Joint[] = [];
  for (const [index, raw] of (work.file.joints ?? []).entries()) {
    for (const joint of jointsOf(work, raw, kits, profiles, jointed, `/joints/${index}`)) joints.push(joint);
  }
  for (const [id, { pointer }] of kits) {
    // A kit named wrongly is told where it is named.
    if (work.tally.has(`kit: ${id}`) || work.tally.has(UNKNOWN_KIT)) continue;
    const words = { found: `kit "${quote(id)}", which no joint uses`, expected: "a kit some joint uses" };
    warn(work, "unused-kit", pointer, words, true);
  }
  return joints;
}

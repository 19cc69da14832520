import type { ConnectorChoice, NutKind, Screwing } from "../frame.ts";
import type { KitItem } from "../generated/frame-file.generated.ts";
import { ref } from "../ref.ts";
import { ratedTorque } from "../stock/rated-torque.ts";
import type { Connector, Profile } from "../stock/stock.ts";
import { quote } from "../text/quote.ts";
import { type Si, si } from "../units/quantity.ts";
import { choice, face, positive, quantity } from "./values.ts";
import { refuse, stockPart, suggestion, type Work } from "./work.ts";

/** What is chosen for a connector, before it is put on bars: what its rated torque is depends on their lips. */
export type ConnectorSpec = Omit<ConnectorChoice, "ref" | "torque"> & { readonly torque: Si<"moment"> | "rated" };

type Fixings = Pick<KitItem, "screw" | "nut" | "torque" | "lock" | "omit">;

/** Ids of the holes a screw can be left out of. */
function holeIds(part: Connector): readonly string[] {
  if (part.kind === "bracket") return [...part.legs.a.holes, ...part.legs.b.holes].map((hole) => hole.id);
  return "holes" in part ? part.holes.map((hole) => hole.id) : [];
}

const NONE_OMITTED: readonly string[] = Object.freeze([]);

function omitted(work: Work, part: Connector, omit: readonly string[] | undefined, pointer: string): readonly string[] {
  if (omit === undefined) return NONE_OMITTED;
  const holes = holeIds(part);
  for (const [index, id] of omit.entries()) {
    if (holes.includes(id)) continue;
    refuse(work, "unknown-hole", `${pointer}/omit/${index}`, {
      found: `hole "${quote(id)}"`,
      expected: holes.length === 0 ? `no holes to leave out of ${part.name}` : `one of ${holes.join(", ")}`,
      ...suggestion(work, id, () => holes),
    });
  }
  return Object.freeze([...new Set(omit)]);
}

function torqueOf(work: Work, { torque }: Fixings, pointer: string): Si<"moment"> | "rated" | undefined {
  const standard = work.file.defaults?.torque;
  const written = torque ?? standard;
  if (written === undefined) work.assumed.add("screws are tightened to their rated torque");
  if (written === undefined || written === "rated") return "rated";
  return positive(work, written, "moment", torque === undefined ? "/defaults/torque" : `${pointer}/torque`, "torque");
}

function nutOf(work: Work, raw: Fixings): NutKind {
  const nut = raw.nut ?? work.file.defaults?.nut;
  if (nut === undefined) work.assumed.add("nuts are end-load");
  return nut ?? "end-load";
}

/** What holds for screws that nothing in the file speaks of one by one. */
export function resolveScrewing(work: Work): Screwing {
  const { nut, lock, torque } = work.file.defaults ?? {};
  const given =
    torque === undefined || torque === "rated"
      ? undefined
      : positive(work, torque, "moment", "/defaults/torque", "torque");
  return Object.freeze({ nut: nut ?? "end-load", lock: lock ?? "none", torque: given ?? "rated" });
}

/** Screw, nut, torque and lock of a part: its own, else the frame's, else the standard. */
export function fixed(
  work: Work,
  raw: Fixings,
  part: Connector,
  pointer: string,
): Pick<ConnectorSpec, "part" | "screw" | "nut" | "torque" | "lock" | "omit"> | undefined {
  const omit = omitted(work, part, raw.omit, pointer);
  const screw =
    raw.screw === undefined
      ? stockPart(work, work.stock.screws, "screw", part.screw, pointer)
      : stockPart(work, work.stock.screws, "screw", raw.screw, `${pointer}/screw`);
  const torque = torqueOf(work, raw, pointer);
  if (screw === undefined || torque === undefined) return undefined;
  const lock = raw.lock ?? work.file.defaults?.lock ?? "none";
  return { part, screw, nut: nutOf(work, raw), torque, lock, omit };
}

const NEED_FACE: ReadonlySet<Connector["kind"]> = new Set(["bracket", "end-fastener"]);
const ELSEWHERE: ReadonlyMap<Connector["kind"], string> = new Map([
  ["plate", "fastenings"],
  ["side-tie", "ties"],
  ["pivot", "pivots"],
  ["hinge", "doors or pivots"],
]);

/** One connector of a kit; undefined with complaints when something is wrong. */
export function resolveConnector(work: Work, raw: KitItem, pointer: string): ConnectorSpec | undefined {
  const part = stockPart(work, work.stock.connectors, "connector", raw.connector, `${pointer}/connector`);
  const shift = raw.shift === undefined ? si(0, "length") : quantity(work, raw.shift, "length", `${pointer}/shift`);
  if (part === undefined) return undefined;
  const place = ELSEWHERE.get(part.kind);
  if (place !== undefined) {
    const found = `connector "${quote(raw.connector)}", a ${part.kind}`;
    const mend = `write it under ${place}`;
    refuse(work, "not-for-an-end", `${pointer}/connector`, {
      found,
      expected: "a connector for one end of a bar",
      mend,
    });
    return undefined;
  }
  if (NEED_FACE.has(part.kind) && raw.on === undefined) {
    const found = `"${quote(raw.connector)}" without on`;
    const mend = 'add "on", for example "below"';
    refuse(work, "face-missing", pointer, { found, expected: "the face of the bar it sits on", mend });
    return undefined;
  }
  const rest = fixed(work, raw, part, pointer);
  if (rest === undefined || shift === undefined) return undefined;
  return Object.freeze({
    ...rest,
    ...(raw.on === undefined ? {} : { on: face(raw.on) }),
    ...(raw.slot === undefined ? {} : { slot: choice(raw.slot) }),
    ...(raw.bore === undefined ? {} : { bore: choice(raw.bore) }),
    shift,
  });
}

/** A chosen connector on bars of these profiles: rated torque is the least that one of them takes. */
export function putOn(id: string, spec: ConnectorSpec, profiles: readonly Profile[]): ConnectorChoice {
  let torque = spec.torque;
  if (torque === "rated") {
    torque = spec.screw.torque;
    for (const profile of profiles) {
      const rated = ratedTorque(spec.screw, profile);
      if (rated < torque) torque = rated;
    }
  }
  return Object.freeze({ ...spec, ref: Object.freeze(ref("connector", id)), torque });
}

import type { BarEnd, Cut } from "../frame.ts";
import type { Bar as BarFile, EndSpec } from "../generated/frame-file.generated.ts";
import { type EndName, endRef } from "../ref.ts";
import { quote } from "../text/quote.ts";
import { direction, quantity } from "./values.ts";
import { asWritten, refersTo, refuse, stockPart, type Work } from "./work.ts";

const CUT_KEYS = ["cut", "butt", "mitre", "angle", "plane"] as const;
type CutKey = (typeof CUT_KEYS)[number];

function cutKeysOf(spec: EndSpec): readonly CutKey[] {
  return CUT_KEYS.filter((key) => spec[key] !== undefined);
}

const AS_DRAWN: Cut = Object.freeze({ kind: "as-drawn" });
const BUTT: Cut = Object.freeze({ kind: "butt", written: true });
const BUTT_UNWRITTEN: Cut = Object.freeze({ kind: "butt", written: false });

function otherBar(work: Work, bar: string, id: string, pointer: string): string | undefined {
  if (!refersTo(work, id, ["bar"], pointer)) return undefined;
  if (id !== bar) return id;
  refuse(work, "names-itself", pointer, { found: `"${quote(id)}", the bar itself`, expected: "the id of another bar" });
  return undefined;
}

function angledCut(work: Work, spec: EndSpec, pointer: string): Cut | undefined {
  const angle = quantity(work, spec.angle ?? 0, "angle", `${pointer}/angle`);
  if (spec.about === undefined) {
    const mend = 'add "about", the axis the cut is turned about, for example "+y"';
    refuse(
      work,
      "axis-missing",
      `${pointer}/angle`,
      { found: "angle without about", expected: "angle and about together", mend },
      true,
    );
    return undefined;
  }
  const about = direction(work, spec.about, `${pointer}/about`);
  if (angle === undefined || about === undefined) return undefined;
  if (Math.abs(angle) < Math.PI / 2) return Object.freeze({ kind: "angle", angle, about });
  refuse(work, "cut-too-steep", `${pointer}/angle`, {
    found: `"angle": ${asWritten(spec.angle)}`,
    expected: "less than 90° out of square",
  });
  return undefined;
}

/** The cut that one spec asks for; undefined when it asks for none or wrongly. */
function cutOf(work: Work, bar: string, spec: EndSpec, key: CutKey, pointer: string): Cut | undefined {
  const at = `${pointer}/${key}`;
  if (key === "cut") return spec.cut === "as-drawn" ? AS_DRAWN : BUTT;
  if (key === "angle") return angledCut(work, spec, pointer);
  if (key === "plane") {
    const normal = spec.plane === undefined ? undefined : direction(work, spec.plane, at);
    return normal === undefined ? undefined : Object.freeze({ kind: "plane", normal });
  }
  const other = otherBar(work, bar, spec[key] ?? "", at);
  if (other === undefined) return undefined;
  return key === "butt"
    ? Object.freeze({ kind: "butt", against: other, written: true })
    : Object.freeze({ kind: "mitre", with: other });
}

/** Complains about a spec that asks for two cuts, or for an axis of nothing; said once, also for `both`. */
export function checkSpec(work: Work, spec: EndSpec, pointer: string): void {
  const [first, second] = cutKeysOf(spec);
  if (first !== undefined && second !== undefined) {
    refuse(
      work,
      "two-cuts",
      `${pointer}/${second}`,
      {
        found: `${first} and ${second} of one end`,
        expected: `one of ${CUT_KEYS.join(", ")}`,
        mend: `leave out ${first} or ${second}`,
      },
      true,
    );
  }
  if (spec.about !== undefined && spec.angle === undefined) {
    const words = {
      found: "about without angle",
      expected: "angle and about together",
      mend: 'add "angle", or leave out "about"',
    };
    refuse(work, "axis-without-angle", `${pointer}/about`, words, true);
  }
}

/** Where the specs of an end stand: its own wins over the one for both, the frame's defaults come last. */
function specsOf(
  raw: BarFile,
  end: EndName,
  pointer: string,
): readonly { readonly spec: EndSpec; readonly at: string }[] {
  const specs: { spec: EndSpec; at: string }[] = [];
  const own = raw.ends?.[end];
  if (own !== undefined) specs.push({ spec: own, at: `${pointer}/ends/${end}` });
  if (raw.ends?.both !== undefined) specs.push({ spec: raw.ends.both, at: `${pointer}/ends/both` });
  return specs;
}

function standardCut(work: Work): Cut {
  if (work.file.defaults?.cut === "as-drawn") return AS_DRAWN;
  return work.file.defaults?.cut === undefined ? BUTT_UNWRITTEN : BUTT;
}

const NO_CAP: BarEnd["cap"] = Object.freeze({ kind: "none" });
const CAP_IF_OPEN: BarEnd["cap"] = Object.freeze({ kind: "if-open" });

/** The cap of stock that is named, if it closes the profile. */
function namedCap(work: Work, written: string, profile: string, pointer: string): BarEnd["cap"] {
  const part = stockPart(work, work.stock.caps, "cap", written, pointer);
  if (part === undefined) return NO_CAP;
  if (part.profiles.includes(profile)) return Object.freeze({ kind: "part", part });
  const fitting = [...work.stock.caps.values()].find((cap) => cap.profiles.includes(profile));
  refuse(work, "part-does-not-fit", pointer, {
    found: `cap "${quote(written)}" on a ${quote(profile)}`,
    expected: "a cap that closes the profile",
    ...(fitting === undefined ? {} : { mend: `write "${quote(fitting.name)}"` }),
  });
  return NO_CAP;
}

function capOf(work: Work, written: string | undefined, profile: string, pointer: string): BarEnd["cap"] {
  if (written === "none") return NO_CAP;
  if (written !== undefined) return namedCap(work, written, profile, pointer);
  if (work.file.defaults?.caps === undefined) work.assumed.add("open ends get caps");
  return work.file.defaults?.caps === "none" ? NO_CAP : CAP_IF_OPEN;
}

/** One end of a bar as it is cut and closed. */
export function resolveEnd(work: Work, raw: BarFile, end: EndName, pointer: string): BarEnd {
  const specs = specsOf(raw, end, pointer);
  const [nearest] = specs;
  if (nearest !== undefined) {
    work.names.set(`${raw.id}/${end}`, { kind: "end", pointer: nearest.at });
  }
  const cutSpec = specs.find(({ spec }) => cutKeysOf(spec).length > 0);
  const [key] = cutSpec === undefined ? [] : cutKeysOf(cutSpec.spec);
  const cut =
    cutSpec === undefined || key === undefined ? undefined : cutOf(work, raw.id, cutSpec.spec, key, cutSpec.at);
  const capSpec = specs.find(({ spec }) => spec.cap !== undefined);
  const edge = specs.find(({ spec }) => spec.edge !== undefined)?.spec.edge ?? work.file.defaults?.ends;
  if (edge === undefined) work.assumed.add("cut ends are deburred");
  if (key === undefined && work.file.defaults?.cut === undefined) {
    work.assumed.add("ends are cut at the face of the bar they meet");
  }
  return Object.freeze({
    ref: Object.freeze(endRef(raw.id, end)),
    bar: raw.id,
    end,
    cut: cut ?? standardCut(work),
    cap: capOf(work, capSpec?.spec.cap, raw.profile, `${capSpec?.at}/cap`),
    edge: edge ?? "deburred",
  });
}

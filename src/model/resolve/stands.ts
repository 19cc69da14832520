import type { Stand } from "../frame.ts";
import type { Stand as StandFile } from "../generated/frame-file.generated.ts";
import { ref } from "../ref.ts";
import type { Stand as StandPart } from "../stock/stock.ts";
import { quote } from "../text/quote.ts";
import type { Si } from "../units/quantity.ts";
import { barAndEnd } from "./joints.ts";
import { positive } from "./values.ts";
import { name, refersTo, refuse, stockPart, type Work } from "./work.ts";

/** Whether hold and brake suit the part; complains when they do not. */
function suits(work: Work, raw: StandFile, part: StandPart, pointer: string): boolean {
  if (raw.hold === "rolling" && part.kind === "foot") {
    const found = `"hold": "rolling" of "${quote(part.name)}", a foot`;
    refuse(work, "foot-rolls", `${pointer}/hold`, { found, expected: "rest or anchored, or a caster" });
    return false;
  }
  if (raw.brake === true && !part.brake) {
    const found = `a brake set on "${quote(part.name)}", which has none`;
    refuse(work, "no-brake", `${pointer}/brake`, {
      found,
      expected: "a caster with a brake",
      mend: "name one, or leave out brake",
    });
    return false;
  }
  return true;
}

function resolveEntry(work: Work, raw: StandFile, pointer: string): readonly Stand[] {
  const part = stockPart(work, work.stock.stands, "foot or caster", raw.part, `${pointer}/part`);
  let raise: Si<"length"> | undefined;
  if (raw.raise !== undefined) raise = positive(work, raw.raise, "length", `${pointer}/raise`, "coordinate");
  if (raw.id !== undefined && raw.bars.length > 1) {
    const mend = 'leave out "id": the stands are named after their bars';
    refuse(work, "id-of-several", `${pointer}/id`, {
      found: `one id for ${raw.bars.length} stands`,
      expected: "a single stand",
      mend,
    });
    return [];
  }
  if (part?.brake === true && raw.brake === undefined) work.assumed.add("brakes of casters are not set");
  const good = part !== undefined && suits(work, raw, part, pointer);
  const stands: Stand[] = [];
  for (const [index, written] of raw.bars.entries()) {
    const at = `${pointer}/bars/${index}`;
    const { bar, end = raw.end } = barAndEnd(written);
    if (!refersTo(work, bar, ["bar"], at)) continue;
    const id = raw.id ?? `${bar}.${part?.kind ?? "foot"}`;
    name(work, id, { kind: "stand", pointer }, raw.id === undefined ? at : `${pointer}/id`);
    if (!good) continue;
    stands.push(
      Object.freeze({
        ref: Object.freeze(ref("stand", id)),
        part,
        bar,
        ...(end === undefined ? {} : { end }),
        ...(raise === undefined ? {} : { raise }),
        hold: raw.hold ?? (part.kind === "caster" ? "rolling" : "rest"),
        brake: raw.brake ?? false,
      }),
    );
  }
  return stands;
}

/** One stand for each bar named, in the order of the file. */
export function resolveStands(work: Work): Stand[] {
  const stands: Stand[] = [];
  for (const [index, raw] of (work.file.stands ?? []).entries()) {
    for (const stand of resolveEntry(work, raw, `/stands/${index}`)) stands.push(stand);
  }
  return stands;
}

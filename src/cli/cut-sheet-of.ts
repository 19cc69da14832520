import { spareNuts } from "../criteria/spare-nuts.ts";
import { arrivals } from "../facts/arrivals.ts";
import { bodies } from "../facts/bodies.ts";
import { cutList } from "../facts/cut-list.ts";
import { factOf } from "../facts/fact.ts";
import { nest } from "../facts/nesting.ts";
import { type PartCount, partCounts } from "../facts/part-counts.ts";
import { slotRoom } from "../facts/slot-room.ts";
import type { HouseSettings } from "../house/house-in-force.ts";
import { Limits } from "../inspection/limits.ts";
import type { Frame } from "../model/frame.ts";
import type { CutSheet, ProfilePlan } from "../report/cuts/cut-sheet.ts";

/** The cut list of a frame, its bars laid out on the stock lengths of their profiles with this saw cut [m]. */
export function cutSheetOf(file: string, frame: Frame, kerf: number, house: HouseSettings): CutSheet {
  const lines = factOf(cutList, frame);
  const all = factOf(bodies, frame);
  const plans: ProfilePlan[] = [];
  for (const name of new Set(lines.map((line) => line.profile.name))) {
    const own = lines.filter((line) => line.profile.name === name);
    const [first] = own;
    if (!first) continue;
    const pieces = own.flatMap((line) =>
      line.bars.map((id) => ({ id, length: all.get(id)?.cutLength ?? line.length })),
    );
    const mass = own.reduce((sum, line) => sum + line.mass * line.bars.length, 0);
    plans.push({
      profile: name,
      stock: first.profile.stockLength,
      nesting: nest(pieces, first.profile.stockLength, kerf),
      mass,
    });
  }
  return {
    file,
    title: frame.title,
    units: frame.units,
    kerf,
    lines,
    plans,
    counts: withSpareNuts(frame, house),
    arrivals: factOf(arrivals, frame),
  };
}

/** What is counted, with the nuts that house and frame want left over in every slot that takes nuts. */
function withSpareNuts(frame: Frame, house: HouseSettings): readonly PartCount[] {
  const spare = new Limits(frame, { ...house, rules: [] }).given(spareNuts);
  const more = new Map<string, number>();
  for (const { bar, nut } of factOf(slotRoom, frame)) more.set(nut, (more.get(nut) ?? 0) + spare.at(bar).value);
  return factOf(partCounts, frame).map((part) =>
    part.kind === "nut" ? { ...part, count: part.count + (more.get(part.name) ?? 0) } : part,
  );
}

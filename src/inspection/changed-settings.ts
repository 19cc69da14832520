import type { Criterion } from "../criteria/criterion.ts";
import { type Meant, readLimit, readStandard } from "../criteria/read-limit.ts";
import type { HouseInForce } from "../house/house-in-force.ts";
import type { Frame, StrengthMethod } from "../model/frame.ts";
import { compareText } from "../model/problem.ts";
import { formatQuantity } from "../model/units/format-quantity.ts";
import type { ChangedSetting } from "./report.ts";

const USUAL: StrengthMethod = "partial-factors";

const alike = (a: Meant, b: Meant): boolean =>
  "fixed" in a
    ? "fixed" in b && a.fixed === b.fixed
    : !("fixed" in b) && a.shareOf === b.shareOf && a.atLeast === b.atLeast;

/** In the units of the frame, whoever wrote it in which. */
function shown(meant: Meant, { quantity }: Criterion, { units }: Frame): string {
  if ("fixed" in meant) return formatQuantity(meant.fixed, quantity, units);
  const floor = meant.atLeast > 0 ? `, at least ${formatQuantity(meant.atLeast, quantity, units)}` : "";
  return `span / ${meant.shareOf}${floor}`;
}

/** The method of strength, limits of the rules in force that are not at their usual value, and rules that are not at their own level or are off. */
export function changedSettings(frame: Frame, house: HouseInForce): readonly ChangedSetting[] {
  const changed: ChangedSetting[] = [];
  const { method = USUAL } = frame;
  if (method !== USUAL)
    changed.push({
      what: "method",
      value: method,
      usual: USUAL,
      by: house.method === method ? "house" : "frame",
      parts: [],
    });
  const criteria = new Map(house.rules.flatMap((rule) => Object.values(rule.criteria)).map((one) => [one.name, one]));
  for (const criterion of [...criteria.values()].sort((a, b) => compareText(a.name, b.name))) {
    const { name } = criterion;
    const standard = readStandard(criterion);
    const add = (value: number | string, by: ChangedSetting["by"], parts: readonly string[] = []): void => {
      const meant = readLimit(value, criterion, frame.units);
      if ("found" in meant || alike(meant, standard)) return;
      const words = { value: shown(meant, criterion, frame), usual: shown(standard, criterion, frame) };
      changed.push({ what: name, ...words, by, parts });
    };
    const [inFrame, inHouse] = [frame.criteria.get(name), house.criteria.get(name)];
    if (inFrame) add(inFrame.value, "frame");
    else if (inHouse) add(inHouse.value, "house");
    const byValue = new Map<number | string, string[]>();
    for (const { ref, criteria: own } of [...frame.bars, ...frame.panels]) {
      const inPart = own.get(name);
      if (inPart) byValue.set(inPart.value, [...(byValue.get(inPart.value) ?? []), ref.id]);
    }
    for (const [value, parts] of byValue) add(value, "part", parts);
  }
  for (const { id, level } of house.rules) {
    const strictness = house.strictness.get(id);
    if (strictness !== undefined && strictness !== level)
      changed.push({ what: id, value: strictness, usual: level, by: "house", parts: [] });
  }
  return changed;
}

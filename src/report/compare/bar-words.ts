import type { BarChanged, BarMoved } from "../../inspection/compare.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";
import { listed } from "../count.ts";

/** How far an end went: "150 mm", "1.5 mm in metal, 21.5 mm as drawn", "20 mm in metal alone". */
export function movedWords({ by, inMetal }: BarMoved, units: UnitSystem): string {
  const print = (length: number): string => formatQuantity(length, "length", units);
  if (by === 0) return `${print(inMetal)} in metal alone`;
  if (inMetal === 0) return `${print(by)} as drawn alone`;
  return print(by) === print(inMetal) ? print(by) : `${print(inMetal)} in metal, ${print(by)} as drawn`;
}

/** "profile 40x40-8 → 40x80-8 and ends". */
export const changedBarWords = ({ what, profile }: BarChanged): string =>
  listed(what.map((trait) => (trait === "profile" && profile ? `profile ${profile.from} → ${profile.to}` : trait)));

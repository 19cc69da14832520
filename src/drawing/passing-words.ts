import type { LoadPath, Passing } from "../facts/load-paths.ts";
import { length, type Vec3 } from "../geometry/vector.ts";
import { formatQuantity } from "../model/units/format-quantity.ts";
import type { UnitSystem } from "../model/units/unit-system.ts";

const HOLDS: Readonly<Record<Passing["by"], string>> = {
  screws: "held by fasteners",
  pin: "by its pin",
  latch: "by the latch",
  tie: "held by the tie's screw",
};
/** A part of what is passed that is less than this share of it is not told. */
const TOLD = 0.03;

export const force = (vector: Vec3, units: UnitSystem): string => formatQuantity(length(vector), "force", units);

/** "476 N bears, 90 N held by screws". */
export function passedWords({ seat, held, by }: Passing, units: UnitSystem): string {
  const [bears, holds] = [length(seat), length(held)];
  const most = Math.max(bears, holds);
  const words = [
    ...(bears > TOLD * most ? [`${force(seat, units)} bears`] : []),
    ...(holds > TOLD * most ? [`${force(held, units)} ${HOLDS[by]}`] : []),
  ];
  return words.join(", ");
}

/** What the feet bear beside what is applied. */
export function sumWords({ borne, applied }: LoadPath, units: UnitSystem): string {
  return `the feet bear ${force(borne, units)} of ${force(applied, units)} applied`;
}

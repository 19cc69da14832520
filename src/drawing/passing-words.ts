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

const sideways = ([x, y]: Vec3): Vec3 => [x, y, 0];
const down = ([, , z]: Vec3, units: UnitSystem): string => formatQuantity(-z, "force", units);

/** What the feet bear beside what is applied, down and, where there is any, sideways: a sum of forces that lean tells neither. */
export function sumWords({ borne, applied }: LoadPath, units: UnitSystem): string {
  const sum = `the feet bear ${down(borne, units)} of ${down(applied, units)} applied`;
  const aside = sideways(applied);
  if (length(aside) <= TOLD * length(applied)) return sum;
  return `${sum} downwards and ${force(sideways(borne), units)} of ${force(aside, units)} sideways`;
}

/** "post-1.foot 261 N, 90 N sideways": what a foot puts on the floor; those down add up to what is applied, those sideways may cancel out. */
export function footWords({ ref, force: own }: LoadPath["feet"][number], units: UnitSystem): string {
  const thrust = sideways(own);
  const aside = length(thrust) > TOLD * length(own) ? `, ${force(thrust, units)} sideways` : "";
  return `${ref.id} ${down(own, units)}${aside}`;
}

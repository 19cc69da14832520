import type { Quantity } from "../model/units/quantity.ts";
import { readQuantity } from "../model/units/read-quantity.ts";

/** What may be set, SI, both ends included; without `least` anything above zero. */
export interface Range {
  readonly least?: number;
  readonly most?: number;
}

/** The two ends as a criterion writes them, with their units. */
export type Within = readonly [least: string, most: string];

/** Largest values believed where a criterion says nothing: those of frames that a workshop can build. */
const BELIEVED: Readonly<Partial<Record<Quantity, string>>> = {
  length: "30 m",
  angle: "180 deg",
  force: "1000 kN",
  ratio: "1000",
  count: "1000",
};

function endOf(text: string, quantity: Quantity): number {
  const read = readQuantity(text, quantity, "mm-N-kg");
  if ("si" in read) return read.si;
  throw new Error(`the range of a criterion holds ${read.found}, expected ${read.expected}`);
}

/**
 * The range in which house and frame files may set a criterion.
 * @throws Error where the criterion writes an end that is no such quantity
 */
export function rangeOf(quantity: Quantity, within?: Within): Range {
  if (within !== undefined) return { least: endOf(within[0], quantity), most: endOf(within[1], quantity) };
  const most = BELIEVED[quantity];
  return most === undefined ? {} : { most: endOf(most, quantity) };
}

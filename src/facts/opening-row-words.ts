import type { OpeningRow } from "./reach-distances.ts";

const mm = (length: number): string => String(Math.round(length * 1000));

/** "slots over 40 up to 120 mm in Table 4": in mm whatever the units of the frame, as the standard has it. */
export function openingRowWords({ table, form, over, upTo, thumb }: OpeningRow): string {
  if (upTo === undefined) return `wider than all rows of Table ${table}, which end at ${mm(over)} mm: the last one`;
  const widths = over === 0 ? `up to ${mm(upTo)} mm` : `over ${mm(over)} up to ${mm(upTo)} mm`;
  const long = thumb === undefined ? "" : ` and no longer than ${mm(thumb)} mm`;
  return `${form}s ${widths}${long} in Table ${table}`;
}

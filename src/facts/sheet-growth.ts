import type { Frame } from "../model/frame.ts";
import type { Sheet } from "../model/stock/stock.ts";

/** Drawings give sizes at 20 °C (ISO 1:2022), K. */
const DRAWN_AT = 293.15;
/** Share of a sheet's whole movement from dry to damp that a place makes it go either way of the ordinary. */
const DAMP = { indoors: 0.25, outdoors: 0.5 } as const;

/** By which share of its length a sheet outgrows the frame round it at most, and shrinks from it at most: both ≥ 0. */
export interface Growth {
  readonly most: number;
  readonly least: number;
}

/**
 * Growth of a sheet against a frame of the given expansion (1/K) over the temperatures of the site, with what damp and dry
 * air add: (αs − αf)·(T − 20 °C), with its sign, so that a sheet that moves less than the frame is tight in the cold.
 */
export function growthOf(sheet: Sheet, expansion: number, site: Frame["site"]): Growth {
  const [cold, warm] = site.temperature.map((t) => (sheet.expansion - expansion) * (t - DRAWN_AT)) as [number, number];
  const damp = sheet.moisture * DAMP[site.place];
  return { most: Math.max(cold, warm, 0) + damp, least: Math.max(-cold, -warm, 0) + damp };
}

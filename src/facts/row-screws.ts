import type { Body } from "./bodies.ts";
import type { ScrewedPart } from "./placed.ts";
import { screwRows } from "./sheet-rows.ts";
import type { LaidSheet } from "./sheets.ts";

/** Equal screws between a sheet and one bar. */
export interface RowScrews {
  readonly panel: string;
  readonly bar: string;
  readonly screw: string;
  readonly count: number;
  /** Of the slot they go into; none where no slot lies under the sheet, or stock has no screw for it. */
  readonly nut: string | undefined;
  /** Whether each of them has a place, and is one of the screws of the frame. */
  readonly placed: boolean;
}

/** What a screw is called that trysquare has chosen where the file names none. */
export const usualScrew = (name: string): string => `screw such as ${name}`;

/** The screws of a sheet on faces, bar by bar, those too that find no slot or of which stock has none. */
export function rowScrews(
  sheet: LaidSheet,
  bodies: ReadonlyMap<string, Body>,
  placed: readonly ScrewedPart[],
): readonly RowScrews[] {
  const { held, ref, sheet: material } = sheet.panel;
  if (held.kind !== "on-face" || held.pitch === undefined) return [];
  return screwRows(sheet, bodies, held.pitch).map(({ bar, screws: count }) => {
    const part = placed.find((one) => one.ref.id === `${ref.id}/${bar}`);
    const [first] = part?.screws ?? [];
    const own = { panel: ref.id, bar, count };
    if (part && first) {
      const nut = first.into.kind === "nut" ? first.into.nut?.name : undefined;
      const { name } = first.screw;
      return { ...own, screw: part.usual ? usualScrew(name) : name, nut, placed: true };
    }
    const slotSize = bodies.get(bar)?.bar.profile.slotSize ?? "";
    const screw = held.screw?.name ?? `a screw and nut for ${material.name} on slot ${slotSize}`;
    return { ...own, screw, nut: undefined, placed: false };
  });
}

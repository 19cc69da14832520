import type { Panel } from "../model/frame.ts";
import type { Panel as PanelFile } from "../model/generated/frame-file.generated.ts";
import type { Gasket, Sheet } from "../model/stock/stock.ts";
import type { Ailment, Patient } from "./cure.ts";

/** A panel that the file itself writes (not a copy): as it is, as it is written, and where. */
export interface WrittenPanel {
  readonly panel: Panel;
  readonly written: PanelFile;
  readonly pointer: string;
}

export function panelOf({ at }: Ailment, patient: Patient): WrittenPanel | undefined {
  const panel = patient.frame.panels.find(({ ref }) => ref.id === at.id);
  const index = patient.file.panels?.findIndex(({ id }) => id === at.id) ?? -1;
  const written = patient.file.panels?.[index];
  return panel && written && { panel, written, pointer: `/panels/${index}` };
}

/** A name of stock but for its figures: sheets in mm and in inches are two families. */
const family = ({ name }: Sheet): string => name.replace(/\d+(\.\d+)?/g, "#");

/** Sheets of the same material and family, thinnest first. */
export function sheetsLike({ sheet }: Panel, { frame }: Patient): readonly Sheet[] {
  const same = (other: Sheet): boolean => other.source === sheet.source && family(other) === family(sheet);
  return [...frame.stock.sheets.values()].filter(same).sort((a, b) => a.thickness - b.thickness);
}

/** Strips made for the slots of the bars round a panel that take a sheet of this thickness. */
export function gasketsFor({ held }: Panel, thickness: number, { frame }: Patient): readonly Gasket[] {
  if (held.kind !== "in-slot") return [];
  const bars = new Set(held.edges.flatMap((edge) => (edge.kind === "bar" ? [edge.bar] : [])));
  const sizes = new Set(frame.bars.filter(({ ref }) => bars.has(ref.id)).map(({ profile }) => profile.slotSize));
  const takes = ({ slotSize, sheet: [least, most] }: Gasket): boolean =>
    sizes.size === 1 && sizes.has(slotSize) && thickness >= least && thickness <= most;
  return [...frame.stock.gaskets.values()].filter(takes);
}

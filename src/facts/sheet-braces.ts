import { add, scale } from "../geometry/vector.ts";
import type { Coupling } from "../mechanics/model.ts";
import { sheetInShear } from "../mechanics/plates/sheet-in-shear.ts";
import { acrossRow, type FastenedSheet, inSheet } from "./fastened-sheets.ts";
import type { Bound } from "./joint-stiffness.ts";
import type { Structure } from "./structure.ts";

/** A fastened sheet as the solver takes it. */
export interface SheetBrace {
  readonly sheet: FastenedSheet;
  readonly couplings: readonly Coupling[];
  /** What the hardest pressed screw, or the sheet in shear, bears of what it can, for the forces of the couplings. */
  use(forces: readonly number[]): number;
}

/**
 * How far one screw lets a sheet slip, N/m: typical as sheet screws in the design of sheeted frames (0.25 mm/kN; ECCS No. 88,
 * 1995, table 5.1, has 0.15 for washers of metal and 0.35 of rubber, from memory), soft and stiff a factor apart.
 */
const SLIP: Readonly<Record<Bound, number>> = { soft: 1.5e6, typical: 4e6, stiff: 10e6 };

/** Sheets that brace the bars of a structure, for one stiffness of joints. */
export function sheetBraces(sheets: readonly FastenedSheet[], structure: Structure, bound: Bound): SheetBrace[] {
  return sheets.flatMap((sheet): SheetBrace[] => {
    const rows = sheet.rows.filter(({ bar }) => structure.piecesOf(bar).length > 0);
    if (rows.length < 2) return [];
    const { forms, borne } = sheetInShear({
      rows: rows.map(({ ends, screws }) => ({ from: inSheet(sheet, ends[0]), to: inSheet(sheet, ends[1]), screws })),
      slip: SLIP[bound],
      shear: sheet.shear,
    });
    const couplings = forms.map(
      ({ weights, stiffness }): Coupling => ({
        stiffness,
        points: rows.flatMap((row, r) => {
          const [along, across] = acrossRow(sheet, row);
          return ([0, 1] as const).map((end) => ({
            node: structure.nodeAt(row.bar, row.stations[end]),
            at: row.ends[end],
            direction: add(scale(along, (weights[3 * r] ?? 0) / 2), scale(across, weights[3 * r + 1 + end] ?? 0)),
          }));
        }),
      }),
    );
    return [
      {
        sheet,
        couplings,
        use(forces) {
          const { screw, shear } = borne(forces);
          return Math.max(screw / sheet.trusted, Math.abs(shear) / sheet.buckles);
        },
      },
    ];
  });
}

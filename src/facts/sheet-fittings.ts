import { prismPenetration } from "../geometry/prism-penetration.ts";
import { overlappingPairs } from "../geometry/sweep-and-prune.ts";
import type { Panel } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { NO_DEPTH } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { obstacles } from "./obstacles.ts";
import { panelBoxes } from "./panel-boxes.ts";
import { sheetPieces } from "./sheet-clashes.ts";
import { sheets } from "./sheets.ts";

/** Brackets, plates and heads that stand where a sheet should lie on its bars. */
export interface SheetFittings {
  readonly panel: Panel;
  readonly fittings: readonly Ref[];
  /** The most any of them would have to move, m. */
  readonly depth: number;
}

/** What of the connectors stands in sheets laid on bars or screwed to their faces; their own screws go through them. */
export const sheetFittings = defineFact<
  readonly SheetFittings[],
  { obstacles: typeof obstacles; sheets: typeof sheets; boxes: typeof panelBoxes }
>({
  id: "sheet-fittings",
  needs: { obstacles, sheets, boxes: panelBoxes },
  compute({ obstacles: things, sheets: laid, boxes }) {
    const pieces = laid.flatMap(({ panel }) =>
      sheetPieces(panel, boxes.get(panel.ref.id)?.box).map((piece) => ({ panel, ...piece })),
    );
    const fittings = things.filter(({ of }) => of.kind === "connector" || of.kind === "screw");
    const found = new Map<Panel, Map<string, { readonly by: Ref; readonly depth: number }>>();
    for (const [i, j] of overlappingPairs([...pieces, ...fittings].map(({ bounds }) => bounds))) {
      const [sheet, thing] = [pieces[Math.min(i, j)], fittings[Math.max(i, j) - pieces.length]];
      if (!sheet || !thing || thing.joint?.id === sheet.panel.ref.id) continue;
      const { depth } = prismPenetration(sheet.prism, thing.prism);
      const own = found.get(sheet.panel) ?? new Map<string, { by: Ref; depth: number }>();
      if (depth > NO_DEPTH && depth > (own.get(thing.of.id)?.depth ?? 0)) own.set(thing.of.id, { by: thing.of, depth });
      if (own.size > 0) found.set(sheet.panel, own);
    }
    return laid.map(({ panel }) => {
      const own = [...(found.get(panel)?.values() ?? [])];
      return { panel, fittings: own.map(({ by }) => by), depth: Math.max(0, ...own.map(({ depth }) => depth)) };
    });
  },
});

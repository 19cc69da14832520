import type { Cure, Edit, Proposal } from "./cure.ts";
import { gasketsFor, panelOf, sheetsLike } from "./panel-of.ts";

/** A strip that takes the sheet, else the nearest thickness of that material that the slot takes; a size of the file's own left out. */
export const fittingSheet: Cure = {
  id: "fitting-sheet",
  turn: 1,
  mends: ["panel.misfit"],
  *propose(ailment, patient): Iterable<Proposal> {
    const found = panelOf(ailment, patient);
    if (!found) return;
    const { panel, written, pointer } = found;
    if (["large", "jams", "slips"].includes(ailment.key)) {
      if (written.size !== undefined)
        yield { words: "its size worked out", edits: [{ pointer: `${pointer}/size`, to: undefined }] };
      return;
    }
    if (!["strip", "thin", "tight", "thick"].includes(ailment.key)) return;
    const strip = (name: string): Edit => ({ pointer: `${pointer}/gasket`, to: name });
    for (const { name } of gasketsFor(panel, panel.sheet.thickness, patient))
      if (name !== written.gasket) yield { words: `gasket ${name}`, edits: [strip(name)] };
    const off = ({ thickness }: { readonly thickness: number }): number => Math.abs(thickness - panel.sheet.thickness);
    for (const sheet of [...sheetsLike(panel, patient)].sort((a, b) => off(a) - off(b))) {
      if (sheet.name === panel.sheet.name) continue;
      const change: Edit = { pointer: `${pointer}/sheet`, to: sheet.name };
      const gaskets = gasketsFor(panel, sheet.thickness, patient);
      if (written.gasket === undefined || gaskets.some(({ name }) => name === written.gasket))
        yield { words: `sheet ${sheet.name}`, edits: [change] };
      for (const { name } of gaskets)
        if (name !== written.gasket)
          yield { words: `sheet ${sheet.name} with gasket ${name}`, edits: [change, strip(name)] };
    }
  },
};

import type { Cure, Edit, Proposal } from "./cure.ts";
import { gasketsFor, panelOf, sheetsLike } from "./panel-of.ts";

/** A sheet is worth a try when its stiffness, thickness cubed, grows by this share of what is asked: loads and stretching differ. */
const HOPEFUL = 0.7;

/** The thinnest sheet of the same material that does, in slots with a strip that takes it. */
export const thickerSheet: Cure = {
  id: "thicker-sheet",
  turn: 1,
  mends: ["panel.flexes"],
  *propose(ailment, patient): Iterable<Proposal> {
    const found = panelOf(ailment, patient);
    if (!found) return;
    const { panel, pointer } = found;
    const { held, sheet: now } = panel;
    for (const sheet of sheetsLike(panel, patient)) {
      const growth = (sheet.thickness / now.thickness) ** 3;
      if (sheet.thickness <= now.thickness || growth < HOPEFUL * (ailment.utilisation ?? 1)) continue;
      const change: Edit = { pointer: `${pointer}/sheet`, to: sheet.name };
      const gaskets = gasketsFor(panel, sheet.thickness, patient);
      const kept = held.kind !== "in-slot" || gaskets.some(({ name }) => name === held.gasket?.name);
      if (kept || (held.kind === "in-slot" && !held.gasket)) yield { words: `sheet ${sheet.name}`, edits: [change] };
      if (kept) continue;
      for (const { name } of gaskets)
        yield {
          words: `sheet ${sheet.name} with gasket ${name}`,
          edits: [change, { pointer: `${pointer}/gasket`, to: name }],
        };
    }
  },
};

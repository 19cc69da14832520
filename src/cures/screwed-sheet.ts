import type { Frame } from "../model/frame.ts";
import type { Sheet } from "../model/stock/stock.ts";
import { formatQuantity } from "../model/units/format-quantity.ts";
import type { Cure, Edit, Patient, Proposal } from "./cure.ts";
import { outerPairs, postPairs } from "./posts.ts";
import { freshId, inFile, writtenBar } from "./written.ts";

/** Thickness of a sheet that bears a push between the posts of a bench and can still be lifted: 12 mm or half an inch, m. */
const THICK = [0.0115, 0.0135] as const;
/** Distance of its screws, m: close enough to brace. */
const PITCH = 0.25;

/** What the frame uses already where that is thick enough, else the lightest of stock. */
function sheetFor(frame: Frame): Sheet | undefined {
  const fits = ({ thickness }: Sheet): boolean => thickness >= THICK[0] && thickness <= THICK[1];
  const used = frame.panels.map(({ sheet }) => sheet).find(fits);
  if (used) return used;
  const weight = (sheet: Sheet): number => sheet.density * sheet.thickness;
  return [...frame.stock.sheets.values()].filter(fits).sort((a, b) => weight(a) - weight(b))[0];
}

/** Sheets screwed to the outer faces of posts: they brace by the slip of their screws. */
export const screwedSheet: Cure = {
  id: "screwed-sheet",
  turn: 3,
  mends: ["frame.sways", "frame.unbraced", "frame.buckles"],
  *propose(_, { frame, file }: Patient): Iterable<Proposal> {
    const sheet = sheetFor(frame);
    if (!sheet) return;
    const all = postPairs(frame);
    for (const axes of [[0, 1], [0], [1]] as const) {
      const edits: Edit[] = [];
      const ids = new Set<string>();
      for (const axis of axes)
        for (const { pair, on } of outerPairs(all, axis)) {
          const bars = [pair.a.ref.id, pair.b.ref.id];
          const id = freshId(file, `brace-${bars.join("-")}`);
          if (ids.has(id) || !bars.every((bar) => writtenBar(file, bar))) continue;
          ids.add(id);
          edits.push({
            pointer: "/panels/-",
            to: { id, sheet: sheet.name, held: "on-face", bars, on, screws: { pitch: inFile(PITCH, file) } },
          });
        }
      if (edits.length === 0) continue;
      if (file.panels === undefined) edits.unshift({ pointer: "/panels", to: [] });
      const way = axes.map((axis) => (axis === 0 ? "x" : "y")).join(" and ");
      yield {
        words: `${ids.size === 1 ? "a sheet" : `${ids.size} sheets`} of ${sheet.name} screwed to the outer faces of the posts along ${way}, screws ${formatQuantity(PITCH, "length", frame.units)} apart`,
        edits,
      };
    }
  },
};

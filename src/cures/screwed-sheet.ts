import { bodies } from "../facts/bodies.ts";
import { factOf } from "../facts/fact.ts";
import { type Obstacle, obstacles } from "../facts/obstacles.ts";
import { screwedParts } from "../facts/screwed-parts.ts";
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

/** A sheet ends so far in front of a bracket, and at a whole number of these, m. */
const CLEAR = 0.001;

/** By how much a sheet on posts has to end below their tops and above their feet to clear the brackets on that face, m. */
function drawnBack(frame: Frame, bars: readonly string[], on: string): readonly [number, number] {
  const posts = bars.flatMap((bar) => factOf(bodies, frame).get(bar) ?? []);
  const axis = on.endsWith("x") ? 0 : 1;
  const sign = on.startsWith("-") ? -1 : 1;
  const out = ({ bounds: { min, max } }: Pick<Obstacle, "bounds">): number => (sign > 0 ? max[axis] : -min[axis]);
  const face = Math.max(...posts.map(out));
  const [low, high] = [
    Math.min(...posts.map(({ bounds }) => bounds.min[2])),
    Math.max(...posts.map(({ bounds }) => bounds.max[2])),
  ];
  const held = new Set(
    factOf(screwedParts, frame).all.flatMap(({ ref, holds }) =>
      holds.some(({ bar }) => bars.includes(bar)) ? [ref.id] : [],
    ),
  );
  let [foot, top] = [low, high];
  for (const thing of factOf(obstacles, frame)) {
    if (!held.has(thing.part.id) || out(thing) < face + CLEAR) continue;
    const [from, to] = [thing.bounds.min[2], thing.bounds.max[2]];
    if (to < low || from > high) continue;
    if (from + to > low + high) top = Math.min(top, from - CLEAR);
    else foot = Math.max(foot, to + CLEAR);
  }
  const whole = (length: number): number => Math.ceil(length / CLEAR - 1e-6) * CLEAR;
  return [whole(foot - low), whole(high - top)];
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
          const [foot, top] = drawnBack(frame, bars, on);
          const short =
            foot + top > 0 ? { overhang: [0, 0, -inFile(foot, file), -inFile(top, file)].map((side) => side + 0) } : {};
          edits.push({
            pointer: "/panels/-",
            to: { id, sheet: sheet.name, held: "on-face", bars, on, ...short, screws: { pitch: inFile(PITCH, file) } },
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

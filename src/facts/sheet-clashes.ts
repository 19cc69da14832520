import { type Bounds3, boundsOf } from "../geometry/bounds.ts";
import type { OrientedBox } from "../geometry/box.ts";
import { type Prism, prismFromBox } from "../geometry/prism.ts";
import { prismPenetration } from "../geometry/prism-penetration.ts";
import { overlappingPairs } from "../geometry/sweep-and-prune.ts";
import type { Panel } from "../model/frame.ts";
import { type Ref, ref } from "../model/ref.ts";
import { bodies } from "./bodies.ts";
import { NO_DEPTH } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { panelBoxes } from "./panel-boxes.ts";
import { sheets } from "./sheets.ts";

/** A bar that stands in a sheet laid on bars or screwed to their faces. */
export interface SheetClash {
  readonly panel: Ref<"panel">;
  readonly bar: Ref<"bar">;
  /** The least move that would part the two, m. */
  readonly depth: number;
}

/** The sheet less the notches in its four corners, as two boxes across each other. */
function notchedPieces(box: OrientedBox, [u, v]: readonly [number, number]): readonly OrientedBox[] {
  const [a, b, t] = box.half;
  if (u <= 0 || v <= 0) return [box];
  const halves = [
    [a - u, b, t],
    [a, b - v, t],
  ] as const;
  return halves.filter(([p, q]) => p > 0 && q > 0).map((half) => ({ ...box, half }));
}

/** What of a sheet its notches leave, as convex solids; none where its place is not known. */
export function sheetPieces(
  panel: Panel,
  box: OrientedBox | undefined,
): readonly { readonly prism: Prism; readonly bounds: Bounds3 }[] {
  return (box ? notchedPieces(box, panel.notches ?? [0, 0]) : []).map((piece) => {
    const prism = prismFromBox(piece);
    return { prism, bounds: boundsOf(prism.vertices) };
  });
}

interface Solid {
  readonly of: Ref<"panel"> | Ref<"bar">;
  readonly prism: Prism;
  readonly bounds: Bounds3;
}

/**
 * Bars that stand in sheets on bars, by the separating axes of their envelopes, notches in corners cut out. Panels in slots have their own
 * rule for bars that cross them.
 */
export const sheetClashes = defineFact<
  readonly SheetClash[],
  { bodies: typeof bodies; sheets: typeof sheets; boxes: typeof panelBoxes }
>({
  id: "sheet-clashes",
  needs: { bodies, sheets, boxes: panelBoxes },
  compute({ bodies: all, sheets: laid, boxes }) {
    const solids: Solid[] = laid.flatMap(({ panel }) =>
      sheetPieces(panel, boxes.get(panel.ref.id)?.box).map((piece) => ({ of: panel.ref, ...piece })),
    );
    if (solids.length === 0) return [];
    for (const { bar, prism, bounds } of all.values()) if (prism) solids.push({ of: bar.ref, prism, bounds });
    const worst = new Map<string, SheetClash>();
    for (const [i, j] of overlappingPairs(solids.map(({ bounds }) => bounds))) {
      const [a, b] = [solids[Math.min(i, j)], solids[Math.max(i, j)]];
      if (!a || !b || a.of.kind !== "panel" || b.of.kind !== "bar") continue;
      const { depth } = prismPenetration(a.prism, b.prism);
      const key = `${a.of.id} ${b.of.id}`;
      if (depth > NO_DEPTH && depth > (worst.get(key)?.depth ?? 0))
        worst.set(key, { panel: ref("panel", a.of.id), bar: ref("bar", b.of.id), depth });
    }
    return [...worst.values()];
  },
});

import type { Panel } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { defineFact } from "./fact.ts";
import { type Obstacle, panelObstacles } from "./panel-obstacles.ts";

/** Something in a corner of a panel. */
export interface CornerObstacle {
  readonly by: Ref;
  /** How far it reaches from the corner, along the first and second axis, of the panel pushed into it, m. */
  readonly reaches: readonly [number, number];
  /** Left between it and the notches given, m; negative by how far it stands in the sheet. */
  readonly room: number;
}

export interface PanelNotches {
  readonly panel: Panel;
  readonly corners: readonly CornerObstacle[];
  /** The smallest notches that clear all that stands in the corners, with the room usual there, m; none where nothing does. */
  readonly needed: readonly [number, number] | undefined;
  /** What stands in an edge or in the field, where notches in the corners do not help. */
  readonly elsewhere: readonly { readonly by: Ref; readonly depth: number }[];
  /** Other bars that cross the panel away from its corners, and how far they stand in it. */
  readonly crossing: readonly { readonly by: Ref; readonly depth: number }[];
}

/** What leaves less of the sheet than this between itself and both edges stands in the corner, m: such a strip would break off. */
const STRIP = 0.03;
/** Room round what a notch is cut for, m: common practice, 1 to 2 mm. */
export const NOTCH_ROOM = 0.001;
/** Notches are full millimetres or 1/32 in. */
const STEP = { "mm-N-kg": 0.001, "in-lbf-lb": 0.0254 / 32 } as const;

/** The least way out of a rectangle for something in it: how deep it stands in the sheet, m. */
function depthOf({ spans }: Obstacle, reach: readonly [readonly [number, number], readonly [number, number]]): number {
  const ways = spans.flatMap(([low, high], axis) => {
    const [start, end] = reach[axis as 0 | 1];
    return [high - start, end - low];
  });
  return Math.min(...ways);
}

/** Which fittings and bars stand in the corners and edges of panels, and how large notches must be to clear them. */
export const panelNotches = defineFact<readonly PanelNotches[], { obstacles: typeof panelObstacles }>({
  id: "panel-notches",
  needs: { obstacles: panelObstacles },
  compute({ obstacles: all }, frame) {
    const step = STEP[frame.units];
    return all.map(({ slotPanel: { panel }, reach, opening, fittings, bars }): PanelNotches => {
      const [u, v] = panel.notches ?? [0, 0];
      const corners: CornerObstacle[] = [];
      const elsewhere: { by: Ref; depth: number }[] = [];
      const crossing: { by: Ref; depth: number }[] = [];
      for (const fitting of [...fittings, ...bars]) {
        const sides = fitting.spans.map(([low, high], axis) => {
          const [start, end] = reach[axis as 0 | 1];
          const [from, to] = opening[axis as 0 | 1];
          return low - start <= end - high
            ? { strip: low - from, reach: high - start }
            : { strip: to - high, reach: end - low };
        });
        const [a, b] = sides;
        if (!a || !b) continue;
        if (a.strip <= STRIP && b.strip <= STRIP) {
          corners.push({
            by: fitting.by,
            reaches: [a.reach, b.reach],
            room: u > 0 && v > 0 ? Math.min(u - a.reach, v - b.reach) : -Math.min(a.reach, b.reach),
          });
        } else (bars.includes(fitting) ? crossing : elsewhere).push({ by: fitting.by, depth: depthOf(fitting, reach) });
      }
      const along = (axis: 0 | 1): number =>
        Math.ceil((Math.max(...corners.map(({ reaches }) => reaches[axis])) + NOTCH_ROOM) / step - 1e-6) * step;
      return {
        panel,
        corners,
        needed: corners.length > 0 ? [along(0), along(1)] : undefined,
        elsewhere,
        crossing,
      };
    });
  },
});

import { along, cross, dot, normalise } from "../geometry/vector.ts";
import { sag } from "../mechanics/member/sag.ts";
import { valueAt } from "../mechanics/piecewise.ts";
import { up } from "./axes.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { type Foothold, footing } from "./footing.ts";
import { type Governed, governing } from "./governing.ts";
import type { View } from "./response.ts";
import type { Span } from "./spans.ts";

/** How far bars bend between what holds them, and past it. */
export interface Sags {
  /**
   * Largest distance of a bar from the line between the ends of a span, m. On an overhang, how far its tip moves from where the bar is
   * held: down and across with what the bar turns there, up without it.
   */
  of(view: View, bar: string, span: Span): number | undefined;
}

/**
 * How far the frame as a whole turns about the vertical as its feet slide, rad: the rigid turn nearest to what the feet do. In plumb one
 * foot is held and one kept from turning round it, so that legs that splay turn the whole; no bar bends by that.
 */
function turnInPlan(view: View, feet: readonly Foothold[]): number {
  const middle = (of: (i: number) => number): number => feet.reduce((sum, _, i) => sum + of(i), 0) / feet.length;
  const moved = feet.map(({ node }) => view.moved(node));
  const at = (i: number, axis: 0 | 1): number => feet[i]?.at[axis] ?? 0;
  const by = (i: number, axis: 0 | 1): number => moved[i]?.[axis] ?? 0;
  const [x, y] = [middle((i) => at(i, 0)), middle((i) => at(i, 1))];
  let [turned, spread] = [0, 0];
  for (let i = 0; i < feet.length; i += 1) {
    const [dx, dy] = [at(i, 0) - x, at(i, 1) - y];
    turned += dx * by(i, 1) - dy * by(i, 0);
    spread += dx * dx + dy * dy;
  }
  return spread > 0 ? turned / spread : 0;
}

/** Bars steeper than this, as the cosine of what is left of down across them, have no down to sag to. */
const PLUMB = 0.02;

/** Sag of every bar under every view. */
export const sags = defineFact<Sags, { bodies: typeof bodies; footing: typeof footing }>({
  id: "sags",
  needs: { bodies, footing },
  compute({ bodies: all, footing: feet }) {
    const turns = new Map<View, number>();
    const turnOf = (view: View): number => {
      const known = turns.get(view) ?? turnInPlan(view, feet);
      turns.set(view, known);
      return known;
    };
    return {
      of(view, bar, span) {
        const moved = view.deflections(bar);
        const body = all.get(bar);
        if (!moved || !body) return undefined;
        if (span.kind === "between") return Math.abs(sag(moved, span.from, span.to).value);
        const { x, y, z } = body.axes;
        const tip = span.held === span.from ? span.to : span.from;
        const past = tip - span.held;
        const turn = cross(up, x).map((part) => part * turnOf(view) * past) as unknown as typeof x;
        // Of the tip against where the bar is held, the turn of the whole left out, in the bar's own y and z.
        const way = [
          valueAt(moved.y, tip) - valueAt(moved.y, span.held) - dot(turn, y),
          valueAt(moved.z, tip) - valueAt(moved.z, span.held) - dot(turn, z),
        ] as const;
        const down = along([0, 0, -1], x, dot(up, x));
        if (Math.hypot(...down) < PLUMB) return Math.hypot(...way);
        const square = normalise(down);
        const own = [dot(square, y), dot(square, z)] as const;
        const drop = way[0] * own[0] + way[1] * own[1];
        const across = way[1] * own[0] - way[0] * own[1];
        if (drop >= 0) return Math.hypot(drop, across);
        // A tip that the span beside it lifts does not hang; what bends it upward itself counts.
        const bent = [way[0] - valueAt(moved.turnZ, span.held) * past, way[1] + valueAt(moved.turnY, span.held) * past];
        const rise = Math.max(0, -((bent[0] ?? 0) * own[0] + (bent[1] ?? 0) * own[1]));
        return Math.hypot(rise, across);
      },
    };
  },
});

/** Sag of one span as it governs under service loads. */
export function governedSag(
  found: Sags,
  views: readonly View[],
  bar: string,
  span: Span,
): Governed<"length"> | undefined {
  return governing(views, ["service"], "length", (view) => found.of(view, bar, span));
}

import { dot, subtract } from "../geometry/vector.ts";
import { defineFact } from "./fact.ts";
import { opposite } from "./opposite.ts";
import { planAxes } from "./plan-axes.ts";
import { pushLevel } from "./push-level.ts";
import { response, type View } from "./response.ts";

/** How far the frame gives under a push along one of its axes in plan. */
export interface Sway {
  /** The view of the push along the positive axis. */
  readonly view: View;
  readonly axis: 0 | 1;
  /** m, at the height of the push. */
  readonly amount: number;
}

/**
 * Sway of the pushed nodes: half the difference between pushes to one side and to the other, so that what the loads alone
 * put askew is not counted. Pushes under which the frame lifts off its feet have no view and are left out.
 */
export const sways = defineFact<
  readonly Sway[],
  { response: typeof response; level: typeof pushLevel; plan: typeof planAxes }
>({
  id: "sways",
  needs: { response, level: pushLevel, plan: planAxes },
  compute({ response: found, level, plan }) {
    if (found.kind !== "solved") return [];
    const list: Sway[] = [];
    for (const view of found.views) {
      const { kind, side } = view.combination;
      if (kind !== "sway" || side?.sign !== 1) continue;
      const back = opposite(view, found.views);
      if (!back) continue;
      let amount = 0;
      for (const node of level.nodes) {
        const half = dot(subtract(view.moved(node), back.moved(node)), plan.directions[side.axis]) / 2;
        amount = Math.max(amount, Math.abs(half));
      }
      list.push({ view, axis: side.axis, amount });
    }
    return list;
  },
});

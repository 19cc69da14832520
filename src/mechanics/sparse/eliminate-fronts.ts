import { at } from "./at.ts";
import { eliminate, type TakePivot } from "./front.ts";
import type { FrontPlan } from "./front-plan.ts";
import { handOn } from "./hand-on.ts";
import type { Workspace } from "./workspace.ts";

/** Multifrontal elimination: Duff, Reid 1983; the blocks handed on wait on a stack: Liu 1992, "The multifrontal method". */
export function eliminateFronts(
  plan: FrontPlan,
  workspace: Workspace,
  diagonal: Float64Array,
  takePivot: TakePivot,
): void {
  const { panels, stack, scaled, subtractTiles } = workspace;
  const waiting = new Int32Array(plan.fronts);
  let depth = 0;
  let top = 0;
  for (let s = 0; s < plan.fronts; s++) {
    const columns = at(plan.firstPlace, s + 1) - at(plan.firstPlace, s);
    const rows = at(plan.rowStart, s + 1) - at(plan.rowStart, s);
    const start = plan.panelStart[s] as number;
    const block = top;
    stack.fill(0, block, block + rows * rows);
    let bottom = top;
    for (let c = 0; c < at(plan.children, s); c++) {
      const child = at(waiting, --depth);
      const size = at(plan.rowStart, child + 1) - at(plan.rowStart, child);
      bottom -= size * size;
      handOn(plan.inParent, at(plan.rowStart, child), size, stack, bottom, panels, start, columns, block, rows);
    }
    const first = at(plan.firstPlace, s);
    eliminate(panels, start, columns, rows, scaled, diagonal, first, takePivot, stack, block, subtractTiles);
    if (rows > 0) {
      stack.copyWithin(bottom, block, block + rows * rows);
      waiting[depth++] = s;
    }
    top = bottom + rows * rows;
  }
}

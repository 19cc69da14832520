import { at } from "./at.ts";
import { eliminate, type Front, type TakePivot } from "./front.ts";
import type { FrontPlan } from "./front-plan.ts";
import { clear, handOn } from "./hand-on.ts";
import type { Workspace } from "./workspace.ts";

/**
 * Multifrontal elimination: Duff, Reid 1983; the blocks handed on wait on a stack: Liu 1992, "The multifrontal method".
 * `value` holds the entries of the matrix; the panels come in as zeros. There are two stacks, for fronts at odd and even depth, so that a block can be made while those of the children are read.
 */
export function eliminateFronts(
  plan: FrontPlan,
  value: Float64Array,
  workspace: Workspace,
  diagonal: Float64Array,
  takePivot: TakePivot,
): void {
  const { panels, stack, products, subtractTiles } = workspace;
  const tops = [0, plan.oddStack];
  const waiting = [new Int32Array(plan.fronts), new Int32Array(plan.fronts)] as const;
  const depths = [0, 0];
  for (let s = 0; s < plan.fronts; s++) {
    const rows = at(plan.rowStart, s + 1) - at(plan.rowStart, s);
    const own = plan.odd[s] === 1 ? 1 : 0;
    const below = own === 1 ? 0 : 1;
    const front: Front = {
      panel: panels,
      start: plan.panelStart[s] as number,
      columns: at(plan.firstPlace, s + 1) - at(plan.firstPlace, s),
      rows,
      block: stack,
      blockStart: tops[own] as number,
    };
    for (let e = at(plan.entryStart, s); e < at(plan.entryStart, s + 1); e++) {
      panels[at(plan.target, e)] = value[at(plan.entry, e)] as number;
    }
    const children = at(plan.children, s);
    if (children === 0) clear(front);
    let top = tops[below] as number;
    let depth = depths[below] as number;
    for (let c = 0; c < children; c++) {
      const child = at(waiting[below], --depth);
      const places = at(plan.rowStart, child);
      const size = at(plan.rowStart, child + 1) - places;
      top -= size * size;
      handOn({ numbers: stack, from: top, size, inParent: plan.inParent, places }, front, c === 0);
    }
    tops[below] = top;
    depths[below] = depth;
    eliminate(front, products, diagonal, at(plan.firstPlace, s), takePivot, subtractTiles);
    if (rows === 0) continue;
    tops[own] = front.blockStart + rows * rows;
    const height = depths[own] as number;
    waiting[own][height] = s;
    depths[own] = height + 1;
  }
}

import type { Analysis } from "./analyse.ts";
import { type SubtractTiles, subtractTiles } from "./front-kernel.ts";
import { wideKernel } from "./wide-kernel.ts";

/** "plain" is the kernel in TypeScript; "wide" does the same on two numbers at a time. */
export type KernelName = "plain" | "wide";

/** Room for a factorisation, all zeros to begin with, and the kernel that works on it. */
export interface Workspace {
  readonly panels: Float64Array;
  readonly stack: Float64Array;
  readonly products: Float64Array;
  readonly subtractTiles: SubtractTiles;
}

/** From here on the wide kernel gains more than its own memory costs (measured: a tenth of a second of plain kernel). */
const WIDE_FROM_FLOPS = 3e8;

export function makeWorkspace(analysis: Analysis, kernel?: KernelName): Workspace {
  const { plan, memory } = analysis;
  const chosen = kernel ?? (analysis.flops[analysis.ordering] >= WIDE_FROM_FLOPS ? "wide" : "plain");
  const wide = chosen === "wide" ? wideKernel(memory.factor + memory.working) : undefined;
  const take = wide?.take ?? ((count: number) => new Float64Array(count));
  return {
    panels: take(memory.factor),
    stack: take(plan.stackSize),
    products: take(plan.largestPanel),
    subtractTiles: wide?.subtractTiles ?? subtractTiles,
  };
}

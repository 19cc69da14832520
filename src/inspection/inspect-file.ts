import { builtInCures } from "../cures/index.generated.ts";
import { cureBudget } from "./cure-budget.ts";
import { type Inspection, inspectOnce } from "./inspect-once.ts";
import { offerCures } from "./offer-cures.ts";
import type { Report } from "./report.ts";

export type { Inspection } from "./inspect-once.ts";
export type { StockBytes } from "./stock-in-force.ts";

/** Inspects one frame file and, within its budget, tries cures on copies of it. Pure; the same in every thread. */
export function inspectFile(inspection: Inspection): Report {
  const inspected = inspectOnce(inspection);
  const trials = cureBudget(inspection.cureTrials ?? 0, inspected.read?.frame?.bars.length ?? 0);
  return trials > 0 ? offerCures(inspection, inspected, builtInCures, trials) : inspected.report;
}

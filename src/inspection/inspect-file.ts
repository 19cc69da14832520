import { builtInCures } from "../cures/index.generated.ts";
import type { Frame } from "../model/frame.ts";
import { cureBudget } from "./cure-budget.ts";
import { type Inspection, inspectOnce } from "./inspect-once.ts";
import { offerCures } from "./offer-cures.ts";
import type { Report } from "./report.ts";

export type { Inspection } from "./inspect-once.ts";
export type { StockBytes } from "./stock-in-force.ts";

/** The result of an inspection with the frame it is about. */
export interface InspectedFrame {
  readonly report: Report;
  /** As it was judged: what was worked out of it is known for whoever draws it. Absent where the file could not be read. */
  readonly frame?: Frame;
}

/** Inspects one frame file and, within its budget, tries cures on copies of it. Pure; the same in every thread. */
export function inspectFrame(inspection: Inspection): InspectedFrame {
  const inspected = inspectOnce(inspection);
  const { report, read } = inspected;
  const trials = cureBudget(inspection.cureTrials ?? 0, read?.frame?.bars.length ?? 0);
  return {
    report: trials > 0 ? offerCures(inspection, inspected, builtInCures, trials) : report,
    ...(read ? { frame: read.frame } : {}),
  };
}

/** The result alone. */
export const inspectFile = (inspection: Inspection): Report => inspectFrame(inspection).report;

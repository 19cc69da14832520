import type { Reporter } from "../inspection/report.ts";
import { textReporter } from "../report/text/text-reporter.ts";
import type { Format } from "./report-plan.ts";

export interface ReporterOptions {
  readonly version: string;
  readonly width: number;
  readonly coloured: boolean;
  /** Why the run as a whole could not do what was asked. */
  readonly faults: readonly string[];
}

/** The reporter of a form; the machine forms are loaded only when asked for. */
export async function reporterFor(as: Format, options: ReporterOptions): Promise<Reporter> {
  if (as === "json") return (await import("../report/json/json-reporter.ts")).jsonReporter(options);
  if (as === "sarif") return (await import("../report/sarif/sarif-reporter.ts")).sarifReporter(options);
  return textReporter(options);
}

import type { Reporter, Verdict } from "../../inspection/report.ts";
import { frameRecord } from "./frame-record.ts";
import { safeJson } from "./safe-json.ts";

/** Of schema/report.schema.json: a minor version only adds. */
const FORMAT_VERSION = "1.0";

export interface JsonOptions {
  readonly version: string;
  /** Why the run as a whole could not do what was asked. */
  readonly faults?: readonly string[];
}

/** The whole of every report as one JSON document of the published schema; one frame a line, never cut. */
export function jsonReporter({ version, faults = [] }: JsonOptions): Reporter {
  const total: Record<Verdict | "frames" | "findings", number> = {
    frames: 0,
    findings: 0,
    accept: 0,
    hold: 0,
    reject: 0,
    unread: 0,
  };
  return {
    *begin(rules) {
      const head = { formatVersion: FORMAT_VERSION, tool: { name: "trysquare", version }, faults, rules };
      yield `${safeJson(head).slice(0, -1)},"frames":[`;
    },
    *frame(report) {
      const text = safeJson(frameRecord(report));
      yield `${total.frames === 0 ? "" : ","}\n${text}`;
      total.frames++;
      total.findings += report.findings.length;
      total[report.verdict]++;
    },
    *end() {
      yield `\n],"total":${safeJson(total)}}\n`;
    },
  };
}

import type { Reporter, RuleCard } from "../../inspection/report.ts";
import { safeJson } from "../json/safe-json.ts";
import { findingResult } from "./finding-result.ts";
import { executionNotifications, faultNotification, notificationDescriptors } from "./notifications.ts";
import { ruleDescriptor } from "./rule-descriptor.ts";
import { undecidedResult } from "./undecided-result.ts";

const SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

export interface SarifOptions {
  readonly version: string;
  /** Why the run as a whole could not do what was asked. */
  readonly faults?: readonly string[];
}

/** One run in SARIF 2.1.0 (OASIS Standard with Errata 01): a result a line, no times, no absolute paths, never cut. */
export function sarifReporter({ version, faults = [] }: SarifOptions): Reporter {
  const rules = new Map<string, { readonly card: RuleCard; readonly index: number }>();
  const notifications: string[] = [];
  let successful = faults.length === 0;
  let first = true;
  return {
    *begin(cards) {
      for (const [index, card] of cards.entries()) rules.set(card.id, { card, index });
      const driver = {
        name: "trysquare",
        version,
        language: "en",
        rules: cards.map(ruleDescriptor),
        notifications: notificationDescriptors,
      };
      const head = safeJson({ tool: { driver }, columnKind: "utf16CodeUnits" });
      yield `{"$schema":"${SCHEMA}","version":"2.1.0","runs":[${head.slice(0, -1)},"results":[`;
    },
    *frame(report) {
      const results: string[] = [];
      for (const finding of report.findings)
        results.push(safeJson(findingResult(report, finding, rules.get(finding.rule))));
      for (const undecided of report.undecided) {
        for (const rule of undecided.rules)
          results.push(safeJson(undecidedResult(report, undecided, rule, rules.get(rule)?.index)));
      }
      successful &&= report.complete;
      for (const notification of executionNotifications(report, (rule) => rules.get(rule)?.index))
        notifications.push(safeJson(notification));
      for (const result of results) {
        yield `${first ? "" : ","}\n${result}`;
        first = false;
      }
    },
    *end() {
      const configuration = safeJson(faults.map(faultNotification));
      const execution = `[${notifications.join(",\n")}]`;
      yield `\n],"invocations":[{"executionSuccessful":${successful},"toolConfigurationNotifications":${configuration},"toolExecutionNotifications":${execution}}]}]}\n`;
    },
  };
}

import { defineCriterion } from "../../src/criteria/criterion.ts";
import type { Engine } from "../../src/host/engine.ts";
import type { Failure, Finding, Report } from "../../src/inspection/report.ts";
import type { Problem } from "../../src/model/problem.ts";
import { type Ref, ref } from "../../src/model/ref.ts";
import { defineRule } from "../../src/rules/shape/rule.ts";

const sag = defineCriterion({
  name: "sag",
  quantity: "length",
  standard: "span / 300",
  about: "how far a bar may sag",
  basis: "common practice",
});
const sags = defineRule({
  id: "bar.sags",
  title: "Bars stay straight under load",
  group: "bars",
  level: "hold",
  basis: ["common practice"],
  needs: {},
  criteria: { sag },
  messages: { sag: { text: "sags {sag:length}", measures: "length", sense: "at most" } },
  *inspect() {},
});

interface Orders {
  readonly verdict?: Report["verdict"];
  readonly note?: boolean;
  readonly findings?: number;
  readonly name?: string;
  readonly crash?: string;
  readonly fail?: boolean;
}

function findingFor(file: string, orders: Orders, number: number): Finding {
  const name = orders.name ?? `rail-${number}`;
  const place = { file, pointer: "/bars/0", line: 1, column: 1, endLine: 1, endColumn: 2 };
  const level = orders.note ? "note" : orders.verdict === "reject" ? "reject" : "hold";
  return {
    rule: "bar.sags",
    key: "sag",
    level,
    at: ref("bar", name),
    where: name,
    text: "sags 8.1 mm",
    shown: { sag: "8.1 mm" },
    amounts: {},
    related: [],
    place,
    print: `bar.sags|sag|${name}`,
    cures: [],
  };
}

/** An engine that reports what the file orders: the command can be shown without any mechanics. */
export const fakeEngine: Engine = {
  rules: [sags],
  inspect({ file, bytes, house, ruleStarts }) {
    const report = {
      file,
      title: "made to order",
      units: "mm-N-kg",
      complete: true,
      counts: { bars: 1, joints: 0, cases: 1, parts: 1 },
      problems: [],
      findings: [],
      undecided: [],
      tallies: [{ rule: "bar.sags", met: 1, notMet: 0, notApplicable: 0, undecided: 0 }],
      failures: [],
      assumed: [],
      changed: [],
      concessionRemarks: [],
      cureTrials: { tried: 0, untried: 0 },
    } as const;
    let orders: Orders;
    try {
      orders = JSON.parse(new TextDecoder().decode(bytes)) as Orders;
    } catch {
      const place = { file, pointer: "", line: 1, column: 1, endLine: 1, endColumn: 1 };
      const problem: Problem = { code: "syntax", weight: "error", place, found: "something else", expected: "JSON" };
      return { report: { ...report, verdict: "unread", complete: false, problems: [problem] } };
    }
    if (orders.crash !== undefined) throw new Error(orders.crash);
    const findings = Array.from({ length: orders.findings ?? 0 }, (_, i) => findingFor(file, orders, i));
    const failures: Failure[] = orders.fail ? [{ rule: "bar.sags", message: "it failed" }] : [];
    for (const rule of house.rules) {
      ruleStarts?.(rule.id);
      try {
        for (const judgement of rule.inspect({} as never, {} as never, {} as never)) {
          const at = (judgement as { readonly at: Ref }).at;
          findings.push({ ...findingFor(file, { name: at.id }, 0), rule: rule.id, print: `${rule.id}|${at.id}` });
        }
      } catch (error) {
        failures.push({ rule: rule.id, message: error instanceof Error ? error.message : String(error) });
      }
    }
    const verdict = orders.verdict ?? "accept";
    return { report: { ...report, verdict, findings, failures, complete: failures.length === 0 } };
  },
};

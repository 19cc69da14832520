/**
 * Times whole inspections: `npx tsx tests/bench/inspect.bench.ts`. Lines of shelving of ever more bays, CPU seconds of this
 * process each after a warm-up on the shortest, how the time grows with the number of bars, and the rules before which most of
 * it went: a rule pays for the facts that it is the first to ask for. `-- <bars>` stops at that many bars.
 */
import { noSettings } from "../../src/house/settings.ts";
import { inspectFile } from "../../src/inspection/inspect-file.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";
import { baysFor, shelving } from "./shelving.ts";

const BARS = [40, 400, 2000];
const COSTLY = 5; // rules named

const house = { ...noSettings("2027-03-31"), rules: builtInRules };

interface Timed {
  readonly seconds: number;
  readonly findings: number;
  readonly complete: boolean;
  readonly costly: string;
}

const cpu = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

function inspect(bytes: Uint8Array): Timed {
  const spent = new Map<string, number>();
  const before = cpu();
  let [rule, since] = ["reading", before];
  const close = (next: string): void => {
    const now = cpu();
    spent.set(rule, (spent.get(rule) ?? 0) + now - since);
    [rule, since] = [next, now];
  };
  const report = inspectFile({ file: "shelving.frame.json", bytes, stock: [], house, ruleStarts: close });
  close("");
  const costly = [...spent].sort((a, b) => b[1] - a[1]).slice(0, COSTLY);
  return {
    seconds: cpu() - before,
    findings: report.findings.length,
    complete: report.complete && report.verdict !== "unread",
    costly: costly.map(([name, seconds]) => `${name} ${seconds.toFixed(2)}`).join(", "),
  };
}

const most = Number(process.argv[2] ?? Infinity);
inspect(shelving(2).bytes);
const rows: object[] = [];
let last: { readonly bars: number; readonly seconds: number } | undefined;
for (const wanted of BARS.filter((bars) => bars <= most)) {
  const { bytes, bars } = shelving(baysFor(wanted));
  const { seconds, findings, complete, costly } = inspect(bytes);
  // 1 is linear, 2 quadratic.
  const power = last ? Math.log(seconds / last.seconds) / Math.log(bars / last.bars) : undefined;
  rows.push({
    bars,
    "CPU s": seconds.toFixed(2),
    "ms a bar": ((1e3 * seconds) / bars).toFixed(1),
    power: power?.toFixed(2),
    findings,
    complete,
  });
  console.log(`${bars} bars: ${costly}`);
  last = { bars, seconds };
}
console.table(rows);

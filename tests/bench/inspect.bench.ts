/**
 * Times whole inspections: `npx tsx tests/bench/inspect.bench.ts`. Lines of shelving of ever more bays, CPU seconds of this
 * process each after a warm-up on the shortest, how the time grows with the number of bars, and the rules before which most of
 * it went: a rule pays for the facts that it is the first to ask for. `-- <bars>` stops at that many bars.
 */
import { noSettings } from "../../src/house/settings.ts";
import { inspectFile } from "../../src/inspection/inspect-file.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";

const BARS = [40, 400, 2000];
const BAY = { width: 900, depth: 400, height: 1800, levels: [200, 700, 1200, 1700] };
const COSTLY = 5; // rules named

const house = { ...noSettings("2027-03-31"), rules: builtInRules };

/** A line of open shelving: two rows of posts, four levels of rails along and across, brackets below, trays as line loads. */
function shelving(bays: number): { readonly bytes: Uint8Array; readonly bars: number } {
  const bars: object[] = [];
  const rails: string[] = [];
  const along: string[] = [];
  const rows = [0, BAY.depth];
  for (let i = 0; i <= bays; i++) {
    const x = BAY.width * i;
    for (const [row, y] of rows.entries()) {
      bars.push({ id: `post-${i}-${row}`, profile: "40x40-8", from: [x, y, 0], to: [x, y, BAY.height] });
      for (const [level, z] of BAY.levels.entries()) {
        if (i === bays) continue;
        const id = `rail-${i}-${row}-${level}`;
        bars.push({ id, profile: "40x40-8", from: [x, y, z], to: [x + BAY.width, y, z] });
        rails.push(id);
        along.push(id);
      }
    }
    for (const [level, z] of BAY.levels.entries()) {
      const id = `cross-${i}-${level}`;
      bars.push({ id, profile: "40x40-8", from: [x, 0, z], to: [x, BAY.depth, z] });
      rails.push(id);
    }
  }
  const file = {
    format: 1,
    title: `shelving of ${bays} bays`,
    units: "mm-N-kg",
    bars,
    joints: [{ bars: rails, by: [{ connector: "inside-bracket-40", on: "below" }] }],
    loads: [{ case: "trays", on: along, line: 0.15 }],
  };
  return { bytes: new TextEncoder().encode(JSON.stringify(file)), bars: bars.length };
}

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
  const { bytes, bars } = shelving(Math.max(1, Math.round((wanted - 6) / 14)));
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

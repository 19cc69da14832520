/**
 * How the whole mechanics grows with the bars of a row: `npm run bench -- growth`. Rounds of 50,000 bars at once against the same number in
 * rows of 1,000, in turn, all that memory costs included; the ratio of each pair, and the middle one of these.
 */
import type { ChildProcess } from "node:child_process";
import { fork } from "node:child_process";
import { once } from "node:events";

const ROUNDS = 7;
const side = (bays: number): ChildProcess =>
  fork("tests/bench/growth-side.ts", [String(bays)], { execArgv: process.execArgv });
const [thousand, fiftyThousand] = [side(99), side(4999)];

/** CPU microseconds a bar of one round. */
async function round(of: ChildProcess): Promise<number> {
  of.send("go");
  const [spent] = await once(of, "message");
  return spent as number;
}

// The first round of each warms up.
await round(thousand);
await round(fiftyThousand);
const pairs: { readonly small: number; readonly large: number; readonly ratio: number }[] = [];
for (let i = 0; i < ROUNDS; i++) {
  const [small, large] = [await round(thousand), await round(fiftyThousand)];
  pairs.push({ small, large, ratio: large / small });
}
thousand.kill();
fiftyThousand.kill();
console.table(
  pairs.map(({ small, large, ratio }) => ({
    "1,000 bars at a time, µs a bar": small.toFixed(0),
    "50,000 bars at once, µs a bar": large.toFixed(0),
    ratio: ratio.toFixed(2),
  })),
);
const middle = pairs.map(({ ratio }) => ratio).sort((a, b) => a - b)[Math.floor(ROUNDS / 2)] as number;
console.table([{ what: "growth from 1,000 to 50,000 bars, middle ratio", ratio: middle.toFixed(2), budget: "1.20" }]);

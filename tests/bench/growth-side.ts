/**
 * One side of growth.bench.ts, in a process with a heap of its own: a row of as many bays as its argument says. On each message it goes
 * through as many such rows as make up 50,000 bars and answers with the CPU microseconds a bar.
 */
import { prepareFrame } from "../../src/mechanics/frame.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { barResults, loadCases, rack, unit } from "./rack.ts";

const BARS = 50_000;
const CASES = 10;
const model = rack(Number(process.argv[2]), 1, 2);
const cases = loadCases(model, CASES);
const rows = Math.round(BARS / model.members.length);

process.on("message", () => {
  const start = process.cpuUsage();
  for (let row = 0; row < rows; row++) barResults(solveFrame(prepareFrame(model), cases, unit(CASES)));
  const { user, system } = process.cpuUsage(start);
  process.send?.((user + system) / (rows * model.members.length));
});

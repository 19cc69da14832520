/**
 * Times the mechanics and prints a table: `npm run bench -- mechanics`. CPU seconds of this process.
 */
import { prepareFrame } from "../../src/mechanics/frame.ts";
import type { FrameModel } from "../../src/mechanics/model.ts";
import { GROUND } from "../../src/mechanics/model.ts";
import { bucklingModes } from "../../src/mechanics/stability/buckling.ts";
import { naturalModes } from "../../src/mechanics/stability/frequency.ts";
import type { Solution } from "../../src/mechanics/statics/solve.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { barResults, loadCases, rack, unit } from "./rack.ts";

const rows: { readonly what: string; readonly ms: string; readonly budget: string }[] = [];

function time<T>(what: string, budget: string, run: () => T): T {
  const before = process.cpuUsage();
  const result = run();
  const { user, system } = process.cpuUsage(before);
  rows.push({ what, ms: ((user + system) / 1000).toFixed(1), budget });
  return result;
}

const WARM_RUNS = 200;
const small = rack(1, 1, 5); // 20 lengths of post and 20 rails
const smallCases = loadCases(small, 5);
const runSmall = (): number => barResults(solveFrame(prepareFrame(small), smallCases, unit(5)));
for (let i = 0; i < WARM_RUNS; i++) runSmall();
const before = process.cpuUsage();
for (let i = 0; i < WARM_RUNS; i++) runSmall();
const spent = process.cpuUsage(before);
const each = (spent.user + spent.system) / 1000 / WARM_RUNS;
rows.push({
  what: `${small.members.length} bars, 5 cases, warm, with bar results`,
  ms: each.toFixed(2),
  budget: "5",
});

/** Assembles, solves ten cases and reads every bar, with a row for each. */
function whole(name: string, model: FrameModel, budget: string): Solution {
  const cases = loadCases(model, 10);
  const start = process.cpuUsage();
  const frame = time(`${name}: assemble, order, factorise`, "", () => prepareFrame(model));
  const solved = time(`${name}: 10 cases, checked`, "", () => solveFrame(frame, cases, unit(10)));
  time(`${name}: bar results`, "", () => barResults(solved));
  const all = process.cpuUsage(start);
  rows.push({ what: `${name}: all of it`, ms: ((all.user + all.system) / 1000).toFixed(1), budget });
  return solved;
}

const line = rack(999, 1, 2); // 1000 bays in a row, two high
const solution = whole(`${line.members.length} bars in a row`, line, "3000");
const block = rack(36, 4, 19); // 185 posts of 19 storeys
whole(`${block.members.length} bars in a block`, block, "");

const standing: FrameModel = {
  ...rack(4, 2, 4),
  supports: [],
  contacts: Array.from(
    { length: 15 },
    (_, from) => ({ from, to: GROUND, normal: [0, 0, 1], gap: 0, friction: 0.4 }) as const,
  ),
};
const standingFrame = prepareFrame(standing);
time(`${standing.members.length} bars on 15 feet with friction, 8 combinations`, "", () =>
  solveFrame(standingFrame, loadCases(standing, 8), unit(8)),
);
time("buckling of the same rack on fixed feet, 3 modes", "", () => {
  const model = rack(4, 2, 4);
  return bucklingModes(solveFrame(prepareFrame(model), loadCases(model, 1), [[1]]), 0, 3);
});
time("natural frequencies of it, 3 modes", "", () => naturalModes(prepareFrame(rack(4, 2, 4)), 3));
console.table(rows);
const states = solution.states.map((state) => (state.kind === "solved" ? state.quality : undefined));
const worst = (key: "residual" | "equilibrium" | "energy"): number =>
  states.reduce((most, quality) => Math.max(most, quality?.[key] ?? Number.NaN), 0);
console.table({ residual: worst("residual"), equilibrium: worst("equilibrium"), energy: worst("energy") });

/**
 * Times the mechanics and prints a table: `npm run bench -- mechanics`. CPU seconds of this process.
 */
import { prepareFrame } from "../../src/mechanics/frame.ts";
import { sag } from "../../src/mechanics/member/sag.ts";
import type { Combination, FrameModel, LoadCase, Member, MemberLoad, Vec3 } from "../../src/mechanics/model.ts";
import { GROUND } from "../../src/mechanics/model.ts";
import { extrema } from "../../src/mechanics/piecewise.ts";
import { memberDeflections, memberForces } from "../../src/mechanics/results.ts";
import { bucklingModes } from "../../src/mechanics/stability/buckling.ts";
import { naturalModes } from "../../src/mechanics/stability/frequency.ts";
import type { Solution } from "../../src/mechanics/statics/solve.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { axesAlong, memberLength, SECTION } from "../mechanics/random-frame.ts";

const FIXED = ["fixed", "fixed", "fixed", "fixed", "fixed", "fixed"] as const;

/** A shelf of nx × ny × nz cells: posts and rails along both axes. */
function rack(nx: number, ny: number, nz: number): FrameModel {
  const id = (i: number, j: number, k: number): number => (k * (ny + 1) + j) * (nx + 1) + i;
  const nodes: Vec3[] = [];
  const pairs: (readonly [number, number])[] = [];
  for (let k = 0; k <= nz; k++) {
    for (let j = 0; j <= ny; j++) {
      for (let i = 0; i <= nx; i++) {
        nodes.push([0.6 * i, 0.5 * j, 0.45 * k]);
        if (k < nz) pairs.push([id(i, j, k), id(i, j, k + 1)]);
        if (k > 0 && i < nx) pairs.push([id(i, j, k), id(i + 1, j, k)]);
        if (k > 0 && j < ny) pairs.push([id(i, j, k), id(i, j + 1, k)]);
      }
    }
  }
  const members = pairs.map(([from, to]): Member => {
    return { from, to, axes: axesAlong(nodes[from] ?? [0, 0, 0], nodes[to] ?? [0, 0, 0], 0), ...SECTION };
  });
  const feet = Array.from({ length: (nx + 1) * (ny + 1) }, (_, node) => ({ node, holds: FIXED }));
  return { nodes, members, supports: feet };
}

/** Cases of uniform loads in changing directions on every member, and a push. */
function loadCases(model: FrameModel, count: number): LoadCase[] {
  const top = model.nodes.length - 1;
  return Array.from({ length: count }, (_, c): LoadCase => {
    const q: Vec3 = [5 * Math.sin(c), 5 * Math.cos(c), -40 - c];
    // One pair for all: what loads take in memory is not what is timed.
    const force = [q, q] as const;
    const members = model.members.map((_, member): MemberLoad => {
      return { kind: "line", member, start: 0, end: memberLength(model, member), force };
    });
    return { nodes: [{ node: top, force: [150, 20 * c, 0] }], members };
  });
}

/** What a checker reads off every bar, one bar after the other as rules do: extremes of six internal forces, and the sag against its chord. */
function barResults(s: Solution): number {
  let worst = 0;
  for (let m = 0; m < s.frame.model.members.length; m++) {
    for (let c = 0; c < s.combinations.length; c++) {
      const f = memberForces(s, c, m);
      for (const part of [f.N, f.Vy, f.Vz, f.T, f.My, f.Mz]) worst = Math.max(worst, extrema(part).max.value);
      const d = memberDeflections(s, c, m, f);
      worst = Math.max(worst, sag(d, 0, s.frame.parts.table.length[m] as number).value);
    }
  }
  return worst;
}

const rows: { readonly what: string; readonly ms: string; readonly budget: string }[] = [];

function time<T>(what: string, budget: string, run: () => T): T {
  const before = process.cpuUsage();
  const result = run();
  const { user, system } = process.cpuUsage(before);
  rows.push({ what, ms: ((user + system) / 1000).toFixed(1), budget });
  return result;
}

const unit = (count: number): Combination[] =>
  Array.from({ length: count }, (_, i) => Array.from({ length: count }, (_, j) => (i === j ? 1 : 0)));

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

/** CPU microseconds a bar for all of it, memory handed out by the system included; least of a few runs after the first. */
function perBar(bays: number, runs: number): number {
  const model = rack(bays, 1, 2);
  const cases = loadCases(model, 10);
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run++) {
    const start = process.cpuUsage();
    barResults(solveFrame(prepareFrame(model), cases, unit(10)));
    const { user, system } = process.cpuUsage(start);
    if (run > 0) least = Math.min(least, (user + system) / model.members.length);
  }
  return least;
}
const [thousand, fiftyThousand] = [perBar(99, 40), perBar(4999, 6)];
rows.push({
  what: `all of it, a bar: 50,000 bars in a row (${fiftyThousand.toFixed(0)} µs) against 1,000 (${thousand.toFixed(0)} µs), ratio`,
  ms: (fiftyThousand / thousand).toFixed(2),
  budget: "1.20",
});

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

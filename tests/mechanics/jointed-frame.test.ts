import { expect, test } from "vitest";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import { bucklingModes } from "../../src/mechanics/stability/buckling.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import type { SolvedState } from "../../src/mechanics/statics/state.ts";
import { jointedFrame } from "./jointed-frame.ts";

const COMBINATIONS = [
  [1.35, 0, 0],
  [1.35, 1.5, 0],
  [1, 0, 1],
  [1, 1, 1],
  [1, 1, -1],
];
const SEEDS = Array.from({ length: 40 }, (_, i) => i + 1);

test("forty racks with springs, seats and feet: every solved state satisfies every condition of contact and friction", () => {
  const kinds = { solved: 0, mechanism: 0, unsettled: 0 };
  for (const seed of SEEDS) {
    const { model, cases } = jointedFrame(seed);
    const solution = solveFrame(prepareFrame(model), cases, COMBINATIONS);
    for (const state of solution.states) {
      kinds[state.kind]++;
      if (state.kind !== "solved") continue;
      state.contacts.forEach(({ status, push, sideways, opening }, c) => {
        const { stiffness, friction = 0 } = model.contacts?.[c] ?? {};
        const pull = Math.hypot(...sideways);
        expect(push).toBeGreaterThanOrEqual(-1e-5);
        expect(opening).toBeGreaterThanOrEqual(-1e-9 - push / (stiffness ?? Infinity));
        expect(pull).toBeLessThanOrEqual(friction * push + 1e-4);
        if (status === "slips") expect(pull).toBeCloseTo(friction * push, 3);
        if (status === "open") expect(push).toBe(0);
      });
    }
  }
  // Pushed empty racks do slide; "unsettled" must stay the rare exception.
  expect(kinds.solved).toBeGreaterThan(180);
  expect(kinds.unsettled).toBeLessThanOrEqual(4);
});

test("the same frame gives the same bits", () => {
  const run = (): SolvedState => {
    const { model, cases } = jointedFrame(5);
    const [state] = solveFrame(prepareFrame(model), cases, COMBINATIONS).states;
    if (state?.kind !== "solved") throw new Error("it stands");
    return state;
  };
  expect(run().displacements).toEqual(run().displacements);
});

test("more load lowers the critical factor in proportion while contacts stay as they are", () => {
  const { model, cases } = jointedFrame(5);
  const solution = solveFrame(prepareFrame(model), cases, [
    [1, 0, 0],
    [2, 0, 0],
  ]);
  const [once, twice] = [0, 1].map((c) => bucklingModes(solution, c, 1));
  if (once?.kind !== "modes" || twice?.kind !== "modes") throw new Error("it stands");
  expect((once.modes[0]?.lambda ?? 0) / (twice.modes[0]?.lambda ?? 1)).toBeCloseTo(2, 2); // gaps do not grow with the load
});

import { expect, test } from "vitest";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import { solvedState } from "../../src/mechanics/results.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { checkedFrames } from "../cross-check/frames/all.ts";

const standing = checkedFrames.filter(({ model }) => (model.contacts ?? []).length > 0);

// What combinations share, such as the factor of the contacts that stay closed, changes none of them.
test.each(standing)("combinations solved together say what each says alone: $title", ({ model, load }) => {
  const combinations = [[1], [0.5], [1.1], [1], [2]];
  const given = (model.contacts ?? []).map(({ gap }) => gap);
  const gaps = combinations.map((_, c) => (c === 2 ? given.map((gap) => gap + 1e-4) : given));
  const together = solveFrame(prepareFrame(model), [load], combinations, gaps);
  for (const [c, combination] of combinations.entries()) {
    const alone = solveFrame(prepareFrame(model), [load], [combination], gaps.slice(c, c + 1));
    expect(solvedState(together, c).displacements).toEqual(solvedState(alone, 0).displacements);
  }
});

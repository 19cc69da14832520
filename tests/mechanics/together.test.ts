import { expect, test } from "vitest";
import { type Condensed, type ContactState, solveStates } from "../../src/mechanics/contact/condensed.ts";
import { prepareFrame } from "../../src/mechanics/frame.ts";
import { GROUND } from "../../src/mechanics/model.ts";
import { solvedState } from "../../src/mechanics/results.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { checkedFrames } from "../cross-check/frames/all.ts";

const standing = checkedFrames.filter(({ model }) => (model.contacts ?? []).length > 0);

// What combinations share, such as the factor of the contacts that stay closed, changes none of them.
test.each(standing)("combinations solved together say what each says alone: $title", ({ model, load }) => {
  const combinations = [[1], [0.5], [1.1], [1], [2]];
  const given = (model.contacts ?? []).map(({ gap }) => gap);
  const terms = combinations.map((_, c) => ({ gaps: c === 2 ? given.map((gap) => gap + 1e-4) : given }));
  const together = solveFrame(prepareFrame(model), [load], combinations, terms);
  for (const [c, combination] of combinations.entries()) {
    const alone = solveFrame(prepareFrame(model), [load], [combination], terms.slice(c, c + 1));
    expect(solvedState(together, c).displacements).toEqual(solvedState(alone, 0).displacements);
  }
});

test("a rubbing contact in each state answers the same, whichever states were asked before", () => {
  const link = { freedoms: Int32Array.of(0), weights: Float64Array.of(1) };
  const flexibility = Float64Array.of(6e-6, 1e-6, 0, 1e-6, 7e-6, 1e-6, 0, 1e-6, 8e-6);
  const rubbing = (): Condensed => ({
    contacts: [{ from: 0, to: GROUND, normal: [0, 0, 1], gap: 0, friction: 0.4 }],
    links: { links: [0, 1, 2].map(() => ({ contact: 0, link, base: 1e5 })), normal: [0] },
    answers: { find: () => {}, motions: (link) => flexibility.subarray(3 * link, 3 * link + 3) },
    motion: Float64Array.of(-1e-3, 2e-3, 5e-4),
  });
  const states = [true, false].flatMap((closed): ContactState[] => [
    { closed, side: "free" },
    { closed, side: "hold" },
    { closed, side: { direction: [1, 0], drag: 0 } },
  ]);
  const limits = { left: 1e-8, rigid: 1e8 };
  const shared = rubbing();
  for (const state of [...states, ...states])
    expect(solveStates(shared, [state], limits)).toEqual(solveStates(rubbing(), [state], limits));
});

import { prepareFrame } from "../../src/mechanics/frame.ts";
import { solvedState } from "../../src/mechanics/results.ts";
import { bucklingModes } from "../../src/mechanics/stability/buckling.ts";
import { naturalModes } from "../../src/mechanics/stability/frequency.ts";
import { solveFrame } from "../../src/mechanics/statics/solve.ts";
import { type Answers, NOTHING } from "./answers.ts";
import type { CheckedFrame } from "./frames/checked-frame.ts";

/** What the frame solver under test says of a frame. */
export function ourAnswers({ id, model, load, analysis }: CheckedFrame): Answers {
  const frame = prepareFrame(model);
  if (frame.mechanisms.length > 0) throw new Error(`${id} is a mechanism`);
  if (analysis.kind === "frequency") {
    const found = naturalModes(frame, analysis.count);
    if (found.kind === "mechanism") throw new Error(`${id} is a mechanism`);
    return { ...NOTHING, modes: found.modes.map(({ frequency }) => frequency) };
  }
  const solution = solveFrame(frame, [load], [[1]]);
  const state = solvedState(solution, 0);
  if (analysis.kind === "buckling") {
    const found = bucklingModes(solution, 0, analysis.count);
    if (found.kind === "mechanism") throw new Error(`${id} is a mechanism`);
    return { ...NOTHING, factors: found.modes.map(({ lambda }) => lambda) };
  }
  const elastic = new Set<number>();
  for (const { node, holds } of model.supports ?? [])
    for (const [i, hold] of holds.entries()) if (typeof hold === "number") elastic.add(6 * node + i);
  return {
    ...NOTHING,
    displacements: [...state.displacements],
    reactions: [...state.reactions].map((force, f) => (elastic.has(f) ? force : 0)),
    springs: [...state.springs],
    pushes: state.contacts.map(({ push }) => push),
  };
}

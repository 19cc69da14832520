import type { FrameModel } from "../../src/mechanics/model.ts";
import { type Answers, NOTHING } from "./answers.ts";
import { type WrittenDeck, writeDeck } from "./deck.ts";
import type { CheckedFrame } from "./frames/checked-frame.ts";
import { readDisplacements, readFactors, readModes } from "./read-dat.ts";
import { runCcx } from "./run-ccx.ts";

/** The deck of a frame with these seats closed. */
export const deckOf = ({ id, title, model, load, analysis }: CheckedFrame, closed: readonly boolean[]): WrittenDeck =>
  writeDeck(`${id}: ${title}`, model, load, analysis, closed);

function staticAnswers(model: FrameModel, deck: WrittenDeck, dat: string): Answers {
  const moved = readDisplacements(dat);
  const vector = (table: Map<number, readonly number[]>, node: number): readonly number[] => {
    const found = table.get(node);
    if (!found) throw new Error(`no result for node ${node}`);
    return found;
  };
  const displacements = deck.points.flatMap(({ shift, turn }) => [...vector(moved, shift), ...vector(moved, turn)]);
  const reactions = displacements.map(() => 0);
  for (const { node, holds } of model.supports ?? []) {
    for (const [i, hold] of holds.entries()) {
      const f = 6 * node + i;
      if (typeof hold === "number") reactions[f] = -hold * (displacements[f] ?? Number.NaN);
    }
  }
  const springs = (model.springs ?? []).flatMap(({ stiffness }, s) => {
    const nodes = deck.springs[s];
    if (!nodes) throw new Error(`no spring ${s}`);
    const stretch = [...vector(moved, nodes.shift), ...vector(moved, nodes.turn)];
    return stiffness.map((k, i) => k * (stretch[i] ?? Number.NaN));
  });
  const pushes = (model.contacts ?? []).map(({ gap, stiffness = Number.NaN }, c) => {
    const motion = vector(moved, deck.contacts[c] ?? -1)[0] ?? Number.NaN;
    return -stiffness * (gap + motion);
  });
  return { ...NOTHING, displacements, reactions, springs, pushes };
}

const MOST_ROUNDS = 8;

/** What CalculiX says of a frame, run now, and which seats are closed. */
export interface CcxRun {
  readonly answers: Answers;
  readonly closed: readonly boolean[];
}

/**
 * Seats start closed; those that pull are opened, those that overlap are closed, and the frame is run again until none is
 * wrong. Closed seats that push and open seats that do not touch have one solution only, however they were found.
 */
export function ccxAnswers(checked: CheckedFrame): CcxRun {
  const { analysis, model } = checked;
  let closed: readonly boolean[] = (model.contacts ?? []).map(() => true);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const deck = deckOf(checked, closed);
    const dat = runCcx(deck.text);
    if (analysis.kind === "frequency")
      return { answers: { ...NOTHING, modes: readModes(dat).slice(0, analysis.count) }, closed };
    if (analysis.kind === "buckling") return { answers: { ...NOTHING, factors: readFactors(dat) }, closed };
    const answers = staticAnswers(model, deck, dat);
    const pushing = answers.pushes.map((push) => push > 0);
    if (pushing.every((push, c) => push === closed[c]))
      return { answers: { ...answers, pushes: answers.pushes.map((push) => Math.max(0, push)) }, closed };
    closed = pushing;
  }
  throw new Error(`${checked.id}: no set of seats holds in CalculiX`);
}

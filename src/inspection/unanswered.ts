import { endCuts } from "../facts/end-cuts.ts";
import { factOf } from "../facts/fact.ts";
import { placements } from "../facts/placements.ts";
import type { Question } from "../facts/question.ts";
import { slotPanels } from "../facts/slot-panels.ts";
import type { Frame } from "../model/frame.ts";
import type { Place, Problem } from "../model/problem.ts";
import type { Ref } from "../model/ref.ts";

interface Asking {
  readonly questions: readonly Question[];
}

/** What the geometry cannot settle and the author has to say. */
export function unansweredQuestions(frame: Frame, place: (at: Ref) => Place): readonly Problem[] {
  const questions = [endCuts, placements, slotPanels].flatMap((fact) => factOf<Asking>(fact, frame).questions);
  return questions.map(({ at, found, expected, mend }) => ({
    code: "say-which",
    weight: "error",
    place: place(at),
    found,
    expected,
    mend,
  }));
}

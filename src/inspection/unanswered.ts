import type { Criterion } from "../criteria/criterion.ts";
import { endCuts } from "../facts/end-cuts.ts";
import { factOf } from "../facts/fact.ts";
import { placements } from "../facts/placements.ts";
import type { Question } from "../facts/question.ts";
import { slotPanels } from "../facts/slot-panels.ts";
import type { Frame } from "../model/frame.ts";
import type { Place, Problem } from "../model/problem.ts";
import type { Ref } from "../model/ref.ts";
import { nearest } from "../model/text/nearest.ts";
import { pointerTo } from "../model/text/pointer.ts";
import type { AnyRule } from "../rules/shape/rule.ts";

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

/** Criteria that a frame or one of its parts sets and no rule in force knows. */
export function strangeCriteria(
  frame: Frame,
  rules: readonly AnyRule[],
  place: (pointer: string) => Place,
  pointerOf: (at: Ref) => string,
): readonly Problem[] {
  const known = new Map<string, Criterion>();
  for (const rule of rules) for (const criterion of Object.values(rule.criteria)) known.set(criterion.name, criterion);
  const holders = [
    { criteria: frame.criteria, pointer: "" },
    ...[...frame.bars, ...frame.panels].map((part) => ({ criteria: part.criteria, pointer: pointerOf(part.ref) })),
  ];
  const problems: Problem[] = [];
  for (const { criteria, pointer } of holders) {
    for (const name of criteria.keys()) {
      if (known.has(name)) continue;
      const close = nearest(name, [...known.keys()]);
      problems.push({
        code: "unknown-criterion",
        weight: "error",
        place: place(pointerTo(`${pointer}/criteria`, name)),
        found: `criterion "${name}"`,
        expected: "a criterion of a rule in force; `trysquare rules` lists them",
        ...(close ? { mend: `did you mean "${close}"?` } : {}),
      });
    }
  }
  return problems;
}

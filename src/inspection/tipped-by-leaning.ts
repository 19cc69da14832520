import { combinations } from "../facts/combinations.ts";
import { factOf } from "../facts/fact.ts";
import { bounds } from "../facts/joint-stiffness.ts";
import { planAxes } from "../facts/plan-axes.ts";
import { response } from "../facts/response.ts";
import { secondOrder } from "../facts/second-order.ts";
import type { Frame } from "../model/frame.ts";
import type { AnyRule } from "../rules/shape/rule.ts";

/**
 * In words, that a person leaning tips the frame, which way: then nothing is known of what its bars and joints bear, and no rule speaks
 * of it. frame.tips judges its stability by weights alone. Said only where a rule in force asks how strong the frame is.
 */
export function tippedByLeaning(frame: Frame, rules: readonly AnyRule[]): readonly string[] {
  if (!rules.some(({ needs }) => Object.values(needs).includes(secondOrder))) return [];
  const found = factOf(response, frame);
  if (found.kind !== "solved") return [];
  const plan = factOf(planAxes, frame);
  const solved = new Set(found.views.map(({ combination, bound }) => `${bound} ${combination.name}`));
  const ways = factOf(combinations, frame).all.flatMap(({ leaning, side, name }) => {
    const all = bounds.every((bound) => solved.has(`${bound} ${name}`));
    return leaning && side && !all ? [plan.words(side.axis, side.sign)] : [];
  });
  const told = [...new Set(ways)];
  if (told.length === 0) return [];
  const words = told.length === 1 ? told[0] : `${told.slice(0, -1).join(", ")} or ${told.at(-1)}`;
  return [`a person who leans on it along ${words} tips it: what bars and joints bear until then is not judged`];
}

import { isDoubtful, type Problem } from "../model/problem.ts";
import { listed } from "./count.ts";

/** Problems of one file that read alike but for their value and place: the first, and the others. */
export interface AlikeProblems {
  readonly first: Problem;
  readonly others: readonly Problem[];
}

/** Values that are doubtful for one reason, whatever they are: "coordinate 31 m" and "coordinate 32 m". */
const reasonOf = ({ code, weight, place, found, expected }: Problem): string =>
  JSON.stringify([code, weight, place.file, expected, found.split(/ [\d.-]/)[0]]);

/** Problems in their order; doubts about values of one kind are one entry, told where the first of them stands. */
export function alikeProblems(problems: readonly Problem[]): readonly AlikeProblems[] {
  const told: { readonly first: Problem; readonly others: Problem[] }[] = [];
  const known = new Map<string, Problem[]>();
  for (const problem of problems) {
    const reason = isDoubtful(problem) ? reasonOf(problem) : undefined;
    const others = reason === undefined ? undefined : known.get(reason);
    if (others) {
      others.push(problem);
      continue;
    }
    const entry = { first: problem, others: [] };
    told.push(entry);
    if (reason !== undefined) known.set(reason, entry.others);
  }
  return told;
}

/** "and in lines 12, 14 and 15"; nothing where there is but one. */
export function othersToo({ others }: AlikeProblems): string {
  const lines = [...new Set(others.map(({ place }) => String(place.line)))];
  if (lines.length === 0) return "";
  return ` and ${lines.length === 1 ? "line" : "lines"} ${listed(lines)}`;
}

import type { Criterion } from "../criteria/criterion.ts";
import { readLimit } from "../criteria/read-limit.ts";
import type { Frame } from "../model/frame.ts";
import type { Place, Problem } from "../model/problem.ts";
import type { Ref } from "../model/ref.ts";
import { nearest } from "../model/text/nearest.ts";
import { pointerTo } from "../model/text/pointer.ts";
import type { AnyRule } from "../rules/shape/rule.ts";

/** What to say of a limit that nothing reads on this kind of part. */
function idle(
  name: string,
  of: NonNullable<Criterion["of"]>,
  kind: "bars" | "panels",
): Pick<Problem, "found" | "expected" | "mend"> {
  if (of === "frame")
    return {
      found: `${name} set for a single part`,
      expected: `${name} for the whole frame: it is not judged part by part`,
      mend: "move it to the criteria of the frame",
    };
  return {
    found: `${name} set for a ${kind === "bars" ? "bar" : "panel"}, where it limits nothing`,
    expected: `${name} for the frame or for one of its ${of}`,
    mend: `move it to the criteria of the frame, or of the ${of === "bars" ? "bar" : "panel"} that is meant`,
  };
}

/** Criteria that a frame or one of its parts sets and no rule in force knows, sets to what they cannot be, or sets where they do nothing. */
export function criteriaProblems(
  frame: Frame,
  rules: readonly AnyRule[],
  place: (pointer: string) => Place,
  pointerOf: (at: Ref) => string,
): readonly Problem[] {
  const known = new Map<string, Criterion>();
  for (const rule of rules) for (const criterion of Object.values(rule.criteria)) known.set(criterion.name, criterion);
  const holders = [
    { criteria: frame.criteria, pointer: "", kind: undefined },
    ...frame.bars.map(({ criteria, ref }) => ({ criteria, pointer: pointerOf(ref), kind: "bars" as const })),
    ...frame.panels.map(({ criteria, ref }) => ({ criteria, pointer: pointerOf(ref), kind: "panels" as const })),
  ];
  const problems = new Map<string, Problem>();
  for (const { criteria, pointer, kind } of holders) {
    for (const [name, { value }] of criteria) {
      const at = pointerTo(`${pointer}/criteria`, name);
      const criterion = known.get(name);
      // Copies of a part stand where it stands: what is wrong there is said once.
      if (problems.has(at)) continue;
      if (criterion === undefined) {
        const close = nearest(name, [...known.keys()]);
        problems.set(at, {
          code: "unknown-criterion",
          weight: "error",
          place: place(at),
          found: `criterion "${name}"`,
          expected: "a criterion of a rule in force; `trysquare rules` lists them",
          ...(close ? { mend: `did you mean "${close}"?` } : {}),
        });
        continue;
      }
      if (kind !== undefined && criterion.of !== undefined && criterion.of !== kind)
        problems.set(at, {
          code: "idle-criterion",
          weight: "warning",
          place: place(at),
          ...idle(name, criterion.of, kind),
        });
      const read = readLimit(value, criterion, frame.units);
      if ("found" in read)
        problems.set(at, {
          code: "unreadable-criterion",
          weight: "error",
          place: place(at),
          ...read,
          found: `${name} set to ${read.found}`,
        });
    }
  }
  return [...problems.values()];
}

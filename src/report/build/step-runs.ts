import type { PlannedStep } from "../../facts/build-plan.ts";

/** What is done in a step, but for the names of the parts put in. */
function workOf(planned: PlannedStep): string {
  const { what, assembly, path, lying, places } = planned.step;
  const { connectors, dropIn, tightens, fixes, closesIn, equipment, falls, feetFirst, anchors } = planned;
  const own = { connectors, dropIn, tightens, fixes, closesIn, equipment, falls, feetFirst, anchors };
  return JSON.stringify({ what, assembly, path, lying, kinds: places.map((part) => part.kind), ...own });
}

/** Steps that differ by the name of the part alone. */
const sameWork = (a: PlannedStep, b: PlannedStep): boolean =>
  a.step.what === "place" && b.step.places.length === 1 && workOf(a) === workOf(b);

/** The steps of a piece, those of like work together: they are told once. */
export function stepRuns(steps: readonly PlannedStep[]): readonly (readonly PlannedStep[])[] {
  const runs: PlannedStep[][] = [];
  for (const [i, step] of steps.entries()) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (i > 1 && run && last && last.step.places.length === 1 && sameWork(last, step)) run.push(step);
    else runs.push([step]);
  }
  return runs;
}

/** "7", or "23–26". */
export function runNumbers(run: readonly PlannedStep[]): string {
  const [first, last] = [run[0]?.step.number ?? 0, run.at(-1)?.step.number ?? 0];
  return first === last ? `${first}` : `${first}–${last}`;
}

import type { Task } from "./tool-task.ts";
import { bestTrial, serves } from "./tool-trial.ts";

/** The connectors put in at the same step of which each by itself, or all together, keep every tool from a screw. */
function keepers({ socket, ways, around }: Task): ReadonlySet<string> {
  const ids = new Set(around.beside.map((thing) => thing.part.id));
  const kept = [...ids].filter((id) => {
    const trial = bestTrial(socket, ways, [...around.there, ...around.beside.filter(({ part }) => part.id === id)]);
    return trial !== undefined && !serves(trial);
  });
  return new Set(kept.length > 0 ? kept : ids);
}

/**
 * The screws that must, and can, be tightened before other connectors of their step are put on. Two connectors that would each have to
 * go before the other cannot: then both are taken with the other in place. Longer rings are not looked for.
 */
export function inTurn(tasks: readonly Task[]): ReadonlySet<Task> {
  const wants = new Map<Task, ReadonlySet<string>>();
  for (const task of tasks) {
    const { socket, ways, around } = task;
    if (around.beside.length === 0) continue;
    const among = bestTrial(socket, ways, [...around.there, ...around.beside]);
    if (!among || serves(among)) continue;
    const alone = bestTrial(socket, ways, around.there);
    if (alone && serves(alone)) wants.set(task, keepers(task));
  }
  const before = new Map<string, Set<string>>();
  for (const [{ connector }, kept] of wants) {
    const known = before.get(connector.ref.id) ?? new Set();
    for (const id of kept) known.add(id);
    before.set(connector.ref.id, known);
  }
  const mutual = ({ connector }: Task, kept: ReadonlySet<string>): boolean =>
    [...kept].some((id) => before.get(id)?.has(connector.ref.id));
  return new Set([...wants].filter(([task, kept]) => !mutual(task, kept)).map(([task]) => task));
}

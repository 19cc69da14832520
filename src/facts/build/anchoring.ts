import type { Ref } from "../../model/ref.ts";
import { downwards, offTheFloor, type Standing } from "../standings.ts";
import type { BuildStep } from "./plan.ts";

/** A foot that is anchored to what does not lie under its bar. */
export interface Anchored {
  readonly ref: Ref<"stand">;
  readonly to: "wall" | "ceiling";
}

/** A stand that looks up by more than this (sine, 45°) is on a ceiling. */
const UP = Math.SQRT1_2;

/**
 * The step of the whole frame at which each foot on a wall or a ceiling is anchored, by its number: of what hangs, as soon as
 * the foot and its bar are there and not lying any more; of what stands on the floor, once it is on all its feet.
 */
export function anchoring(
  stands: readonly Standing[],
  steps: readonly BuildStep[],
  hung: boolean,
  there: (step: number) => ReadonlySet<string>,
): ReadonlyMap<number, readonly Anchored[]> {
  const own = steps.filter(({ assembly, lying }) => assembly === "" && !lying);
  const raised = own.findLast(({ what }) => what === "feet" || what === "stand")?.number ?? 0;
  const found = new Map<number, Anchored[]>();
  for (const standing of stands.filter(offTheFloor)) {
    const { ref } = standing.stand;
    const at = own.find(({ number }) => (hung || number >= raised) && there(number).has(ref.id));
    if (!at) continue;
    const to = downwards(standing) < -UP ? "ceiling" : "wall";
    found.set(at.number, [...(found.get(at.number) ?? []), { ref, to }]);
  }
  return found;
}

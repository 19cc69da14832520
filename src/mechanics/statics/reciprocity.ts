import type { AppliedCase } from "../load/applied-case.ts";
import { demand } from "./checks.ts";

/**
 * Maxwell and Betti: the loads of one case do the same work on the displacements of another as the other way round.
 * Neighbouring cases are compared; cases with settlements are left out, as their supports do work too. Cases that hardly do
 * work on each other, like weight and a push across a frame of soft joints, are compared with the mean of their own works,
 * which bounds the shared one (Cauchy and Schwarz).
 */
export function checkReciprocity(cases: readonly AppliedCase[], displacements: readonly Float64Array[]): void {
  for (let c = 1; c < cases.length; c++) {
    const [a, b] = [cases[c - 1], cases[c]];
    const [ua, ub] = [displacements[c - 1], displacements[c]];
    if (!a || !b || !ua || !ub || a.settled || b.settled) continue;
    let [difference, size, ownA, ownB] = [0, 0, 0, 0];
    for (let f = 0; f < ua.length; f++) {
      const there = (a.total[f] as number) * (ub[f] as number);
      const back = (b.total[f] as number) * (ua[f] as number);
      difference += there - back;
      size += Math.abs(there) + Math.abs(back);
      ownA += (a.total[f] as number) * (ua[f] as number);
      ownB += (b.total[f] as number) * (ub[f] as number);
    }
    const scale = Math.max(size, Math.sqrt(Math.abs(ownA * ownB)));
    if (scale > 0) demand("reciprocity", Math.abs(difference) / scale);
  }
}

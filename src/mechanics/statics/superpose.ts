import type { Combination } from "../model.ts";
import type { SolvedState } from "./state.ts";

function weighted(parts: readonly Float64Array[], factors: Combination, length: number): Float64Array {
  const sum = new Float64Array(length);
  parts.forEach((part, c) => {
    const factor = factors[c] ?? 0;
    if (factor === 0) return;
    for (let i = 0; i < length; i++) sum[i] = (sum[i] as number) + factor * (part[i] as number);
  });
  return sum;
}

/** The response to a combination of load cases of a frame without contacts. */
export function superpose(cases: readonly SolvedState[], factors: Combination): SolvedState {
  const acting = cases.filter((_, c) => (factors[c] ?? 0) !== 0);
  const [first, ...others] = acting.length > 0 ? acting : cases;
  // A case that acts alone, at its own size, is its own answer: no copy of all that was found.
  if (first && others.length === 0 && factors[cases.indexOf(first)] === 1) return first;
  if (!first) throw new RangeError("a combination needs at least one load case");
  const sum = (pick: (state: SolvedState) => Float64Array): Float64Array =>
    weighted(cases.map(pick), factors, pick(first).length);
  const worst = (pick: (state: SolvedState) => number): number =>
    cases.reduce((most, state) => Math.max(most, pick(state)), 0);
  return {
    kind: "solved",
    displacements: sum((s) => s.displacements),
    reactions: sum((s) => s.reactions),
    ends: { forces: sum((s) => s.ends.forces), released: sum((s) => s.ends.released) },
    springs: sum((s) => s.springs),
    couplings: sum((s) => s.couplings),
    contacts: [],
    quality: {
      residual: worst((s) => s.quality.residual),
      equilibrium: worst((s) => s.quality.equilibrium),
      energy: worst((s) => s.quality.energy),
    },
  };
}

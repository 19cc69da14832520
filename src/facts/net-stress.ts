import { valueAt } from "../mechanics/piecewise.ts";
import type { NetSection } from "./net-sections.ts";
import type { View } from "./response.ts";

/** What acts on a net section, sizes without sign, and the stress of it. */
export interface NetStress {
  /** Pa */
  readonly stress: number;
  /** N, N·m, N·m */
  readonly N: number;
  readonly My: number;
  readonly Mz: number;
}

/** Largest normal stress on a net section: N / A and both moments at the furthest fibres, all taken to add. None where nothing is left of it. */
export function netStress(view: View, net: NetSection): NetStress | undefined {
  if (net.A === 0) return undefined;
  const forces = view.forces(net.bar);
  if (!forces) return undefined;
  let worst: NetStress = { stress: 0, N: 0, My: 0, Mz: 0 };
  for (const side of ["before", "after"] as const) {
    const at = (field: keyof typeof forces): number => Math.abs(valueAt(forces[field], net.at, side));
    const [N, My, Mz] = [at("N"), at("My"), at("Mz")];
    const stress = N / net.A + (My * net.zMost) / net.Iy + (Mz * net.yMost) / net.Iz;
    if (stress > worst.stress) worst = { stress, N, My, Mz };
  }
  return worst;
}

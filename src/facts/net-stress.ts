import { valueAt } from "../mechanics/piecewise.ts";
import type { NetSection } from "./net-sections.ts";
import type { View } from "./response.ts";

/** Largest normal stress on a net section, Pa: N / A and both moments at the furthest fibres, all taken to add. */
export function netStress(view: View, net: NetSection): number | undefined {
  const forces = view.forces(net.bar);
  if (!forces) return undefined;
  let worst = 0;
  for (const side of ["before", "after"] as const) {
    const at = (field: keyof typeof forces): number => Math.abs(valueAt(forces[field], net.at, side));
    worst = Math.max(worst, at("N") / net.A + (at("My") * net.zMost) / net.Iy + (at("Mz") * net.yMost) / net.Iz);
  }
  return worst;
}

import type { InternalForces } from "../mechanics/member/fields.ts";
import { extrema, linearCombination, valueAt } from "../mechanics/piecewise.ts";
import type { Profile } from "../model/stock/stock.ts";
import { sectionOf } from "./sections.ts";

/** Stress at a station of a bar. */
export interface BarStress {
  /** m from the cut from end. */
  readonly at: number;
  /** Pa */
  readonly normal: number;
  readonly shear: number;
  /** √(σ² + 3 τ²), Pa */
  readonly equivalent: number;
}

/**
 * The largest equivalent stress along a bar: normal stress from N, My, Mz at the four corners of the envelope, shear from
 * torsion (T / Wt) and from the shear forces over their shear areas, at the ends, jumps and turning points of each.
 */
export function largestStress(forces: InternalForces, profile: Profile): BarStress {
  const section = sectionOf(profile);
  const stations = new Set<number>(forces.N.breaks);
  const corners = [1, -1].flatMap((sy) =>
    [1, -1].map((sz) => [(sy * profile.height) / 2, (sz * profile.width) / 2] as const),
  );
  const fields = corners.map(([y, z]) =>
    linearCombination([
      [1 / section.A, forces.N],
      [(z - section.centroid.z) / section.Iy, forces.My],
      [-(y - section.centroid.y) / section.Iz, forces.Mz],
    ]),
  );
  for (const field of fields) {
    const { min, max } = extrema(field);
    stations.add(min.at);
    stations.add(max.at);
  }
  let worst: BarStress = { at: 0, normal: 0, shear: 0, equivalent: 0 };
  for (const at of stations) {
    for (const side of ["before", "after"] as const) {
      let normal = 0;
      for (const field of fields) normal = Math.max(normal, Math.abs(valueAt(field, at, side)));
      const torsion = Math.abs(valueAt(forces.T, at, side)) / section.Wt;
      const shear =
        torsion + Math.hypot(valueAt(forces.Vy, at, side) / section.Avy, valueAt(forces.Vz, at, side) / section.Avz);
      const equivalent = Math.sqrt(normal ** 2 + 3 * shear ** 2);
      if (equivalent > worst.equivalent) worst = { at, normal, shear, equivalent };
    }
  }
  return worst;
}

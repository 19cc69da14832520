import { twiceEnergy } from "../mechanism/find.ts";
import { solvedState } from "../results.ts";
import type { Solution } from "../statics/solve.ts";
import { axialOf } from "./axial.ts";
import { geometricBlocks } from "./mesh.ts";

/**
 * The factor by which the axial forces of one combination may grow before the frame gives in the way it moves between it and
 * another, leaning the other way: uᵀ K u / uᵀ B u of half what their displacements differ by (Rayleigh). EN 1993-1-1:2005, Eq. 5.2,
 * α_cr = (H/V) (h/δ), is this for one storey. Never below the least factor of the frame; a little above that of this way alone.
 */
export function swayFactor(solution: Solution, one: number, other: number): number {
  const { parts } = solution.frame;
  const [a, b] = [one, other].map((combination) => solvedState(solution, combination).displacements);
  if (!a || !b) throw new RangeError("two combinations are compared");
  const u = a.map((value, f) => (value - (b[f] as number)) / 2);
  const pieces = new Int32Array(parts.table.count).fill(1);
  const firstPiece = pieces.map((_, m) => m);
  let lost = 0;
  for (const { freedoms, values } of geometricBlocks({ parts, pieces, firstPiece }, axialOf(solution, one))) {
    const n = freedoms.length;
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++)
        lost +=
          (values[i * n + j] as number) * (u[freedoms[i] as number] as number) * (u[freedoms[j] as number] as number);
  }
  return lost > 0 ? twiceEnergy(parts, [], u) / lost : Infinity;
}

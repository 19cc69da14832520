import type { Vec3 } from "../../geometry/vector.ts";
import { dot } from "../../geometry/vector.ts";
import type { Block } from "../assembly/blocks.ts";

/**
 * Geometric stiffness of a rigid arm from a node to where force F acts on it: a finite turn θ moves the tip by
 * θ × r + ½ θ × (θ × r), and −F does work on the second part, so k = (F·r) I − ½ (F rᵀ + r Fᵀ).
 */
export function armBlock(node: number, arm: Vec3, force: Vec3): Block {
  const values = new Float64Array(9);
  const along = dot(force, arm);
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      const cross = ((force[i] as number) * (arm[j] as number) + (arm[i] as number) * (force[j] as number)) / 2;
      values[3 * i + j] = (i === j ? along : 0) - cross;
    }
  }
  return { freedoms: Int32Array.of(6 * node + 3, 6 * node + 4, 6 * node + 5), values };
}

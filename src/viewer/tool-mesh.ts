import type { ToolData } from "../drawing/model3d/model-data.ts";
import { looseMesh } from "./loose-mesh.ts";
import type { Mesh } from "./mesh.ts";
import { add, mix, type Vec, vecAt } from "./vec.ts";

/** A turn is drawn in steps of this angle, and where it is blocked a spoke stands at every other one, rad. */
const STEP = Math.PI / 60;
/** Spokes begin at this share of the reach: at the axis they would run together. */
const INNER = 0.4;

/** The turn of a tool about its screw: what is free as a filled sector, what is blocked as spokes, and the rim of both. */
export function toolMeshes({ at, zero, quarter, reach, free }: ToolData): {
  readonly filled: Mesh;
  readonly lines: Mesh;
} {
  const centre = vecAt(at, 0);
  const rim = (angle: number): Vec =>
    add(add(centre, vecAt(zero, 0), reach * Math.cos(angle)), vecAt(quarter, 0), reach * Math.sin(angle));
  const arcs = Array.from({ length: free.length / 2 }, (_, i) => [free[2 * i] ?? 0, free[2 * i + 1] ?? 0] as const);
  const filled = arcs.flatMap(([from, to]) => {
    const steps = Math.max(1, Math.ceil((to - from) / STEP));
    const angle = (i: number): number => from + ((to - from) * i) / steps;
    return Array.from({ length: steps }, (_, i): readonly Vec[] => [centre, rim(angle(i)), rim(angle(i + 1))]).flat();
  });
  const isFree = (angle: number): boolean =>
    arcs.some(([from, to]) => [angle, angle + 2 * Math.PI, angle - 2 * Math.PI].some((a) => a >= from && a <= to));
  const steps = Math.round((2 * Math.PI) / STEP);
  const lines = Array.from({ length: steps }, (_, i): readonly Vec[] => {
    const angle = i * STEP;
    const spoke = i % 2 === 0 && !isFree(angle) ? [mix(centre, rim(angle), INNER), rim(angle)] : [];
    return [rim(angle), rim(angle + STEP), ...spoke];
  }).flat();
  return { filled: looseMesh(filled), lines: looseMesh(lines) };
}

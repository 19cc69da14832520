import type { GuardData } from "../drawing/model3d/model-data.ts";
import type { Rgb } from "./colours.ts";
import { joined, looseMesh } from "./loose-mesh.ts";
import type { Mesh } from "./mesh.ts";
import { type Vec, vecAt } from "./vec.ts";

/** Inks by what a line is of: the outline of what is open, the zone, the way there. */
export const GUARD_INKS: { readonly filled: Rgb; readonly lines: readonly Rgb[] } = {
  filled: [240, 180, 41],
  lines: [
    [32, 38, 43],
    [150, 39, 15],
    [31, 47, 143],
  ],
};

const points = (list: readonly number[]): readonly Vec[] =>
  Array.from({ length: list.length / 3 }, (_, i) => vecAt(list, 3 * i));

/** What lies open before a zone, filled, with the zone and the shortest way there as lines. */
export function guardMeshes({ filled, open, zone, way }: GuardData): { readonly filled: Mesh; readonly lines: Mesh } {
  return {
    filled: looseMesh(points(filled)),
    lines: joined([open, zone, way].map((list, i) => looseMesh(points(list), i))),
  };
}

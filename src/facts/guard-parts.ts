import { along, dot, type Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { panelBoxes } from "./panel-boxes.ts";

export type Axis = 0 | 1 | 2;

/** A bar or a sheet as a guard is made of it. */
export interface GuardPart {
  readonly of: Ref;
  readonly points: readonly Vec3[];
  readonly bounds: readonly (readonly [number, number])[];
  readonly sheet: boolean;
  /** The axis a bar runs along; undefined for slanting bars and for sheets. */
  readonly along: Axis | undefined;
}

/** Sheets this near to square to an axis close that side: 3°. */
const SQUARE = Math.cos(Math.PI / 60);

const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

function partOf(of: Ref, points: readonly Vec3[], runs?: Vec3): GuardPart {
  const bounds = ([0, 1, 2] as const).map((axis) => {
    const at = points.map((point) => point[axis]);
    return [Math.min(...at), Math.max(...at)] as const;
  });
  const along = ([0, 1, 2] as const).find((axis) => runs && Math.abs(runs[axis]) > SQUARE);
  return { of, points, bounds, sheet: runs === undefined, along };
}

/** The bars, and the sheets that lie square to an axis: what can keep hands from something. */
export const guardParts = defineFact<readonly GuardPart[], { bodies: typeof bodies; panelBoxes: typeof panelBoxes }>({
  id: "guard-parts",
  needs: { bodies, panelBoxes },
  compute({ bodies: all, panelBoxes: boxes }) {
    const parts: GuardPart[] = [];
    for (const { bar, prism, axes } of all.values()) if (prism) parts.push(partOf(bar.ref, prism.vertices, axes.x));
    for (const { panel, outline, normal } of boxes.values()) {
      if (outline.length === 0 || !AXES.some((axis) => Math.abs(dot(normal, axis)) > SQUARE)) continue;
      const half = panel.sheet.thickness / 2;
      const faces = outline.flatMap((corner) => [along(corner, normal, -half), along(corner, normal, half)]);
      parts.push(partOf(panel.ref, faces));
    }
    return parts;
  },
});

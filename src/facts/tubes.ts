import type { OrientedBox } from "../geometry/box.ts";
import { distance, dot, midpoint, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Bar } from "../model/frame.ts";
import type { FaceName } from "../model/stock/stock.ts";
import { type Axes, axesOf } from "./axes.ts";
import { defineFact } from "./fact.ts";

/** A bar before its ends are cut: the envelope of its section drawn along the line its author gave. */
export interface Tube {
  readonly bar: Bar;
  readonly axes: Axes;
  /** Drawn length, m. */
  readonly length: number;
  /** Half the size of the section along y and z, m. */
  readonly half: { readonly y: number; readonly z: number };
}

/** Where a point lies in a bar's own axes: x from the drawn from point, y and z from the centreline, m. */
export function inTube(tube: Tube, point: Vec3): Vec3 {
  const r = subtract(point, tube.bar.from);
  return [dot(r, tube.axes.x), dot(r, tube.axes.y), dot(r, tube.axes.z)];
}

/** Distance of a face from the centreline, m. */
export function faceDistance(tube: Tube, face: FaceName): number {
  return face === "A" || face === "C" ? tube.half.y : tube.half.z;
}

/** Half the breadth of a face, m. */
export function halfBreadth(tube: Tube, face: FaceName): number {
  return face === "A" || face === "C" ? tube.half.z : tube.half.y;
}

/** The box round the tube, longer by `extra` at both ends, m. */
export function tubeBox(tube: Tube, extra: number): OrientedBox {
  const { bar, axes, half, length } = tube;
  return {
    centre: midpoint(bar.from, bar.to),
    axes: [axes.x, axes.y, axes.z],
    half: [length / 2 + extra, half.y, half.z],
  };
}

/** Every bar of the frame as drawn, by id. */
export const tubes = defineFact<ReadonlyMap<string, Tube>>({
  id: "tubes",
  compute(_, frame) {
    const map = new Map<string, Tube>();
    for (const bar of frame.bars) {
      const { height, width } = bar.profile;
      map.set(bar.ref.id, {
        bar,
        axes: axesOf(bar),
        length: distance(bar.from, bar.to),
        half: { y: height / 2, z: width / 2 },
      });
    }
    return map;
  },
});

import { difference } from "../geometry/clip.ts";
import { area, centroid, type Region, secondMoments } from "../geometry/polygon.ts";
import { dot, normalise, subtract } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { bodies, cutStation } from "./bodies.ts";
import { boredHoles } from "./bored-holes.ts";
import { defineFact } from "./fact.ts";

/** What is left of a bar's section where a hole goes through it. */
export interface NetSection {
  readonly bar: string;
  readonly by: Ref;
  readonly what: string;
  /** m from the cut from end. */
  readonly at: number;
  /** m², m⁴ about the net centroid, and the furthest fibres from it, m. All 0 where the hole leaves nothing. */
  readonly A: number;
  readonly Iy: number;
  readonly Iz: number;
  readonly yMost: number;
  readonly zMost: number;
}

/** What is left of a section has no strength below this share of it: slivers of rounding where a hole is as wide as the bar. */
const NOTHING = 1e-6;

/** Properties of several pieces taken as one section. */
function together(pieces: readonly Region[]): Omit<NetSection, "bar" | "by" | "what" | "at"> {
  let [A, Sy, Sz] = [0, 0, 0];
  for (const piece of pieces) {
    const a = area(piece);
    const [y, z] = centroid(piece);
    A += a;
    Sy += a * y;
    Sz += a * z;
  }
  const [yc, zc] = [Sy / Math.max(A, 1e-30), Sz / Math.max(A, 1e-30)];
  let [Iy, Iz, yMost, zMost] = [0, 0, 0, 0];
  for (const piece of pieces) {
    const a = area(piece);
    const [y, z] = centroid(piece);
    // The polygon's first coordinate is y: its ix is ∫ z² about its own centroid.
    const own = secondMoments(piece);
    Iy += own.ix + a * (z - zc) ** 2;
    Iz += own.iy + a * (y - yc) ** 2;
    for (const [py, pz] of piece.outer) {
      yMost = Math.max(yMost, Math.abs(py - yc));
      zMost = Math.max(zMost, Math.abs(pz - zc));
    }
  }
  return { A, Iy, Iz, yMost, zMost };
}

/** Net sections at access holes and drilled holes: the section less a strip as wide as the hole, as deep as it goes. */
export const netSections = defineFact<readonly NetSection[], { bodies: typeof bodies; boredHoles: typeof boredHoles }>({
  id: "net-sections",
  needs: { bodies, boredHoles },
  compute({ bodies: all, boredHoles: holes }) {
    const list: NetSection[] = [];
    for (const { bar, hole } of holes.edges) {
      const body = all.get(bar);
      if (!body?.prism) continue;
      const flat = (p: readonly [number, number, number]): readonly [number, number] => {
        const r = subtract(p, body.bar.from);
        return [dot(r, body.axes.y), dot(r, body.axes.z)];
      };
      const [a, b] = [flat(hole.line.from), flat(hole.line.to)];
      const run = normalise([b[0] - a[0], b[1] - a[1], 0]);
      const [ny, nz] = [-run[1] * hole.radius, run[0] * hole.radius];
      const strip: Region = {
        outer: [
          [a[0] + ny, a[1] + nz],
          [b[0] + ny, b[1] + nz],
          [b[0] - ny, b[1] - nz],
          [a[0] - ny, a[1] - nz],
        ],
        holes: [],
      };
      const left = difference([body.bar.profile.region], [strip]);
      const share = left.reduce((sum, piece) => sum + area(piece), 0) / area(body.bar.profile.region);
      const pieces = share > NOTHING ? left : [];
      const at = dot(subtract(hole.line.from, body.bar.from), body.axes.x) - cutStation(body, "from");
      list.push({ bar, by: hole.by, what: hole.what, at, ...together(pieces) });
    }
    return list;
  },
});

import { dot, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { EndName } from "../model/ref.ts";
import type { Profile } from "../model/stock/stock.ts";
import { barWork, type Operation, rounded, SQUARE } from "./bar-work.ts";
import { type Body, bodies } from "./bodies.ts";
import { comesBuilt } from "./comes-built.ts";
import { defineFact } from "./fact.ts";
import { masses } from "./mass.ts";

/**
 * How two angled cuts of a bar lie to each other, seen square to both: parallel (a parallelogram), mirrored (a trapezium: the long points
 * are on one side), or askew where their slopes differ in size or in the plane they lie in.
 */
export type CutPair = "parallel" | "mirrored" | "askew";

/** Bars sawn and worked alike. */
export interface CutLine {
  readonly profile: Profile;
  /** Long point to long point, m. */
  readonly length: number;
  readonly operations: readonly Operation[];
  /** Of one of them, kg; 0 where the density of its material is not known. */
  readonly mass: number;
  /** Where both ends are cut at an angle. */
  readonly pair?: CutPair;
  readonly bars: readonly string[];
}

/** How the two angled cuts of a body lie to each other; undefined unless both ends are cut at an angle. */
function pairOf(body: Body): CutPair | undefined {
  // The slope of a cut: how far its plane moves along the bar, outwards or back, for a step sideways.
  const slope = (end: EndName): Vec3 => {
    const { normal } = body.cuts[end].plane;
    const along = dot(normal, body.axes.x);
    return scale(subtract(normal, scale(body.axes.x, along)), -1 / along);
  };
  const [from, to] = [slope("from"), slope("to")];
  if (Math.hypot(...from) <= SQUARE || Math.hypot(...to) <= SQUARE) return undefined;
  if (Math.hypot(...subtract(from, to)) <= 2 * SQUARE) return "parallel";
  if (Math.hypot(...subtract(from, scale(to, -1))) <= 2 * SQUARE) return "mirrored";
  return "askew";
}

/**
 * Every bar as it leaves the saw bench: length, end cuts, tapped bores and holes; equal bars on one line, longest first. Bars that come
 * built into a piece are not sawn here.
 */
export const cutList = defineFact<
  readonly CutLine[],
  { bodies: typeof bodies; work: typeof barWork; came: typeof comesBuilt; weights: typeof masses }
>({
  id: "cut-list",
  needs: { bodies, work: barWork, came: comesBuilt, weights: masses },
  compute({ bodies: all, work, came, weights }) {
    const weighs = new Map(weights.own.map((one) => [one.ref.id, one.mass]));
    const lines = new Map<string, Omit<CutLine, "bars"> & { readonly bars: string[] }>();
    for (const [id, body] of all) {
      if (!body.prism || came.pieceOf(id)) continue;
      const operations = work.get(id) ?? [];
      const length = rounded(body.cutLength);
      const pair = pairOf(body);
      const key = JSON.stringify([
        body.bar.profile.name,
        length,
        pair,
        operations.map((o) => [o.what, o.at, rounded(o.size), o.words, o.face ?? ""]).sort(),
      ]);
      const line = lines.get(key);
      if (line) line.bars.push(id);
      else {
        const own = { profile: body.bar.profile, length, operations, mass: weighs.get(id) ?? 0 };
        lines.set(key, { ...own, ...(pair ? { pair } : {}), bars: [id] });
      }
    }
    return [...lines.values()].sort((a, b) =>
      a.profile.name < b.profile.name ? -1 : a.profile.name > b.profile.name ? 1 : b.length - a.length,
    );
  },
});

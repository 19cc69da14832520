import { midpoint, type Vec3 } from "../../geometry/vector.ts";
import { boxEdges } from "../box-edges.ts";
import type { GuardSign } from "../guard-sign.ts";
import type { GuardData } from "./model-data.ts";

/** Points in tenths of a millimetre, mm. */
const mm = (points: readonly Vec3[]): readonly number[] => points.flat().map((c) => Math.round(c * 1e4) / 10 + 0);

const round = (ring: readonly Vec3[]): readonly Vec3[] =>
  ring.flatMap((point, i) => [point, ring[(i + 1) % ring.length] ?? point]);

/** A guard as the viewer takes it. */
export function guardData({ zone, open, filled, way, out }: GuardSign, words: string): GuardData {
  const middle = way ? midpoint(way.from, way.to) : midpoint(zone.low, zone.high);
  return {
    words,
    at: mm([middle]),
    out,
    filled: mm(filled),
    open: mm(open.flatMap(round)),
    zone: mm(boxEdges(zone.low, zone.high).flat()),
    way: mm(way ? [way.from, way.to] : []),
  };
}

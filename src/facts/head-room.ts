import { boundsOf } from "../geometry/bounds.ts";
import { overlappingPairs } from "../geometry/sweep-and-prune.ts";
import { along, type Vec3 } from "../geometry/vector.ts";
import type { Tool } from "../model/stock/stock.ts";
import { defineFact } from "./fact.ts";
import type { PlacedScrew } from "./placed.ts";
import { placements } from "./placements.ts";
import { type Rod, rodGap } from "./rods.ts";

/** A screw whose key, or head, comes near another screw's head. */
export interface HeadRoom {
  readonly screw: PlacedScrew;
  readonly other: PlacedScrew;
  /** Free length between the straight key on the one and the head of the other, m; negative where they meet. */
  readonly keyToHead: number;
  /** Free length between the two heads, m. */
  readonly headToHead: number;
}

/** Reach of the key where stock holds none of the size, m. */
const USUAL_REACH = 0.03;
/** Hexagon across corners over across flats. */
const CORNERS = 2 / Math.sqrt(3);
/** Heads further apart than this never matter to each other, m. */
const NEAR = 0.005;

function keyReach(tools: ReadonlyMap<string, Tool>, size: number): number {
  let reach = Infinity;
  for (const tool of tools.values()) {
    if (tool.kind === "hex-key" && Math.abs(tool.key - size) < 1e-5) reach = Math.min(reach, tool.shortArm);
  }
  return Number.isFinite(reach) ? reach : USUAL_REACH;
}

const headTop = (screw: PlacedScrew): Vec3 => along(screw.seat, screw.axis, -screw.screw.headHeight);

const headRod = (screw: PlacedScrew): Rod => ({
  line: { from: screw.seat, to: headTop(screw) },
  radius: screw.screw.headDiameter / 2,
});

/**
 * How much room each screw's straight key has past the heads of its neighbours. The key is taken as its bit across corners,
 * straight out from the drive by the length of the short arm: what must be free to put any key in. Bars, brackets and the
 * swing of the arm are not looked at here.
 */
export const headRoom = defineFact<readonly HeadRoom[], { placements: typeof placements }>({
  id: "head-room",
  needs: { placements },
  compute({ placements: placed }, frame) {
    const screws = placed.connectors
      .flatMap((connector) => connector.screws)
      .filter((screw) => screw.screw.head !== "none");
    const keys = screws.map((screw) => {
      const reach = keyReach(frame.stock.tools, screw.screw.key);
      // A screw driven elsewhere than at its head is driven below the face: its key starts there.
      const own = screw.drive.point === screw.seat;
      const start = own ? headTop(screw) : screw.drive.point;
      const rod: Rod = {
        line: { from: start, to: along(start, screw.drive.axis, -reach) },
        radius: (screw.screw.key * CORNERS) / 2,
      };
      return { rod, own };
    });
    const bounds = screws.map((screw, i) => {
      const key = keys[i];
      const r = Math.max(screw.screw.headDiameter / 2, key?.rod.radius ?? 0);
      const points = [screw.seat, headTop(screw), ...(key ? [key.rod.line.from, key.rod.line.to] : [])];
      return boundsOf(
        points.flatMap((p): Vec3[] => [
          [p[0] - r, p[1] - r, p[2] - r],
          [p[0] + r, p[1] + r, p[2] + r],
        ]),
      );
    });
    const list: HeadRoom[] = [];
    for (const [i, j] of overlappingPairs(bounds, NEAR)) {
      for (const [p, q] of [
        [i, j],
        [j, i],
      ] as const) {
        const [screw, other, key, otherKey] = [screws[p], screws[q], keys[p], keys[q]];
        if (!screw || !other || !key || !otherKey) continue;
        // Heads inside a bar's slot are in nobody's way.
        const keyToHead = otherKey.own ? rodGap(key.rod, headRod(other)) : Infinity;
        const headToHead = key.own && otherKey.own ? rodGap(headRod(screw), headRod(other)) : Infinity;
        if (keyToHead < NEAR || headToHead < NEAR) list.push({ screw, other, keyToHead, headToHead });
      }
    }
    return list;
  },
});

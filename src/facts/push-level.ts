import { dot } from "../geometry/vector.ts";
import { up } from "./axes.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { structure } from "./structure.ts";
import { ONE_LEVEL, pushedStation, WORKING_HEIGHT } from "./working-height.ts";

/** Where people push and lean: the nodes of posts and level bars, not of doors, nearest under working height. */
export interface PushLevel {
  readonly nodes: readonly number[];
  /** Over the floor, m. */
  readonly height: number;
}

/**
 * Working height, on posts that stand taller; else the highest level under it at which bars are joined, the top of a lower frame
 * among them.
 */
export const pushLevel = defineFact<PushLevel, { structure: typeof structure; bodies: typeof bodies }>({
  id: "push-level",
  needs: { structure, bodies },
  compute({ structure: known, bodies: all }, frame) {
    const joined = new Set<number>();
    for (const link of known.links) {
      joined.add(known.nodeAt(link.bar, link.stations[0]));
      joined.add(known.nodeAt(link.onto, link.stations[1]));
    }
    for (const [node, { bar, at }] of known.nodes.entries()) {
      const body = all.get(bar);
      const cut = Math.abs(at[2] - frame.floor.z - WORKING_HEIGHT) < 1e-6;
      if (cut && body && pushedStation(body, [], frame.floor.z) !== undefined) joined.add(node);
    }
    // Whoever pushes a door moves the door: what the frame gives is felt at its own bars.
    const swinging = new Set(frame.doors.flatMap((door) => door.bars));
    const own = [...joined].filter((node) => !swinging.has(known.nodes[node]?.bar ?? ""));
    const still = own.length > 0 ? own : [...joined];
    const posts = still.filter((node) => {
      const body = all.get(known.nodes[node]?.bar ?? "");
      return body !== undefined && Math.abs(dot(body.axes.x, up)) > Math.SQRT1_2;
    });
    const candidates = posts.length > 0 ? posts : still;
    const height = (node: number): number => (known.nodes[node]?.at[2] ?? 0) - frame.floor.z;
    const below = candidates.filter((node) => height(node) <= WORKING_HEIGHT + 1e-9);
    const pool = below.length > 0 ? below : candidates;
    let top = -Infinity;
    for (const node of pool) top = Math.max(top, height(node));
    const nodes = pool.filter((node) => height(node) > top - ONE_LEVEL).sort((a, b) => a - b);
    return { nodes, height: nodes.length > 0 ? top : 0 };
  },
});

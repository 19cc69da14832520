import { dot } from "../geometry/vector.ts";
import { up } from "./axes.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { structure } from "./structure.ts";

/** Where people push and lean: the nodes of posts and level bars, not of doors, nearest under working height. */
export interface PushLevel {
  readonly nodes: readonly number[];
  /** Over the floor, m. */
  readonly height: number;
}

/** Height at which people push and lean, m over the floor (EN 1991-1-1:2002, 6.4: 1.2 m at most; here 1.1 m, common practice). */
const WORKING_HEIGHT = 1.1;
/** Nodes this little below the highest are on one level with it, m: a bar's depth. */
const ONE_LEVEL = 0.06;

/** The highest level at or under working height at which bars are joined, or the top of a lower frame. */
export const pushLevel = defineFact<PushLevel, { structure: typeof structure; bodies: typeof bodies }>({
  id: "push-level",
  needs: { structure, bodies },
  compute({ structure: known, bodies: all }, frame) {
    const joined = new Set<number>();
    for (const link of known.links) {
      joined.add(known.nodeAt(link.bar, link.stations[0]));
      joined.add(known.nodeAt(link.onto, link.stations[1]));
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

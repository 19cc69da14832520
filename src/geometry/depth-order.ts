import type { Bounds3 } from "./bounds.ts";
import { convexDepth, convexHull } from "./convex.ts";
import type { Ring } from "./polygon.ts";
import type { Prism } from "./prism.ts";
import { prismPenetration } from "./prism-penetration.ts";
import { type IndexPair, overlappingPairs } from "./sweep-and-prune.ts";
import { dot, perpendicularPair, type Vec2, type Vec3 } from "./vector.ts";

/** In which order bodies seen along a direction are painted, the hindmost first. */
export interface DepthOrder {
  readonly order: readonly number[];
  /** Pairs that run into each other and are seen over each other: no order is right for them. */
  readonly entangled: readonly IndexPair[];
  /** Pairs [behind, before] whose order was given up because they lie over each other in a circle. */
  readonly circular: readonly IndexPair[];
}

/** Shadows and bodies that overlap by no more than this only touch [m]. */
const TOUCHING = 1e-6;
/** Sine [rad] of a separating plane's lean towards the eye under which it is seen edge on. */
const EDGE_ON = 1e-9;

const boundsOfShadow = (ring: Ring): Bounds3 => {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of ring) {
    x0 = Math.min(x0, x);
    y0 = Math.min(y0, y);
    x1 = Math.max(x1, x);
    y1 = Math.max(y1, y);
  }
  return { min: [x0, y0, 0], max: [x1, y1, 0] };
};

/**
 * Painter's order of convex bodies for an eye far away in the direction `toward` (unit vector from the frame to the eye). Two
 * bodies that do not run into each other are parted by a plane; where their shadows overlap, the one on the eye's side of it hides
 * the other (M. Newell, R. Newell, T. Sancha, "A solution to the hidden surface problem", ACM 1972, test 4 and 5, with the plane found by separating axes).
 * Everything else is settled by how near the middles are to the eye, then by index, so the order is the same on every run.
 */
export function depthOrder(bodies: readonly Prism[], toward: Vec3): DepthOrder {
  const [u, v] = perpendicularPair(toward);
  const shadows = bodies.map((body) => convexHull(body.vertices.map((p): Vec2 => [dot(p, u), dot(p, v)])));
  const behind: number[][] = bodies.map(() => []);
  const entangled: IndexPair[] = [];
  for (const [i, j] of overlappingPairs(shadows.map(boundsOfShadow))) {
    const [a, b, shadowA, shadowB] = [bodies[i], bodies[j], shadows[i], shadows[j]];
    if (!a || !b || !shadowA || !shadowB || convexDepth(shadowA, shadowB) <= TOUCHING) continue;
    const { depth, axis } = prismPenetration(a, b);
    if (depth > TOUCHING) {
      entangled.push([i, j]);
      continue;
    }
    const lean = dot(axis, toward);
    // The axis points from a to b: leaning towards the eye, b lies before a.
    if (lean > EDGE_ON) behind[j]?.push(i);
    else if (lean < -EDGE_ON) behind[i]?.push(j);
  }
  const nearness = bodies.map(
    ({ vertices }) => vertices.reduce((sum, p) => sum + dot(p, toward), 0) / Math.max(1, vertices.length),
  );
  const far = (a: number, b: number): number => (nearness[a] ?? 0) - (nearness[b] ?? 0) || a - b;
  return { ...sorted(behind, far), entangled };
}

/** Every index after those behind it, walked depth first without recursion. */
function sorted(
  behind: readonly (readonly number[])[],
  far: (a: number, b: number) => number,
): Pick<DepthOrder, "order" | "circular"> {
  const order: number[] = [];
  const circular: IndexPair[] = [];
  const state = new Uint8Array(behind.length); // 0 untouched, 1 on the way, 2 painted
  const starts = behind.map((_, i) => i).sort(far);
  const lists = behind.map((list) => [...list].sort(far));
  for (const start of starts) {
    if (state[start] !== 0) continue;
    const path: { readonly at: number; next: number }[] = [{ at: start, next: 0 }];
    state[start] = 1;
    for (let top = path[path.length - 1]; top; top = path[path.length - 1]) {
      const other = lists[top.at]?.[top.next];
      top.next += 1;
      if (other === undefined) {
        state[top.at] = 2;
        order.push(top.at);
        path.pop();
      } else if (state[other] === 1) circular.push([other, top.at]);
      else if (state[other] === 0) {
        state[other] = 1;
        path.push({ at: other, next: 0 });
      }
    }
  }
  return { order, circular };
}

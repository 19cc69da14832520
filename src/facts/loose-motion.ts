import type { Vec3 } from "../geometry/vector.ts";
import type { Mechanism } from "../mechanics/mechanism/bodies.ts";
import type { Structure } from "./structure.ts";

/** Bars that move together and nothing stops, and how. */
export interface LooseMotion {
  /** Motions of one mechanism come together: a leg that turns and the rail that slides with it. */
  readonly mechanism: number;
  readonly bars: readonly string[];
  readonly kind: "turn" | "slide";
  readonly direction: Vec3;
  /** On the axis of a turn, m. */
  readonly point: Vec3;
  /** How fast it goes beside the others of its mechanism: turning [rad], and the shift of the origin [m]. */
  readonly rate: { readonly turn: Vec3; readonly shift: Vec3 };
}

/** Names the bars of the solver's mechanisms; the part with the fewest bars of each mechanism leads. */
export function namedMotions(mechanisms: readonly Mechanism[], structure: Structure): readonly LooseMotion[] {
  const motions: LooseMotion[] = [];
  for (const [mechanism, { bodies }] of mechanisms.entries()) {
    const moving = bodies.map((body) => {
      const bars = new Set<string>();
      for (const m of body.members) {
        const piece = structure.pieces[m];
        if (piece) bars.add(piece.bar);
      }
      for (const n of body.nodes) {
        const node = structure.nodes[n];
        if (node) bars.add(node.bar);
      }
      return { bars: [...bars].sort(), motion: body.motion, rate: body.twist };
    });
    for (const { bars, motion, rate } of moving) {
      if (bars.length === 0) continue;
      if (motion.kind === "slides")
        motions.push({ mechanism, bars, kind: "slide", direction: motion.along, point: [0, 0, 0], rate });
      else motions.push({ mechanism, bars, kind: "turn", direction: motion.axis, point: motion.through, rate });
    }
  }
  return motions;
}

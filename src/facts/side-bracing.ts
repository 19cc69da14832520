import { dot } from "../geometry/vector.ts";
import { up } from "./axes.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { fastenedSheets } from "./fastened-sheets.ts";
import { planAxes } from "./plan-axes.ts";
import { structure } from "./structure.ts";

/** What resists sway along one axis of the plan beside plain brackets. */
export type SideBrace = "panel" | "brace" | "stiff joint";

/** Beyond this many radians off level and off plumb a bar is a brace: 15°. */
const SLANT = Math.PI / 12;
/** Sine within which a bar or panel follows an axis of the plan: 30°. */
const FOLLOWS = 0.5;

/**
 * What braces the frame along either of its axes in plan: a panel screwed to upright faces at a close pitch, a slanting bar, or a joint of
 * post and rail with side walls, two screws a leg, a plate or an end screw.
 */
export const sideBracing = defineFact<
  readonly [ReadonlySet<SideBrace>, ReadonlySet<SideBrace>],
  { bodies: typeof bodies; structure: typeof structure; fastened: typeof fastenedSheets; plan: typeof planAxes }
>({
  id: "side-bracing",
  needs: { bodies, structure, fastened: fastenedSheets, plan: planAxes },
  compute({ bodies: all, structure: known, fastened, plan }) {
    const found = [new Set<SideBrace>(), new Set<SideBrace>()] as const;
    for (const axis of [0, 1] as const) {
      const across = axis === 0 ? 1 : 0;
      for (const { axes } of all.values()) {
        const rise = Math.abs(Math.asin(Math.min(1, Math.max(-1, dot(axes.x, up)))));
        const level = Math.cos(rise);
        const slants = rise > SLANT && rise < Math.PI / 2 - SLANT;
        if (slants && Math.abs(dot(axes.x, plan.directions[across])) < FOLLOWS * level) found[axis].add("brace");
      }
      for (const { normal } of fastened)
        if (Math.abs(normal[2]) < FOLLOWS && Math.abs(dot(normal, plan.directions[axis])) < FOLLOWS)
          found[axis].add("panel");
      for (const { bar, onto, connectors } of known.links) {
        const [a, b] = [all.get(bar)?.axes.x, all.get(onto)?.axes.x];
        if (!a || !b) continue;
        const [post, rail] = Math.abs(dot(a, up)) > Math.abs(dot(b, up)) ? [a, b] : [b, a];
        if (Math.abs(dot(post, up)) < 1 - FOLLOWS || Math.abs(dot(rail, plan.directions[axis])) < FOLLOWS) continue;
        const stiff = connectors.some(
          ({ part }) =>
            part.kind === "plate" ||
            part.kind === "end-screw" ||
            (part.kind === "bracket" &&
              (part.gussets > 0 || Math.min(part.legs.a.holes.length, part.legs.b.holes.length) >= 2)),
        );
        if (stiff) found[axis].add("stiff joint");
      }
    }
    return found;
  },
});

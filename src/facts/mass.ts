import { area } from "../geometry/polygon.ts";
import { add, along, midpoint, scale, type Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { bodies, cutPoint } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { panelShares } from "./panel-shares.ts";
import { placements } from "./placements.ts";
import { sheets } from "./sheets.ts";
import { standings } from "./standings.ts";

/** One thing of weight. */
export interface Weight {
  readonly ref: Ref;
  /** kg */
  readonly mass: number;
  /** m */
  readonly centre: Vec3;
}

export interface Masses {
  /** What the frame itself consists of: bars, panels, connectors, feet and casters. */
  readonly own: readonly Weight[];
  /** Equipment bolted down, and equipment that may be taken away. */
  readonly fixed: readonly Weight[];
  readonly removable: readonly Weight[];
}

/** Total mass, kg, and its centre, m; the centre of nothing is the origin. */
export function gathered(weights: readonly Weight[]): { readonly mass: number; readonly centre: Vec3 } {
  let mass = 0;
  let moment: Vec3 = [0, 0, 0];
  for (const weight of weights) {
    mass += weight.mass;
    moment = add(moment, scale(weight.centre, weight.mass));
  }
  return { mass, centre: mass > 0 ? scale(moment, 1 / mass) : [0, 0, 0] };
}

/**
 * Mass and centre of every part. A bar is its section over the length of its centreline; a panel its sheet at the middle of
 * the plane it lies in; a connector sits where its screws are. Screws, nuts, caps and gaskets are left out: together they
 * are below two parts in a hundred of an ordinary frame.
 */
export const masses = defineFact<
  Masses,
  {
    bodies: typeof bodies;
    placements: typeof placements;
    standings: typeof standings;
    sheets: typeof sheets;
    shares: typeof panelShares;
  }
>({
  id: "masses",
  needs: { bodies, placements, standings, sheets, shares: panelShares },
  compute({ bodies: all, placements: placed, standings: standing, sheets: laid, shares }, frame) {
    const own: Weight[] = [];
    for (const body of all.values()) {
      const density = frame.stock.materials.get(body.bar.profile.material)?.density;
      if (!body.prism || density === undefined) continue;
      const [from, to] = [cutPoint(body, "from"), cutPoint(body, "to")];
      const mass =
        density * area(body.bar.profile.region) * Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
      own.push({ ref: body.bar.ref, mass, centre: midpoint(from, to) });
    }
    for (const share of shares.values()) {
      const { panel, normal } = share;
      const { density, thickness } = panel.sheet;
      const sheet = laid.find((s) => s.panel === panel);
      let centre: Vec3;
      if (sheet) centre = along(midpoint(sheet.corners[0], sheet.corners[2]), normal, thickness / 2);
      else {
        // In the slots of its bars: the load it shares out keeps its moment, so the shares have its centre.
        const parts: Weight[] = [];
        for (const strip of share.strips) {
          const body = all.get(strip.bar);
          if (!body) continue;
          const at = along(body.bar.from, body.axes.x, (strip.from + strip.to) / 2);
          parts.push({ ref: panel.ref, mass: strip.areaPerLength * (strip.to - strip.from), centre: at });
        }
        centre = gathered(parts).centre;
      }
      own.push({ ref: panel.ref, mass: density * thickness * share.area, centre });
    }
    for (const connector of placed.connectors) {
      const points = connector.screws.map((screw): Weight => ({ ref: connector.ref, mass: 1, centre: screw.seat }));
      if (points.length > 0)
        own.push({ ref: connector.ref, mass: connector.part.mass, centre: gathered(points).centre });
    }
    for (const { stand, top } of standing.all)
      own.push({ ref: stand.ref, mass: stand.part.mass, centre: midpoint(top, [top[0], top[1], frame.floor.z]) });
    const things = (fixed: boolean): Weight[] =>
      frame.masses
        .filter((mass) => mass.fixed === fixed)
        .map((mass) => ({ ref: mass.ref, mass: mass.mass, centre: mass.centre }));
    return { own, fixed: things(true), removable: things(false) };
  },
});

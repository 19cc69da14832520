import { distance } from "../geometry/vector.ts";
import type { LoadCase, MemberLoad } from "../mechanics/model.ts";
import { bodies, cutPoint } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { footing } from "./footing.ts";
import { structure } from "./structure.ts";

/** A frame is fastened together and to its floor at 20 °C, K (ISO 1:2022). */
const BUILT_AT = 293.15;
const ZERO_CELSIUS = 273.15;
/** Concrete, 1/K (EN 1992-1-1:2004, 3.1.3(5)); the floor is as warm as the frame. */
const FLOOR_EXPANSION = 10e-6;

/** Growth that is lost in the holes of anchors and brackets before it presses, m (common practice: holes a millimetre wider than their screws). */
const PLAY = 1e-3;

/** What the warmest or the coldest day does to a frame that cannot move freely. */
export interface Warmth {
  /** "warmth of 40 °C", "cold of 2 °C". */
  readonly name: string;
  readonly loads: LoadCase;
}

/**
 * The strains of bars that outgrow the floor they are anchored to, or each other: (α − α_floor)(T − 20 °C) at the warmest and the
 * coldest of the site, less what play takes. None for a frame of one metal that is free to grow, resting or held at one anchor: that bends
 * nothing.
 */
export const warmth = defineFact<
  readonly Warmth[],
  { structure: typeof structure; bodies: typeof bodies; footing: typeof footing }
>({
  id: "warmth",
  needs: { structure, bodies, footing },
  compute({ structure: known, bodies: all, footing: feet }, frame) {
    const expansionOf = (bar: string): number | undefined => {
      const body = all.get(bar);
      return body && frame.stock.materials.get(body.bar.profile.material)?.expansion;
    };
    const expansions = new Set(known.pieces.flatMap(({ bar }) => expansionOf(bar) ?? []));
    const [least, most] = [Math.min(...expansions), Math.max(...expansions)];
    const anchors = feet.filter(({ hold }) => hold === "anchored");
    /** Between the two anchors furthest apart, m; and along the longest bar. */
    const apart = anchors.reduce((far, a) => anchors.reduce((most, b) => Math.max(most, distance(a.at, b.at)), far), 0);
    const longest = [...all.values()].reduce(
      (far, body) => Math.max(far, distance(cutPoint(body, "from"), cutPoint(body, "to"))),
      0,
    );
    /** By how much it would outgrow what holds it, for each kelvin, m/K. */
    const growth = Math.max(
      Math.max(Math.abs(most - FLOOR_EXPANSION), Math.abs(least - FLOOR_EXPANSION)) * apart,
      (most - least) * longest,
    );
    const [cold, warm] = frame.site.temperature;
    return (
      [
        ["warmth", warm],
        ["cold", cold],
      ] as const
    ).flatMap(([word, at]) => {
      const rise = at - BUILT_AT;
      const grown = growth * Math.abs(rise);
      if (grown <= PLAY) return [];
      const felt = 1 - PLAY / grown;
      const members = known.pieces.map((piece, member): MemberLoad => {
        const expansion = expansionOf(piece.bar) ?? FLOOR_EXPANSION;
        return { kind: "strain", member, axial: (expansion - FLOOR_EXPANSION) * rise * felt };
      });
      return [{ name: `${word} of ${Number((at - ZERO_CELSIUS).toFixed(1))} °C`, loads: { members } }];
    });
  },
});

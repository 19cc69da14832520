import type { Panel } from "../../model/frame.ts";
import { gathered, type Masses } from "../mass.ts";
import type { Placements } from "../placements.ts";
import type { Standings } from "../standings.ts";

/** Panels in slots of nothing but these bars. */
export function panelsAmong(bars: ReadonlySet<string>, panels: readonly Panel[]): readonly Panel[] {
  return panels.filter(
    ({ held }) => held.kind === "in-slot" && held.edges.every((edge) => edge.kind === "bar" && bars.has(edge.bar)),
  );
}

/** Mass of some bars with the panels in their slots, the connectors between them and the feet under them, kg. */
export function massBuiltIn(
  panels: readonly Panel[],
  masses: Masses,
  placed: Placements,
  standing: Standings,
): (bars: readonly string[]) => number {
  const weight = new Map(masses.own.map((one) => [one.ref.id, one]));
  return (bars) => {
    const inside = new Set(bars);
    const ids = [
      ...bars,
      ...panelsAmong(inside, panels).map((panel) => panel.ref.id),
      ...placed.connectors.filter((one) => one.holds.every((hold) => inside.has(hold.bar))).map((one) => one.ref.id),
      ...standing.all.filter(({ body }) => inside.has(body.bar.ref.id)).map(({ stand }) => stand.ref.id),
    ];
    return gathered(ids.map((id) => weight.get(id)).filter((one) => one !== undefined)).mass;
  };
}

import type { Bore, ConnectorHole, Pair, Stock } from "../model/stock/stock.ts";
import { defineFact } from "./fact.ts";
import { type Standing, standings } from "./standings.ts";

/** What a foot or caster is screwed into. */
export type StandFit =
  /** A stem, and the threads that the core bores of its bar take, each once. */
  | { readonly by: "stem"; readonly standing: Standing; readonly thread: string; readonly cores: readonly string[] }
  /** A plate with its holes known: those that have no core bore over them. */
  | { readonly by: "holes"; readonly standing: Standing; readonly count: number; readonly missing: readonly string[] }
  /** A plate drilled to suit: how many core bores lie over it. */
  | { readonly by: "plate"; readonly standing: Standing; readonly over: number };

/** Diameter of a screw of this thread, m; the bore as extruded where stock has no screw of it. */
function shank(stock: Stock, bore: Bore): number {
  for (const screw of stock.screws.values()) if (screw.thread === bore.thread) return screw.diameter;
  return bore.diameter;
}

/** Rounding of drawn places, m. */
const ROUNDING = 1e-9;

/** Whether a screw through the hole meets the bore: the play of the screw in the hole is all it can be moved by. */
function meets(hole: ConnectorHole, at: Pair, bore: Bore, stock: Stock): boolean {
  const play = (hole.diameter - shank(stock, bore)) / 2;
  return play > -ROUNDING && Math.hypot(at[0] - bore.at[0], at[1] - bore.at[1]) <= play + ROUNDING;
}

const QUARTER_TURNS: readonly ((at: Pair) => Pair)[] = [
  ([u, v]) => [u, v],
  ([u, v]) => [-v, u],
  ([u, v]) => [-u, -v],
  ([u, v]) => [v, -u],
];

/** Holes without a bore over them, the plate turned as suits it best. */
function missingHoles(holes: readonly ConnectorHole[], bores: readonly Bore[], stock: Stock): readonly string[] {
  const tries = QUARTER_TURNS.map((turn) =>
    holes.filter((hole) => !bores.some((bore) => meets(hole, turn(hole.at), bore, stock))).map(({ id }) => id),
  );
  return tries.reduce((best, one) => (one.length < best.length ? one : best));
}

/** Core bores whose middle lies over a plate of this size, turned as suits it best. */
function boresOver([u, v]: Pair, bores: readonly Bore[]): number {
  const count = (y: number, z: number): number =>
    bores.filter(({ at }) => Math.abs(at[0]) <= y / 2 + ROUNDING && Math.abs(at[1]) <= z / 2 + ROUNDING).length;
  return Math.max(count(u, v), count(v, u));
}

/** What every foot and caster finds in the end of its bar to be screwed into: core bores, by thread and place. */
export const standFits = defineFact<readonly StandFit[], { standings: typeof standings }>({
  id: "stand-fits",
  needs: { standings },
  compute({ standings: { all } }, { stock }) {
    return all.map((standing): StandFit => {
      const { mount } = standing.stand.part;
      const { bores } = standing.body.bar.profile;
      if (mount.by === "stem")
        return { by: "stem", standing, thread: mount.thread, cores: [...new Set(bores.map(({ thread }) => thread))] };
      const { holes, size } = mount;
      if (!holes) return { by: "plate", standing, over: boresOver(size, bores) };
      return { by: "holes", standing, count: holes.length, missing: missingHoles(holes, bores, stock) };
    });
  },
});

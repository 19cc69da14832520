import { dot } from "../geometry/vector.ts";
import type { Choice } from "../model/frame.ts";
import type { Bore } from "../model/stock/stock.ts";
import type { Body } from "./bodies.ts";
import type { Answer } from "./face-choice.ts";

/** Bores that reach a written way alike within this are not told apart by it, m. */
const ALIKE = 1e-6;

/** Which core bores of a bar's end are meant: the only one, or those chosen; none where its profile has none. */
export function chooseBores(body: Body, wanted: Choice | undefined): Answer<readonly Bore[]> {
  const { bores } = body.bar.profile;
  const [only, second] = bores;
  if (!only) return { is: [] };
  if (wanted?.by === "all" || (!wanted && !second)) return { is: bores };
  const id = body.bar.ref.id;
  const mend = `add "bore": a direction, "all", or a number from 1 to ${bores.length}`;
  if (!wanted) {
    return { found: `end of ${id}, which has ${bores.length} core bores`, expected: "one bore named", mend };
  }
  if (wanted.by === "number") {
    const chosen = bores.find((bore) => bore.number === wanted.number);
    return chosen
      ? { is: [chosen] }
      : { found: `bore ${wanted.number} of ${id}`, expected: `a number from 1 to ${bores.length}`, mend };
  }
  const way = (bore: Bore): number =>
    bore.at[0] * dot(body.axes.y, wanted.direction) + bore.at[1] * dot(body.axes.z, wanted.direction);
  const most = bores.reduce((far, bore) => Math.max(far, way(bore)), -Infinity);
  const furthest = bores.filter((bore) => way(bore) > most - ALIKE);
  if (furthest.length === 1) return { is: furthest };
  return {
    found: `bore "${wanted.written}" of ${id}`,
    expected: `one bore; ${furthest.map((bore) => bore.number).join(" and ")} lie that way alike`,
    mend,
  };
}

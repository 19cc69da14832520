import { angleBetween, dot, scale, subtract } from "../geometry/vector.ts";
import type { EndName } from "../model/ref.ts";
import type { FaceName } from "../model/stock/stock.ts";
import { faceNames, faceNormal } from "./axes.ts";
import { type Body, bodies, cutStation } from "./bodies.ts";
import { boredHoles } from "./bored-holes.ts";
import { comesBuilt } from "./comes-built.ts";
import { defineFact } from "./fact.ts";
import { placements } from "./placements.ts";
import { screwedParts } from "./screwed-parts.ts";
import { standings } from "./standings.ts";

/** Work on a bar besides its square cuts. */
export interface Operation {
  readonly what: "angled cut" | "tap" | "hole";
  /** End it is at, or the station of a hole from the from end along the bar as cut, m. */
  readonly at: EndName | number;
  /** rad for an angled cut, m for a hole. */
  readonly size: number;
  /** "M8" of a tapped bore, or what a hole is for. */
  readonly words: string;
  /** Face a hole is drilled from. */
  readonly face?: FaceName;
}

/** Cut angles below this are square, rad. */
export const SQUARE = 1e-4;
/** Lengths are told apart to a hundredth of a millimetre, and holes by the same. */
const STEP = 1e-5;

export const rounded = (value: number): number => Math.round(value / STEP) * STEP;

/** Work on the ends before holes, holes along the bar: the order at the bench. */
function inOrder(a: Operation, b: Operation): number {
  const place = (operation: Operation): number =>
    typeof operation.at === "number" ? operation.at : operation.at === "from" ? -2 : -1;
  return place(a) - place(b) || (a.words < b.words ? -1 : a.words > b.words ? 1 : 0);
}

function cutsOf(body: Body): Operation[] {
  const list: Operation[] = [];
  for (const end of ["from", "to"] as const) {
    const out = scale(body.axes.x, end === "to" ? 1 : -1);
    const angle = angleBetween(body.cuts[end].plane.normal, out);
    if (angle > SQUARE) list.push({ what: "angled cut", at: end, size: angle, words: "" });
  }
  return list;
}

/** What is done to each bar here besides square cuts: of one that comes built, what its joints to other parts still ask for. */
export const barWork = defineFact<
  ReadonlyMap<string, readonly Operation[]>,
  {
    bodies: typeof bodies;
    placements: typeof placements;
    parts: typeof screwedParts;
    standings: typeof standings;
    holes: typeof boredHoles;
    came: typeof comesBuilt;
  }
>({
  id: "bar-work",
  needs: { bodies, placements, parts: screwedParts, standings, holes: boredHoles, came: comesBuilt },
  compute({ bodies: all, placements: placed, parts, standings: standing, holes, came }) {
    const work = new Map<string, Operation[]>();
    const add = (bar: string, operation: Operation): void => {
      const list = work.get(bar);
      if (list) list.push(operation);
      else work.set(bar, [operation]);
    };
    const inside = new Set(parts.all.filter((part) => came.around(part)).map(({ ref }) => ref.id));
    for (const [id, body] of all) if (!came.pieceOf(id)) for (const cut of cutsOf(body)) add(id, cut);
    for (const connector of placed.connectors) {
      if (inside.has(connector.ref.id)) continue;
      for (const { into, screw } of connector.screws) {
        if (into.kind === "bore")
          add(into.bar, { what: "tap", at: into.end, size: screw.diameter, words: screw.thread });
      }
    }
    for (const under of standing.all) {
      const { mount } = under.stand.part;
      if (mount.by !== "stem" || came.pieceOf(under.stand.ref.id)) continue;
      add(under.body.bar.ref.id, { what: "tap", at: under.end, size: 0, words: mount.thread });
    }
    for (const hole of holes.drilled) {
      const { bar, by } = hole;
      const body = all.get(bar);
      // What the file drills into a bar by hand is there when the bar comes built.
      if (!body || inside.has(by.id) || (by.kind === "bar" && came.pieceOf(bar))) continue;
      const at = dot(subtract(hole.line.from, body.bar.from), body.axes.x) - cutStation(body, "from");
      const into = subtract(hole.line.to, hole.line.from);
      const face = faceNames.reduce((a, b) =>
        dot(faceNormal(body.axes, b), into) < dot(faceNormal(body.axes, a), into) ? b : a,
      );
      add(bar, { what: "hole", at: rounded(at), size: 2 * hole.radius, words: hole.what, face });
    }
    return new Map([...work].map(([bar, list]) => [bar, [...list].sort(inOrder)]));
  },
});

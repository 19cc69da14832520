import { angleBetween, dot, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { EndName } from "../model/ref.ts";
import type { FaceName, Profile } from "../model/stock/stock.ts";
import { faceNames, faceNormal } from "./axes.ts";
import { type Body, bodies, cutStation } from "./bodies.ts";
import { boredHoles } from "./bored-holes.ts";
import { defineFact } from "./fact.ts";
import { placements } from "./placements.ts";
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

/**
 * How two angled cuts of a bar lie to each other, seen square to both: parallel (a parallelogram), mirrored (a trapezium: the long points
 * are on one side), or askew where their slopes differ in size or in the plane they lie in.
 */
export type CutPair = "parallel" | "mirrored" | "askew";

/** Bars sawn and worked alike. */
export interface CutLine {
  readonly profile: Profile;
  /** Long point to long point, m. */
  readonly length: number;
  readonly operations: readonly Operation[];
  /** Where both ends are cut at an angle. */
  readonly pair?: CutPair;
  readonly bars: readonly string[];
}

/** Cut angles below this are square, rad. */
const SQUARE = 1e-4;
/** Lengths are told apart to a hundredth of a millimetre, and holes by the same. */
const STEP = 1e-5;

const rounded = (value: number): number => Math.round(value / STEP) * STEP;

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

/** How the two angled cuts of a body lie to each other; undefined unless both ends are cut at an angle. */
function pairOf(body: Body): CutPair | undefined {
  // The slope of a cut: how far its plane moves along the bar, outwards or back, for a step sideways.
  const slope = (end: EndName): Vec3 => {
    const { normal } = body.cuts[end].plane;
    const along = dot(normal, body.axes.x);
    return scale(subtract(normal, scale(body.axes.x, along)), -1 / along);
  };
  const [from, to] = [slope("from"), slope("to")];
  if (Math.hypot(...from) <= SQUARE || Math.hypot(...to) <= SQUARE) return undefined;
  if (Math.hypot(...subtract(from, to)) <= 2 * SQUARE) return "parallel";
  if (Math.hypot(...subtract(from, scale(to, -1))) <= 2 * SQUARE) return "mirrored";
  return "askew";
}

/** Every bar as it leaves the saw bench: length, end cuts, tapped bores and holes; equal bars on one line, longest first. */
export const cutList = defineFact<
  readonly CutLine[],
  { bodies: typeof bodies; placements: typeof placements; standings: typeof standings; holes: typeof boredHoles }
>({
  id: "cut-list",
  needs: { bodies, placements, standings, holes: boredHoles },
  compute({ bodies: all, placements: placed, standings: standing, holes }) {
    const work = new Map<string, Operation[]>();
    const add = (bar: string, operation: Operation): void => {
      const list = work.get(bar);
      if (list) list.push(operation);
      else work.set(bar, [operation]);
    };
    for (const connector of placed.connectors) {
      for (const { into, screw } of connector.screws) {
        if (into.kind === "bore")
          add(into.bar, { what: "tap", at: into.end, size: screw.diameter, words: screw.thread });
      }
    }
    for (const under of standing.all) {
      const { mount } = under.stand.part;
      if (mount.by === "stem") add(under.body.bar.ref.id, { what: "tap", at: under.end, size: 0, words: mount.thread });
    }
    for (const hole of holes.drilled) {
      const { bar } = hole;
      const body = all.get(bar);
      if (!body) continue;
      const at = dot(subtract(hole.line.from, body.bar.from), body.axes.x) - cutStation(body, "from");
      const into = subtract(hole.line.to, hole.line.from);
      const face = faceNames.reduce((a, b) =>
        dot(faceNormal(body.axes, b), into) < dot(faceNormal(body.axes, a), into) ? b : a,
      );
      add(bar, { what: "hole", at: rounded(at), size: 2 * hole.radius, words: hole.what, face });
    }
    const lines = new Map<
      string,
      { profile: Profile; length: number; operations: Operation[]; pair?: CutPair; bars: string[] }
    >();
    for (const [id, body] of all) {
      if (!body.prism) continue;
      const operations = [...cutsOf(body), ...(work.get(id) ?? [])].sort(inOrder);
      const length = rounded(body.cutLength);
      const pair = pairOf(body);
      const key = JSON.stringify([
        body.bar.profile.name,
        length,
        pair,
        operations.map((o) => [o.what, o.at, rounded(o.size), o.words, o.face ?? ""]).sort(),
      ]);
      const line = lines.get(key);
      if (line) line.bars.push(id);
      else lines.set(key, { profile: body.bar.profile, length, operations, ...(pair ? { pair } : {}), bars: [id] });
    }
    return [...lines.values()].sort((a, b) =>
      a.profile.name < b.profile.name ? -1 : a.profile.name > b.profile.name ? 1 : b.length - a.length,
    );
  },
});

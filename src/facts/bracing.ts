import { dot, type Vec3 } from "../geometry/vector.ts";
import { bodies, cutStation } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { footing } from "./footing.ts";
import { structure } from "./structure.ts";

/** A stretch of a bar that can bow out in one direction; stations from the cut from end, m. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  /** Buckling length, m: its own length, or twice that where one end is free. */
  readonly length: number;
}

/** Stretches in which a bar can bow out along its local y and along its local z. */
export interface Bracing {
  readonly y: readonly Stretch[];
  readonly z: readonly Stretch[];
}

/** Cosine beyond which a bar that meets another counts as holding it in a direction: within 60° of it. */
const ALONG = 0.5;
/** A stub past the last hold of no more than this many section depths is no column. */
const STUB = 1.5;
/** A column fixed at one end and free at the other (Euler). */
const FREE_END = 2;

function stretches(holds: readonly number[], length: number, stub: number): Stretch[] {
  const list: Stretch[] = [];
  const [first] = holds;
  const last = holds[holds.length - 1];
  if (first === undefined || last === undefined) return list;
  if (first > stub) list.push({ from: 0, to: first, length: FREE_END * first });
  for (const [i, to] of holds.entries()) {
    const from = holds[i - 1];
    if (from !== undefined && to - from > 1e-6) list.push({ from, to, length: to - from });
  }
  if (length - last > stub) list.push({ from: last, to: length, length: FREE_END * (length - last) });
  return list;
}

/**
 * Where bars are held sideways. A bar that meets another within 60° of a direction holds it in that direction; feet and the
 * outermost joints hold both ways: what they give, the frame gives as a whole, and its own stability is judged apart.
 */
export const bracing = defineFact<
  ReadonlyMap<string, Bracing>,
  { bodies: typeof bodies; structure: typeof structure; footing: typeof footing }
>({
  id: "bracing",
  needs: { bodies, structure, footing },
  compute({ bodies: all, structure: known, footing: feet }) {
    const holds = new Map<string, { readonly station: number; readonly along: Vec3 | undefined }[]>();
    const note = (bar: string, station: number, along: Vec3 | undefined): void => {
      const list = holds.get(bar);
      if (list) list.push({ station, along });
      else holds.set(bar, [{ station, along }]);
    };
    for (const { bar, onto, stations } of known.links) {
      note(bar, stations[0], all.get(onto)?.axes.x);
      note(onto, stations[1], all.get(bar)?.axes.x);
    }
    for (const { node } of feet) {
      const at = known.nodes[node];
      if (at) note(at.bar, at.station, undefined);
    }
    const map = new Map<string, Bracing>();
    for (const [id, body] of all) {
      if (!body.prism) continue;
      const low = cutStation(body, "from");
      const length = cutStation(body, "to") - low;
      const own = [...(holds.get(id) ?? [])].sort((a, b) => a.station - b.station);
      const stub = STUB * 2 * Math.max(body.half.y, body.half.z);
      const held = (direction: Vec3): readonly number[] =>
        own
          .filter(
            ({ along }, i) => i === 0 || i === own.length - 1 || !along || Math.abs(dot(along, direction)) > ALONG,
          )
          .map(({ station }) => station - low);
      map.set(id, { y: stretches(held(body.axes.y), length, stub), z: stretches(held(body.axes.z), length, stub) });
    }
    return map;
  },
});

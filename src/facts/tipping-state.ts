import type { Vec3 } from "../geometry/vector.ts";
import type { TippingEdge } from "./tipping-edges.ts";
import type { Leaf, Linked, Movable, Place, Weighing } from "./weighing.ts";

/** What something of so many kg costs where it is, by its distance inside the line and its height over the floor, m. */
type Cost = (inside: number, height: number) => number;

/** Where doors, loads and things that slide are. */
export interface TippingState {
  /** Load cases and equipment that may be taken away, and what is fitted and pulled out, by name. */
  readonly laden: readonly string[];
  readonly out: readonly string[];
  /** Doors that are not shut. */
  readonly open: readonly string[];
  /** kg; of its centre the distance inside the line and the height over the floor, m. */
  readonly mass: number;
  readonly inside: number;
  readonly height: number;
  /** Where that centre is in the frame, m. */
  readonly centre: Vec3;
}

interface Item {
  readonly mass: number;
  readonly at: Vec3;
  readonly inside: number;
  readonly height: number;
  readonly open: boolean;
}

/** Where a thing is, nowhere where an absent load costs less, and what that costs. */
interface Cheapest {
  readonly items: readonly Item[];
  readonly cost: number;
}

/** What stands in some way, part by part. */
interface Standing {
  readonly cost: number;
  readonly items: readonly Item[];
  readonly laden: readonly string[];
  readonly out: readonly string[];
}

/** Below what is left of rounding a door is no worse open. */
const ROUNDING = 1e-9;
/** So many doors that share loads are tried in all positions of each with all of the others. */
const EVERY_POSITION = 2;

/** Load cases that stay away because others which exclude them cost less. */
function keptAway(apart: Linked["apart"], costs: ReadonlyMap<string, number>): ReadonlySet<string> {
  const away = new Set<string>();
  for (const sets of apart) {
    const sum = (set: readonly string[]): number => set.reduce((all, name) => all + (costs.get(name) ?? 0), 0);
    const best = sets.reduce((a, b) => (sum(b) < sum(a) ? b : a));
    for (const name of sets.flat()) if (!best.includes(name)) away.add(name);
  }
  return away;
}

/** Doors, loads and things that slide as they cost least, the doors standing in these positions. */
function standingWith(
  { leaves: own, movable, apart }: Linked,
  leaves: readonly Leaf[],
  positions: readonly number[],
  itemAt: (place: Place, point: Vec3) => Item,
  cost: Cost,
): Standing {
  const positionOf = new Map(own.map((leaf, i) => [leaf, positions[i] ?? 0]));
  const placed = (place: Place): Item => {
    const leaf = place.leaf === undefined ? undefined : leaves[place.leaf];
    return itemAt(place, leaf ? leaf.turned(place.centre, positionOf.get(place.leaf ?? -1) ?? 0) : place.centre);
  };
  const worth = ({ mass, inside, height }: Item): number => mass * cost(inside, height);
  const cheapest = ({ kind, parts }: Movable, may: (place: Place) => boolean): Cheapest => {
    let sum = 0;
    const items: Item[] = [];
    for (const places of parts) {
      let best: { readonly item: Item; readonly cost: number } | undefined;
      for (const place of places) {
        if (!may(place)) continue;
        const item = placed(place);
        const own = worth(item);
        if (!best || own < best.cost - ROUNDING) best = { item, cost: own };
      }
      if (!best) continue;
      sum += best.cost;
      items.push(best.item);
    }
    return kind === "load" && sum >= 0 ? { items: [], cost: 0 } : { items, cost: sum };
  };
  const any = movable.map((one) => cheapest(one, () => true));
  const shut = movable.map((one, i) => (one.interlocked ? cheapest(one, ({ open }) => !open) : (any[i] as Cheapest)));
  const away = keptAway(apart, new Map(movable.map(({ name }, i) => [name, any[i]?.cost ?? 0])));
  // Of what an interlock holds, the one that is worst pulled out.
  const gains = movable.map((_, i) => (shut[i]?.cost ?? 0) - (any[i]?.cost ?? 0));
  const most = gains.reduce((a, gain) => Math.max(a, gain), 0);
  const only = gains.findIndex((gain) => gain > 0 && gain === most);
  const items: Item[] = [];
  const laden: string[] = [];
  const out: string[] = [];
  for (const [i, { name, kind }] of movable.entries()) {
    const best = (gains[i] ?? 0) > 0 && i !== only ? shut[i] : any[i];
    if (!best || best.items.length === 0 || away.has(name)) continue;
    items.push(...best.items);
    if (kind === "load") laden.push(name);
    if (best.items.some(({ open }) => open)) out.push(name);
  }
  for (const [i, leaf] of own.entries()) {
    const { mass, centre, turned } = leaves[leaf] as Leaf;
    const place = { mass, centre, open: false };
    items.push(itemAt(place, turned(centre, positions[i] ?? 0)));
  }
  return { cost: items.reduce((sum, item) => sum + worth(item), 0), items, laden, out };
}

/** All combinations of positions. */
const everyWay = (counts: readonly number[]): readonly (readonly number[])[] =>
  counts.reduce<readonly (readonly number[])[]>(
    (ways, count) => ways.flatMap((way) => Array.from({ length: count }, (_, i) => [...way, i])),
    [[]],
  );

/**
 * The positions of doors in which they and what is on them cost least. Of many that share loads each is turned in turn while the others
 * stand, from all shut and from all open, until none gets worse.
 */
function worstPositions(
  counts: readonly number[],
  standing: (positions: readonly number[]) => Standing,
): { readonly positions: readonly number[]; readonly is: Standing } {
  const best = (ways: readonly (readonly number[])[]): { positions: readonly number[]; is: Standing } => {
    let found: { positions: readonly number[]; is: Standing } | undefined;
    for (const positions of ways) {
      const is = standing(positions);
      if (!found || is.cost < found.is.cost - ROUNDING) found = { positions, is };
    }
    return found as { positions: readonly number[]; is: Standing };
  };
  if (counts.length <= EVERY_POSITION) return best(everyWay(counts));
  const settled = (start: readonly number[]): readonly number[] => {
    let at = best([start]);
    for (let turned = true; turned; ) {
      turned = false;
      for (const [i, count] of counts.entries()) {
        const next = best([at.positions, ...Array.from({ length: count }, (_, p) => at.positions.with(i, p))]);
        turned ||= next.is.cost < at.is.cost - ROUNDING;
        at = next;
      }
    }
    return at.positions;
  };
  return best([settled(counts.map(() => 0)), settled(counts.map((count) => count - 1))]);
}

/** Loads, doors and things that slide as they make Σ mass · cost least, with cost a linear function of the place. */
export function worstState({ always, leaves, linked, floor }: Weighing, edge: TippingEdge, cost: Cost): TippingState {
  const itemAt = ({ mass, open }: Pick<Place, "mass" | "open">, point: Vec3): Item => {
    return { mass, at: point, inside: edge.inside(point), height: point[2] - floor, open };
  };
  const items: Item[] = [itemAt({ mass: always.mass, open: false }, always.centre)];
  const [laden, out, open]: [string[], string[], string[]] = [[], [], []];
  for (const link of linked) {
    const counts = link.leaves.map((leaf) => leaves[leaf]?.positions ?? 1);
    const { positions, is } = worstPositions(counts, (at) => standingWith(link, leaves, at, itemAt, cost));
    items.push(...is.items);
    laden.push(...is.laden);
    out.push(...is.out);
    for (const [i, leaf] of link.leaves.entries()) if ((positions[i] ?? 0) > 0) open.push(leaves[leaf]?.name ?? "");
  }
  const sum = (of: (item: Item) => number): number => items.reduce((all, item) => all + of(item), 0);
  const mass = sum((item) => item.mass);
  return {
    laden,
    out,
    open,
    mass,
    inside: sum((item) => item.mass * item.inside) / mass,
    height: sum((item) => item.mass * item.height) / mass,
    centre: [
      sum((item) => item.mass * item.at[0]) / mass,
      sum((item) => item.mass * item.at[1]) / mass,
      sum((item) => item.mass * item.at[2]) / mass,
    ],
  };
}

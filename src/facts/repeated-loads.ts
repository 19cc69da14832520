import type { Load } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { defineFact } from "./fact.ts";

/** Two loads of one case that are alike in everything, and a part that bears both. */
export interface RepeatedLoad {
  readonly load: Load;
  readonly again: Load;
  readonly on: Ref;
}

/** Numbers count as the same to this share: copies are moved by reckoning. */
const DIGITS = 9;

/** All that says how a load acts, as text, but for what it acts on. */
function wayOf({ case: name, amount, direction, at, part, face }: Load): string {
  const round = (value: number): number => Number(value.toPrecision(DIGITS)) + 0;
  const say = (_: string, value: unknown): unknown => (typeof value === "number" ? round(value) : value);
  // Directions are unit vectors: what is next to nothing there is nothing.
  const way = direction.map((one) => (Math.abs(one) < 10 ** -DIGITS ? 0 : one));
  return JSON.stringify([name, amount, way, at, part, face], say);
}

/** Loads that stand twice in one case on one part, most often once written and once brought by a copy: both act. */
export const repeatedLoads = defineFact<readonly RepeatedLoad[]>({
  id: "repeated-loads",
  compute(_, frame) {
    const parts = [...frame.bars, ...frame.panels, ...frame.masses];
    const refs = new Map<string, Ref>(parts.map(({ ref }) => [ref.id, ref]));
    const first = new Map<string, Load>();
    const list: RepeatedLoad[] = [];
    for (const load of frame.loads) {
      const way = wayOf(load);
      for (const on of load.on) {
        const key = `${on} ${way}`;
        const [known, part] = [first.get(key), refs.get(on)];
        if (known && part) list.push({ load: known, again: load, on: part });
        else first.set(key, load);
      }
    }
    return list;
  },
});

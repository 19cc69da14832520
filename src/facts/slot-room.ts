import type { Ref } from "../model/ref.ts";
import type { FaceName } from "../model/stock/stock.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { nutEntries, slotKey } from "./nut-entries.ts";
import { slotUse } from "./slot-use.ts";

/** A slot that takes nuts, and how many more of the same would fit in beside them. */
export interface SlotRoom {
  readonly bar: Ref<"bar">;
  readonly face: FaceName;
  readonly slot: number;
  /** Name of the nut there is most of. */
  readonly nut: string;
  readonly nuts: number;
  readonly more: number;
}

/** How many spare nuts every slot in use has room for, between what sits in it already. */
export const slotRoom = defineFact<
  readonly SlotRoom[],
  { bodies: typeof bodies; entries: typeof nutEntries; use: typeof slotUse }
>({
  id: "slot-room",
  needs: { bodies, entries: nutEntries, use: slotUse },
  compute({ bodies: all, entries, use }) {
    const slots = new Map<string, (typeof entries)[number][]>();
    for (const entry of entries) {
      if (entry.comesIn) continue;
      const key = slotKey(entry.bar, entry.face, entry.slot);
      const known = slots.get(key);
      if (known) known.push(entry);
      else slots.set(key, [entry]);
    }
    const list: SlotRoom[] = [];
    for (const nuts of slots.values()) {
      const [first] = nuts;
      const body = first && all.get(first.bar);
      if (!first || !body) continue;
      const { bar, face, slot } = first;
      const inside = use.occupants
        .filter((one) => one.bar === bar && one.face === face && one.slot === slot)
        .sort((a, b) => a.from - b.from);
      let [at, more] = [body.reach[0], 0];
      const fill = (to: number): void => {
        more += Math.max(0, Math.floor((to - at) / first.nut.length + 1e-9));
      };
      for (const { from, to } of inside) {
        fill(from);
        at = Math.max(at, to);
      }
      fill(body.reach[1]);
      list.push({ bar: body.bar.ref, face, slot, nut: first.nut.name, nuts: nuts.length, more });
    }
    return list;
  },
});

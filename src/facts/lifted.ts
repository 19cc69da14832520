import type { Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { buildOrder } from "./build-order.ts";
import { defineFact } from "./fact.ts";
import { boltedOn } from "./group-equipment.ts";
import { gathered, masses, type Weight } from "./mass.ts";
import { placements } from "./placements.ts";
import { standings } from "./standings.ts";

/** Something that is picked up whole and put in. */
export interface Lifted {
  /** The author's group or door, the first bar of a frame found, a bar or a panel. */
  readonly ref: Ref;
  /** Of an assembly, its id; none of a single part. */
  readonly assembly?: string;
  /** In words: "leg-1 with 3 other parts". */
  readonly what: string;
  /** kg, with the connectors and feet that are on it, and the equipment that the author's group names. */
  readonly mass: number;
  /** m, in the finished frame. */
  readonly centre: Vec3;
}

/** Mass and centre of mass of all that is lifted while building: single bars and panels, and every sub-assembly. */
export const lifted = defineFact<
  readonly Lifted[],
  { order: typeof buildOrder; masses: typeof masses; placements: typeof placements; standings: typeof standings }
>({
  id: "lifted",
  needs: { order: buildOrder, masses, placements, standings },
  compute({ order, masses: weights, placements: placed, standings: standing }, frame) {
    const weight = new Map(
      [...weights.own, ...weights.fixed, ...weights.removable].map((one) => [one.ref.id, one] as const),
    );
    // What a group names is bolted on while it lies on the table, and lifted with it; a group of one part is that part.
    const carriers = boltedOn(frame);
    const on = (ids: readonly string[]): readonly string[] => [
      ...new Set([...carriers].flatMap(([thing, carrier]) => (ids.includes(carrier) ? [thing] : []))),
    ];
    const refs = new Map<string, Ref>([...frame.bars, ...frame.panels].map((part) => [part.ref.id, part.ref]));
    const sum = (ids: readonly string[]): { mass: number; centre: Vec3 } =>
      gathered(ids.map((id) => weight.get(id)).filter((one): one is Weight => one !== undefined));
    const list: Lifted[] = [];
    for (const assembly of order.assemblies) {
      if (assembly.sub?.built) continue;
      for (const { part, parts } of assembly.items) {
        const [first = ""] = parts;
        const ref = refs.get(first);
        if (typeof part === "string") {
          if (ref) list.push({ ref, what: part, ...sum([...parts, ...on([part])]) });
          continue;
        }
        const inside = new Set(parts);
        const connectors = placed.connectors.filter((one) => one.holds.every((hold) => inside.has(hold.bar)));
        const stands = standing.all.filter(({ body }) => inside.has(body.bar.ref.id));
        const ids = [
          ...parts,
          ...on([part.id, ...parts]),
          ...connectors.map((one) => one.ref.id),
          ...stands.map(({ stand }) => stand.ref.id),
        ];
        const others = `${parts.length - 1} other part${parts.length === 2 ? "" : "s"}`;
        const what = part.sub && part.sub.from !== "found" ? part.id : `${first} with ${others}`;
        const at = part.sub?.ref ?? ref;
        if (at) list.push({ ref: at, assembly: part.id, what, ...sum(ids) });
      }
    }
    return list;
  },
});

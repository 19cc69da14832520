import { dot, type Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { faceNormal } from "./axes.ts";
import { facingWords } from "./axis-words.ts";
import { bodies } from "./bodies.ts";
import { type Anchored, anchoring } from "./build/anchoring.ts";
import { joinedSets } from "./build/joined-sets.ts";
import { type Balance, balanceOf, blockedUp, raisedShare, staysUpright } from "./build/poise.ts";
import { squares } from "./build/steps.ts";
import { type Assembly, type BuildStep, buildOrder, type Item } from "./build-order.ts";
import { defineFact } from "./fact.ts";
import { hungUp } from "./hung-up.ts";
import { type Lifted, lifted } from "./lifted.ts";
import { gathered, masses } from "./mass.ts";
import { type NutEntry, nutEntries, slotKey } from "./nut-entries.ts";
import { rowScrews, usualScrew } from "./row-screws.ts";
import { screwedParts } from "./screwed-parts.ts";
import { sheets } from "./sheets.ts";
import { offTheFloor, standings } from "./standings.ts";

/** Nuts of one slot, laid in while its bar is still loose. */
export interface SlotNuts {
  readonly bar: string;
  /** Face and number of the slot, with the way it looks in the frame. */
  readonly slot: string;
  readonly nut: string;
  readonly count: number;
  /** Both ends close: what closes the second. Empty where an end stays open. */
  readonly closedBy: readonly string[];
}

/** Equal screws tightened to one torque. */
export interface Tightening {
  readonly screw: string;
  readonly count: number;
  /** N·m; undefined where none is rated: a sheet is pressed on, not clamped. */
  readonly torque: number | undefined;
  readonly lock: "none" | "thread-lock" | "washer";
}

export interface PlannedStep {
  readonly step: BuildStep;
  readonly connectors: readonly { readonly name: string; readonly count: number }[];
  /** Nuts turned in from the face. */
  readonly dropIn: readonly { readonly name: string; readonly count: number }[];
  readonly tightens: readonly Tightening[];
  /** What is screwed on and tightened there and then: sheets, hinges, latches. */
  readonly fixes: readonly Tightening[];
  /** Of the sub-assemblies put in, and of single parts. */
  readonly lifts: readonly Lifted[];
  /** Equipment put on: bolted on the piece or the part, or pushed in where it slides. */
  readonly equipment: readonly (Lifted & { readonly slides: boolean })[];
  /** Of the lowest screw of what goes on, over the floor, m; none where nothing is screwed. */
  readonly lowestScrew: number | undefined;
  /** Panels that the part put in closes into its slot. */
  readonly closesIn: readonly string[];
  /** What falls over unless it is held, of two pieces that nothing joins yet: parts and sub-assemblies by the name they are put in by. */
  readonly falls: readonly Ref[];
  /** Feet screwed on a single part before it goes in. */
  readonly feetFirst: readonly Ref[];
  /** Feet anchored to a wall or a ceiling once what goes on is in its place. */
  readonly anchors: readonly Anchored[];
  /** Until then nothing else holds what goes on: the frame hangs on these alone. */
  readonly hangs: boolean;
  /** How far the first piece is blocked up, so that what is joined to it has room below it, m; 0 where nothing reaches lower. */
  readonly blockedUp: number;
  /** Of all that is there where it is stood up or tipped, kg, and what of it the hands at its top lift. */
  readonly raised: { readonly mass: number; readonly lifted: number } | undefined;
}

/** One piece as it is built: what is laid out first, then its steps. */
export interface PlannedPiece {
  /** Of its assembly; "" for the frame. */
  readonly id: string;
  readonly from: "group" | "door" | "found" | "together" | "frame";
  readonly bars: readonly string[];
  readonly rawEnds: readonly string[];
  readonly nuts: readonly SlotNuts[];
  readonly steps: readonly PlannedStep[];
  /** By how much its diagonals over the outer corners may differ, m; undefined where all its bars run one way. */
  readonly squareWithin: number | undefined;
  readonly parts: readonly string[];
  /** Where it balances as it is lifted; none of the frame. */
  readonly balance: Balance | undefined;
  /** Out of the side the frame is begun on, where it is begun lying. */
  readonly lyingOn: Vec3 | undefined;
  /** It arrives put together: nothing of it is sawn, laid out or tightened. */
  readonly built: boolean;
  /** Screws into its bars that find no slot there, or no nut that fits it: `nuts` is without these. */
  readonly slotless: readonly string[];
  /** Sets of its bars that its own joints hold together, where there are more than one: it is not rigid in itself. Empty of the frame. */
  readonly loose: readonly (readonly string[])[];
  /** Nuts that its joints to other parts want and that do not get into its slots any more. */
  readonly trapped: readonly string[];
}

/** Diagonals may differ by so much of their length: common practice. */
const SQUARE = 1 / 1000;

const counted = (names: readonly string[]): readonly { name: string; count: number }[] => {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].map(([name, count]) => ({ name, count }));
};

/** What an item is put in by: a part, the author's group or door, or the first bar of a frame found. */
const nameOfItem = ({ part, parts }: Item): string | undefined =>
  typeof part === "string" ? part : (part.sub?.ref.id ?? parts[0]);

/** Bars run one way within this cosine: 1°. */
const ONE_WAY = Math.cos(Math.PI / 180);

const runOneWay = ([first, ...others]: readonly Vec3[]): boolean =>
  first !== undefined && others.every((way) => Math.abs(dot(way, first)) > ONE_WAY);

/** Over the two longest of the three sides of the box round some points, m. */
function diagonalOf(points: readonly Vec3[]): number {
  if (points.length === 0) return 0;
  const sizes = ([0, 1, 2] as const).map(
    (i) => Math.max(...points.map((p) => p[i])) - Math.min(...points.map((p) => p[i])),
  );
  const [longest = 0, second = 0] = sizes.sort((a, b) => b - a);
  return Math.hypot(longest, second);
}

/** The order of building as it is worked: what to lay out and lay in for each piece, then step by step what goes on. */
export const buildPlan = defineFact<
  readonly PlannedPiece[],
  {
    order: typeof buildOrder;
    bodies: typeof bodies;
    parts: typeof screwedParts;
    entries: typeof nutEntries;
    lifted: typeof lifted;
    masses: typeof masses;
    sheets: typeof sheets;
    standings: typeof standings;
    hung: typeof hungUp;
  }
>({
  id: "build-plan",
  needs: {
    order: buildOrder,
    bodies,
    parts: screwedParts,
    entries: nutEntries,
    lifted,
    masses,
    sheets,
    standings,
    hung: hungUp,
  },
  compute(
    {
      order,
      bodies: all,
      parts: screwed,
      entries,
      lifted: weights,
      masses: known,
      sheets: laid,
      standings: standing,
      hung,
    },
    frame,
  ) {
    const own = new Map([...known.own, ...known.fixed].map((one) => [one.ref.id, one]));
    const together = (ids: Iterable<string>) => gathered([...ids].flatMap((id) => own.get(id) ?? []));
    const cornersOf = (ids: Iterable<string>) => [...ids].flatMap((id) => all.get(id)?.prism?.vertices ?? []);
    const raisedAt = (step: BuildStep): PlannedStep["raised"] => {
      if (step.what !== "stand" && (step.what !== "feet" || step.lying)) return undefined;
      if (step.what === "feet" && step.places.every(({ id }) => offFloor.has(id))) return undefined;
      const bolted = frame.masses.filter(({ ref }) => (order.placedAt(ref.id) ?? Infinity) <= step.number);
      const there = [...order.presentAt(step.number), ...bolted.map(({ ref }) => ref.id)];
      const { mass, centre } = together(there);
      return { mass, lifted: mass * raisedShare(cornersOf(there), centre) };
    };
    const offFloor = new Set(standing.all.filter(offTheFloor).map(({ stand }) => stand.ref.id));
    const anchoredAt = anchoring(standing.all, order.steps, hung, order.presentAt);
    const falling = (step: BuildStep, items: readonly Item[], first: boolean): readonly Ref[] => {
      if (step.what !== "place" || step.assembly !== "" || step.connectors.length > 0) return [];
      const down: Vec3 | undefined = step.lying ? order.lyingOn : [0, 0, -1];
      return step.places.filter(({ kind }, i) => {
        const parts = items[i]?.parts ?? [];
        // A panel put in later lies on what is there, or in its slots.
        if (parts.length === 0 || (!first && kind === "panel")) return false;
        return !down || !staysUpright(cornersOf(parts), together(parts).centre, down);
      });
    };
    /** Of the frame's first piece, where it has no feet of its own to stand on. */
    const underFirst = (step: BuildStep, items: readonly Item[]): number => {
      const [piece, ...others] = items;
      if (!piece || typeof piece.part === "string" || step.assembly !== "" || hung) return 0;
      const down: Vec3 | undefined = step.lying ? order.lyingOn : [0, 0, -1];
      const own = new Set(piece.parts);
      if (!down || (!step.lying && standing.all.some(({ body }) => own.has(body.bar.ref.id)))) return 0;
      // What goes on once it stands finds room below it then.
      const joining = step.lying ? others.filter(({ lying }) => lying) : others;
      return blockedUp(cornersOf(piece.parts), cornersOf(joining.flatMap(({ parts }) => parts)), down);
    };
    const connectors = new Map(screwed.all.map((one) => [one.ref.id, one]));
    const screws = new Map(
      screwed.all.flatMap((one) => one.screws.map((screw) => [screw.ref.id, { screw, of: one }] as const)),
    );
    const allScrews = screwed.all.flatMap((one) => one.screws);
    const entryOf = new Map(entries.map((entry) => [entry.ref.id, entry]));
    const panels = new Map(frame.panels.map((panel) => [panel.ref.id, panel]));
    const things = new Map(frame.masses.map((thing) => [thing.ref.id, thing]));
    const nutsOf = (bars: ReadonlySet<string>): SlotNuts[] => {
      const slots = new Map<string, NutEntry[]>();
      for (const entry of entries) {
        if (entry.by === "face" || entry.comesIn || entry.trappedBy || !bars.has(entry.bar)) continue;
        const key = `${slotKey(entry.bar, entry.face, entry.slot)} ${entry.nut.name}`;
        slots.set(key, [...(slots.get(key) ?? []), entry]);
      }
      return [...slots.values()].flatMap((nuts) => {
        const [first] = nuts;
        const body = first && all.get(first.bar);
        if (!first || !body) return [];
        const slot = facingWords(`${first.face}${first.slot}`, faceNormal(body.axes, first.face));
        const closedBy = first.closed?.with.map((part) => part.id) ?? [];
        return [{ bar: first.bar, slot, nut: first.nut.name, count: nuts.length, closedBy }];
      });
    };
    const tightenings = (refs: readonly Ref<"screw">[]): Tightening[] => {
      const lines = new Map<string, Tightening>();
      for (const { id } of refs) {
        const found = screws.get(id);
        if (!found) continue;
        const { screw, of } = found;
        const torque = of.sheet ? undefined : (of.choice?.torque ?? screw.screw.torque);
        const lock = of.choice?.lock ?? "none";
        const name = of.usual ? usualScrew(screw.screw.name) : screw.screw.name;
        const key = `${name} ${torque} ${lock}`;
        lines.set(key, { screw: name, count: (lines.get(key)?.count ?? 0) + 1, torque, lock });
      }
      return [...lines.values()];
    };
    /** Screws of the sheets put on that have no place of their own. */
    const unplacedOn = ({ what, places }: BuildStep): readonly Tightening[] => {
      if (what !== "place") return [];
      const on = laid.filter(({ panel }) => places.some((part) => part.id === panel.ref.id));
      const rows = on.flatMap((sheet) => rowScrews(sheet, all, screwed.free)).filter((row) => !row.placed);
      return [...new Set(rows.map(({ screw }) => screw))].map((screw) => {
        const count = rows.reduce((sum, row) => sum + (row.screw === screw ? row.count : 0), 0);
        return { screw, count, torque: undefined, lock: "none" };
      });
    };
    /** Panels that are there, no part of the piece put in, and that a bar of it takes into its slot. */
    const closes = (bar: string, step: BuildStep, piece: readonly string[]): string[] =>
      [...panels.values()].flatMap((panel) => {
        if (panel.held.kind !== "in-slot") return [];
        const edges = panel.held.edges.flatMap((edge) => (edge.kind === "bar" ? [edge.bar] : []));
        const before = (order.placedAt(panel.ref.id) ?? Number.POSITIVE_INFINITY) <= step.number;
        const there = before && order.presentAt(step.number).has(panel.ref.id);
        return there && edges.includes(bar) && !piece.includes(panel.ref.id) ? [panel.ref.id] : [];
      });
    const plannedOf = (step: BuildStep, items: readonly Item[], first: boolean): PlannedStep => {
      const here = items.filter((item) => step.places.some(({ id }) => id === nameOfItem(item)));
      const on = step.connectors.map((one) => connectors.get(one.id)).filter((one) => one !== undefined);
      const turnedHere = on.flatMap((one) => one.screws);
      const heights = turnedHere.map((screw) => screw.drive.point[2] - frame.floor.z);
      const turned = turnedHere.flatMap(({ into }) => {
        const entry = into.kind === "nut" ? entryOf.get(into.ref.id) : undefined;
        return entry?.by === "face" ? [entry.nut.name] : [];
      });
      const placedHere = new Set(step.places.map((part) => part.id));
      const isFixed = ({ id }: Ref<"screw">): boolean => {
        const of = screws.get(id)?.of;
        return step.what === "place" && of !== undefined && !squares(of);
      };
      return {
        step,
        connectors: counted(on.flatMap((one) => one.part?.name ?? [])),
        dropIn: counted(turned),
        tightens: tightenings(step.tightens.filter((one) => !isFixed(one))),
        fixes: [...tightenings(step.tightens.filter(isFixed)), ...unplacedOn(step)],
        lifts: step.what === "place" ? weights.filter((one) => isLifted(one, step, placedHere)) : [],
        equipment: [...step.bolts, ...(step.what === "equipment" ? step.places : [])].flatMap(({ id }) => {
          const thing = things.get(id);
          if (!thing) return [];
          return [
            { ref: thing.ref, what: id, mass: thing.mass, centre: thing.centre, slides: thing.slides !== undefined },
          ];
        }),
        falls: falling(step, here, first),
        feetFirst: step.bolts.filter(({ kind }) => kind === "stand"),
        anchors: anchoredAt.get(step.number) ?? [],
        hangs: hung,
        blockedUp: first ? underFirst(step, items) : 0,
        raised: raisedAt(step),
        lowestScrew: heights.length > 0 ? Math.min(...heights) : undefined,
        closesIn: [...new Set(here.flatMap(({ parts }) => parts.flatMap((part) => closes(part, step, parts))))],
      };
    };
    /** A sub-assembly found goes by the name of its first bar, which is a part of its own in its own steps. */
    const isLifted = (one: Lifted, step: BuildStep, here: ReadonlySet<string>): boolean =>
      here.has(one.ref.id) && (order.placedAt(one.ref.id) === step.number) === (one.assembly === undefined);
    const looseSets = ({ id, sub }: Assembly, parts: readonly string[]): PlannedPiece["loose"] => {
      if (id === "" || sub?.built) return [];
      const sets = joinedSets(
        parts.filter((part) => all.has(part)),
        parts,
        screwed.all,
      );
      return sets.length > 1 ? sets : [];
    };
    return order.assemblies.map((assembly): PlannedPiece => {
      const steps = order.steps.filter((step) => step.assembly === assembly.id);
      const single = assembly.items.flatMap(({ part }) => (typeof part === "string" ? [part] : []));
      const whole = weights.find((one) => one.assembly === assembly.id);
      const bars = single.filter((part) => all.has(part));
      const parts = assembly.items.flatMap((item) => item.parts);
      const ends = bars.flatMap((bar) => {
        const body = all.get(bar);
        return body ? [body.bar.ends.from, body.bar.ends.to] : [];
      });
      return {
        id: assembly.id,
        from: assembly.id === "" ? "frame" : (assembly.sub?.from ?? "together"),
        bars,
        rawEnds: ends.filter((end) => end.edge === "raw").map((end) => end.ref.id),
        nuts: nutsOf(new Set(bars)),
        steps: steps.map((step, i) => plannedOf(step, assembly.items, i === 0)),
        squareWithin: runOneWay(parts.map((part) => all.get(part)?.axes.x).filter((way) => way !== undefined))
          ? undefined
          : SQUARE * diagonalOf(parts.flatMap((part) => all.get(part)?.prism?.vertices ?? [])),
        parts,
        balance: whole && balanceOf(cornersOf(parts), whole.centre),
        lyingOn: assembly.id === "" ? order.lyingOn : undefined,
        built: assembly.sub?.built ?? false,
        loose: looseSets(assembly, parts),
        slotless: allScrews.flatMap(({ ref, into }) =>
          into.kind === "nut" && bars.includes(into.landing.bar) && !entryOf.has(into.ref.id) ? [ref.id] : [],
        ),
        trapped: entries.filter((one) => one.trappedBy && bars.includes(one.bar)).map((one) => one.ref.id),
      };
    });
  },
});

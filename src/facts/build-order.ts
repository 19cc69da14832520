import type { Frame } from "../model/frame.ts";
import { type Ref, ref } from "../model/ref.ts";
import type { Built, Ground } from "./build/assemble.ts";
import { byPlace } from "./build/by-place.ts";
import { deadlockOf } from "./build/deadlock.ts";
import { lyingSide } from "./build/lying-side.ts";
import type { Assembly, BuildOrder } from "./build/plan.ts";
import { reachFirst } from "./build/reach-first.ts";
import { scattered } from "./build/scattered.ts";
import { isHeld, type Loose, StepMaker } from "./build/steps.ts";
import { assembleTied, type Tied } from "./build/tied-together.ts";
import { comesBuilt, groupParts } from "./comes-built.ts";
import { connections } from "./connections.ts";
import { ends } from "./ends.ts";
import { defineFact } from "./fact.ts";
import { boltedOn } from "./group-equipment.ts";
import { hindrances } from "./hindrances.ts";
import { hungUp } from "./hung-up.ts";
import { gathered, masses } from "./mass.ts";
import { screwCovers } from "./screw-covers.ts";
import { screwedParts } from "./screwed-parts.ts";
import { standings } from "./standings.ts";
import { LIFTABLE, type SubAssembly, subAssemblies } from "./sub-assemblies.ts";
import { waysOut } from "./ways-out.ts";

export type { Assembly, BuildOrder, BuildStep, Deadlock, Item } from "./build/plan.ts";

/** Bars, then panels in slots as late as they may, then sheets that lie on the finished frame. */
const STAGE = { bar: 1, "in-slot": 2, "on-face": 3, laid: 3 } as const;

function stagesOf(frame: Frame): ReadonlyMap<string, number> {
  return new Map<string, number>([
    ...frame.bars.map((bar) => [bar.ref.id, STAGE.bar] as const),
    ...frame.panels.map((panel) => [panel.ref.id, STAGE[panel.held.kind]] as const),
  ]);
}

/** A piece that arrives put together: nobody has to find an order for it. */
function asItComes(sub: SubAssembly): Built {
  const items = sub.parts.map((part) => ({ part, path: undefined, lying: false, parts: [part] }));
  return { assembly: { id: sub.id, sub, items }, stuck: [] };
}

/** Builds every sub-assembly and then the frame; what cannot be built, or put in, as one is built from its parts instead. */
function plan(
  parts: readonly string[],
  found: readonly SubAssembly[],
  ground: Ground,
  tied: Tied,
): { readonly built: Built; readonly undone: readonly SubAssembly[] } {
  const undone: SubAssembly[] = [];
  let subs = found;
  const drop = (ids: ReadonlySet<string>): void => {
    undone.push(...subs.filter((sub) => ids.has(sub.id)));
    subs = subs.filter((sub) => !ids.has(sub.id));
  };
  for (;;) {
    const made = subs.map((sub) => (sub.built ? asItComes(sub) : assembleTied(sub.id, sub, sub.parts, ground, tied)));
    const bad = new Set(made.filter(({ stuck }) => stuck.length > 0).map(({ assembly }) => assembly.id));
    if (bad.size > 0) {
      drop(bad);
      continue;
    }
    const inside = new Set(subs.flatMap((sub) => sub.parts));
    const pieces: (string | Assembly)[] = made.map(({ assembly }) => assembly);
    pieces.push(...parts.filter((part) => !inside.has(part)));
    const built = assembleTied("", undefined, pieces, ground, tied);
    const caught = new Set(built.stuck.filter((unit) => unit.parts.length > 1).map((unit) => unit.id));
    if (caught.size === 0) return { built, undone };
    drop(caught);
  }
}

/**
 * An order in which the frame can be built: sub-assemblies first, each step a part that can be moved straight into place with
 * what is there already, with its screws still in reach. Found by taking the frame apart (see `takeApart`).
 */
export const buildOrder = defineFact<
  BuildOrder,
  {
    hindrances: typeof hindrances;
    room: typeof waysOut;
    subs: typeof subAssemblies;
    connections: typeof connections;
    parts: typeof screwedParts;
    covers: typeof screwCovers;
    standings: typeof standings;
    ends: typeof ends;
    masses: typeof masses;
    came: typeof comesBuilt;
    hung: typeof hungUp;
  }
>({
  id: "build-order",
  needs: {
    hindrances,
    room: waysOut,
    subs: subAssemblies,
    connections,
    parts: screwedParts,
    covers: screwCovers,
    standings,
    ends,
    masses,
    came: comesBuilt,
    hung: hungUp,
  },
  compute(
    {
      hindrances: known,
      room,
      subs,
      connections: held,
      parts: screwed,
      covers,
      standings: standing,
      ends: states,
      masses: weights,
      came,
      hung,
    },
    frame,
  ) {
    const stages = stagesOf(frame);
    const parts = [...stages.keys()];
    const refs = new Map<string, Ref>([...frame.bars, ...frame.panels].map((part) => [part.ref.id, part.ref]));
    const refOf = (part: string): Ref => refs.get(part) ?? ref("frame", part);
    const weight = new Map(weights.own.map((one) => [one.ref.id, one]));
    const together = (ids: readonly string[]) =>
      gathered(ids.map((id) => weight.get(id)).filter((one) => one !== undefined));
    const places = parts.map((id) => ({ id, at: together([id]).centre }));
    const order = new Map(byPlace(places).map((part, i) => [part, i]));
    const links = held.all.flatMap(({ holds }) =>
      holds.flatMap((a, i) => holds.slice(i + 1).map((b) => [a.bar, b.bar] as const)),
    );
    for (const panel of frame.panels) {
      const bars =
        panel.held.kind === "in-slot"
          ? panel.held.edges.flatMap((edge) => (edge.kind === "bar" ? [edge.bar] : []))
          : panel.held.bars;
      links.push(...bars.map((bar) => [panel.ref.id, bar] as const));
    }
    // Hinges and screws of sheets join as well.
    const joined = [
      ...links,
      ...screwed.all.flatMap(({ holds, sheet }) => {
        const ids = [...holds.map((hold) => hold.bar), ...(sheet ? [sheet.id] : [])];
        return ids.flatMap((a, i) => ids.slice(i + 1).map((b) => [a, b] as const));
      }),
    ];
    const onFeet = new Set(standing.all.map(({ body }) => body.bar.ref.id));
    const late = (part: string): boolean => (stages.get(part) ?? 0) >= STAGE.laid;
    const ground: Ground = {
      hindrances: known.all,
      room,
      links,
      stage: (part) => stages.get(part) ?? 0,
      late,
      height: (ids) => together(ids).centre[2],
      mass: (ids) => together(ids).mass,
      stands: (part) => onFeet.has(part),
      order: (part) => order.get(part) ?? 0,
    };
    const inOrder = (ids: readonly string[]) => [...ids].sort((a, b) => ground.order(a) - ground.order(b));
    const tied: Tied = { pairs: frame.ties.map(({ bars }) => bars), liftable: LIFTABLE };
    const carriers = boltedOn(frame);
    const capped = states.filter((s) => s.capped && (s.end.cap.kind === "part" || s.covers.length === 0));
    const loose: Loose = {
      connectors: screwed.all,
      stands: standing.all,
      hung,
      // A standard cap goes on a bare end only.
      caps: capped,
      equipment: frame.masses
        .filter((mass) => mass.fixed)
        .map(({ ref: thing }) => ({ ref: thing, on: carriers.get(thing.id) })),
      arrive: (piece) => [
        ...frame.groups.filter((group) => group.ref.id === piece).flatMap((group) => group.parts),
        ...capped.filter(({ end }) => came.pieceOf(end.bar)?.ref.id === piece).map(({ ref: end }) => end.id),
      ],
      refOf,
      covers: covers.of,
      late,
    };
    const { built, undone, made } = reachFirst((kept) => {
      const planned = plan(parts, subs, { ...ground, hindrances: [...known.all, ...kept] }, tied);
      const steps = new StepMaker(loose).run(planned.built.assembly);
      const faults = planned.built.stuck.length + planned.undone.length;
      return { ...planned, made: steps, unreached: steps.unreached, faults };
    });
    const at = new Map(made.placed);
    for (const connector of screwed.all) {
      const step = made.placed.get(connector.ref.id);
      if (step === undefined) continue;
      for (const screw of connector.screws) {
        at.set(screw.ref.id, step);
        if (screw.into.kind !== "nut") continue;
        // End-load nuts lie in their slot from when the bar is laid out; drop-in nuts come with the screw.
        const early = screw.into.nut?.kind === "end-load" ? made.placed.get(screw.into.landing.bar) : undefined;
        at.set(screw.into.ref.id, early ?? step);
      }
    }
    return {
      steps: made.steps,
      lyingOn: lyingSide(built.assembly.items, room.ways, room.reach),
      assemblies: made.assemblies,
      deadlock:
        built.stuck.length > 0
          ? deadlockOf(inOrder(built.stuck.flatMap((unit) => unit.parts)), known, refOf)
          : undefined,
      undone: undone.filter((sub) => sub.ref.kind === "group").map(({ ref: group, built }) => ({ group, built })),
      scattered: frame.groups.flatMap((group) => {
        const apart = scattered(groupParts(frame, group), joined);
        return apart.length > 0 ? [{ group: group.ref, apart: apart.map(refOf) }] : [];
      }),
      placedAt: (id) => at.get(id),
      tightenedAt: (screw) => made.tightened.get(screw),
      presentAt: (number) => {
        const there = made.there[number - 1] ?? new Set<string>();
        const all = new Set(there);
        const before = (id: string): boolean => (made.placed.get(id) ?? Infinity) <= number;
        for (const part of screwed.all) if (before(part.ref.id) && isHeld(part, there)) all.add(part.ref.id);
        for (const { stand, body } of standing.all)
          if (before(stand.ref.id) && there.has(body.bar.ref.id)) all.add(stand.ref.id);
        return all;
      },
    };
  },
});

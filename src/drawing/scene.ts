import { type Body, bodies } from "../facts/bodies.ts";
import { clashes } from "../facts/clashes.ts";
import { ends } from "../facts/ends.ts";
import { factOf } from "../facts/fact.ts";
import { placements } from "../facts/placements.ts";
import { screwedParts } from "../facts/screwed-parts.ts";
import { sheets } from "../facts/sheets.ts";
import { slotPanels } from "../facts/slot-panels.ts";
import { standings } from "../facts/standings.ts";
import type { Door, Frame, Triple } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { MANY_BARS } from "./many-bars.ts";
import { barSolid } from "./solids/bar-solid.ts";
import { capSolid } from "./solids/cap-solid.ts";
import { connectorSolids, headSolids } from "./solids/connector-solids.ts";
import { type Hung, hingeSolids } from "./solids/hinge-solids.ts";
import { laidSolid, slottedSolid } from "./solids/panel-solid.ts";
import { type Solid, skins } from "./solids/solid.ts";
import { standSolids } from "./solids/stand-solids.ts";

/** A frame as it is drawn, whatever the view. */
export interface Scene {
  readonly solids: readonly Solid[];
  /** Ids of parts that run into each other: no order of painting is right for them. */
  readonly clashing: ReadonlySet<string>;
}

/** Pivots between bars, and hinges and latches of doors. */
function hungParts({ pivots, doors }: Frame, all: ReadonlyMap<string, Body>): readonly Hung[] {
  const hung = (
    of: Ref,
    axis: Triple,
    { part, bars: [a, b], at }: Door["hinges"][number],
    leaf: readonly string[] = [],
  ): readonly Hung[] => {
    const [first, second] = [all.get(a), all.get(b)];
    const turns = [a, b].find((bar) => leaf.includes(bar));
    return first && second
      ? [{ of, part, at, axis, bars: [first, second], ...(turns === undefined ? {} : { turns }) }]
      : [];
  };
  return [
    ...pivots.flatMap((pivot) => hung(pivot.ref, pivot.axis, pivot)),
    ...doors.flatMap(({ ref, axis, bars, hinges, latch }) =>
      [...hinges, ...(latch ? [latch] : [])].flatMap((one) => hung(ref, axis, one, bars)),
    ),
  ];
}

/** Everything of a frame that has a shape: bars as cut, connectors and screw heads, panels, hinges, feet and casters. */
export function sceneOf(frame: Frame): Scene {
  const all = factOf(bodies, frame);
  const solids: Solid[] = [];
  for (const body of all.values()) {
    const solid = barSolid(body);
    if (solid) solids.push(solid);
  }
  for (const state of factOf(ends, frame)) {
    const body = all.get(state.bar.id);
    const cap = body && capSolid(body, state, frame.stock);
    if (cap) solids.push(cap);
  }
  for (const placed of factOf(placements, frame).connectors) solids.push(...connectorSolids(placed));
  // Heads of ties lie inside their bars.
  for (const free of factOf(screwedParts, frame).free)
    if (free.part?.kind !== "side-tie") solids.push(...headSolids(free));
  for (const sheet of factOf(sheets, frame)) solids.push(laidSolid(sheet));
  for (const slotted of factOf(slotPanels, frame).all) {
    const solid = slottedSolid(slotted);
    if (solid) solids.push(solid);
  }
  for (const hung of hungParts(frame, all)) solids.push(...hingeSolids(hung));
  for (const standing of factOf(standings, frame).all) solids.push(...standSolids(standing, frame.floor.z));
  return { solids, clashing: new Set(factOf(clashes, frame).flatMap(({ a, b }) => [a.id, b.id])) };
}

/** Kinds of parts that are small beside bars. */
export const SMALL: ReadonlySet<Solid["kind"]> = new Set(["connector", "screw", "cap"]);

/** The scene with nothing but the envelopes of its parts: for pictures in which they only stand behind what matters. */
export const plainScene = (scene: Scene): Scene => ({
  ...scene,
  solids: scene.solids.map((solid) => ({ ...solid, surfaces: skins(solid.prism) })),
});

/** The scene with nothing but its large parts, and their envelopes. */
export const coarseScene = (scene: Scene): Scene =>
  plainScene({ ...scene, solids: scene.solids.filter(({ kind }) => !SMALL.has(kind)) });

/** The scene as it is drawn as a whole: a large frame without connectors, screws and caps, and without the slots of its bars. */
export function wholeScene(scene: Scene): Scene {
  const bars = scene.solids.filter(({ kind }) => kind === "bar").length;
  if (bars <= MANY_BARS) return scene;
  return coarseScene(scene);
}

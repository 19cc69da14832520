import { bodies } from "../facts/bodies.ts";
import { clashes } from "../facts/clashes.ts";
import { ends } from "../facts/ends.ts";
import { factOf } from "../facts/fact.ts";
import { placements } from "../facts/placements.ts";
import { sheets } from "../facts/sheets.ts";
import { standings } from "../facts/standings.ts";
import type { Frame } from "../model/frame.ts";
import { barSolid } from "./solids/bar-solid.ts";
import { capSolid } from "./solids/cap-solid.ts";
import { connectorSolids } from "./solids/connector-solids.ts";
import { laidSolid, slottedSolid } from "./solids/panel-solid.ts";
import type { Solid } from "./solids/solid.ts";
import { standSolids } from "./solids/stand-solids.ts";

/** A frame as it is drawn, whatever the view. */
export interface Scene {
  readonly solids: readonly Solid[];
  /** Ids of parts that run into each other: no order of painting is right for them. */
  readonly clashing: ReadonlySet<string>;
}

/** Everything of a frame that has a shape: bars as cut, connectors and screw heads, panels, feet and casters. */
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
  for (const sheet of factOf(sheets, frame)) solids.push(laidSolid(sheet));
  for (const panel of frame.panels) {
    if (panel.held.kind !== "in-slot") continue;
    const held = panel.held.edges.flatMap((edge) => (edge.kind === "bar" ? (all.get(edge.bar) ?? []) : []));
    const solid = slottedSolid(panel, held);
    if (solid) solids.push(solid);
  }
  for (const standing of factOf(standings, frame).all) solids.push(...standSolids(standing, frame.floor.z));
  return { solids, clashing: new Set(factOf(clashes, frame).flatMap(({ a, b }) => [a.id, b.id])) };
}

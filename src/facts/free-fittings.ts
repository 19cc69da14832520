import type { Frame } from "../model/frame.ts";
import { nutFor } from "../model/stock/nut-for.ts";
import type { Connector } from "../model/stock/stock.ts";
import type { Body } from "./bodies.ts";
import type { ComesBuilt } from "./comes-built.ts";
import type { ScrewedPart } from "./placed.ts";
import { rowScrews } from "./row-screws.ts";
import type { LaidSheet } from "./sheets.ts";

/** A part that no joint holds: of a tie, a pivot, a door, or the screws of a panel. */
export interface FreeFitting {
  readonly kind: "connector" | "screw" | "nut";
  readonly name: string;
  readonly count: number;
  /** Of one, kg. */
  readonly mass?: number;
}

function* screwed(frame: Frame, screwName: string, slotSize: string, count: number): Iterable<FreeFitting> {
  yield { kind: "screw", name: screwName, count };
  const thread = frame.stock.screws.get(screwName)?.thread;
  const nut = thread === undefined ? undefined : nutFor(frame.stock, slotSize, thread, frame.screwing.nut);
  if (nut) yield { kind: "nut", name: nut.name, count };
}

/** A connector with a screw and a nut in each of its holes; one that weighs nothing is its screw and nut alone. */
function* whole(frame: Frame, part: Connector): Iterable<FreeFitting> {
  if (part.mass > 0) yield { kind: "connector", name: part.name, count: 1, mass: part.mass };
  if (part.kind === "side-tie") yield* screwed(frame, part.screw, part.slotSize, 1);
  else if (part.kind === "pivot" || part.kind === "hinge")
    yield* screwed(frame, part.screw, part.slotSize, part.holes.length);
}

/**
 * Parts of ties, pivots and doors, and the screws of panels on faces, but for those inside a piece that comes built; `placed` are those that
 * have a place.
 */
export function* freeFittings(
  frame: Frame,
  laid: readonly LaidSheet[],
  bodies: ReadonlyMap<string, Body>,
  placed: readonly ScrewedPart[],
  came: ComesBuilt,
): Iterable<FreeFitting> {
  const here = ({ bars }: { readonly bars: readonly string[] }): boolean => came.holding(bars) === undefined;
  for (const tie of frame.ties.filter(here)) for (const _ of tie.at) yield* whole(frame, tie.part);
  for (const { part } of frame.pivots.filter(here)) yield* whole(frame, part);
  for (const { hinges, latch } of frame.doors)
    for (const { part } of [...hinges, ...(latch ? [latch] : [])].filter(here)) yield* whole(frame, part);
  for (const sheet of laid) {
    for (const { panel, bar, screw, nut, count } of rowScrews(sheet, bodies, placed)) {
      if (!here({ bars: [panel, bar] })) continue;
      yield { kind: "screw", name: screw, count };
      if (nut !== undefined) yield { kind: "nut", name: nut, count };
    }
  }
}

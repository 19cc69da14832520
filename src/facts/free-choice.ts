import type { Frame, Lock, NutKind } from "../model/frame.ts";
import { ratedTorque } from "../model/stock/rated-torque.ts";
import type { Screw } from "../model/stock/stock.ts";
import type { Body } from "./bodies.ts";

/** Nut, lock and torque (N·m) of a screw the file says nothing of by itself: its defaults; a rated torque is the least its bars take. */
export function freeChoice(
  { screwing: { nut, lock, torque } }: Frame,
  screw: Screw,
  held: readonly Body[],
): { readonly nut: NutKind; readonly lock: Lock; readonly torque: number } {
  const rated = Math.min(...held.map(({ bar }) => ratedTorque(screw, bar.profile)));
  return { nut, lock, torque: torque === "rated" ? rated : torque };
}

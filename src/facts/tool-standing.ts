import type { BuildOrder } from "./build-order.ts";
import type { Obstacle } from "./obstacles.ts";
import type { ScrewedPart } from "./placed.ts";

/** When a thing is in place, seen from a screw about to be tightened. */
export type Standing = "there" | "beside" | "later";

/** A screw and the step of building it is looked at; a step is undefined where the order of building does not reach the screw. */
export interface Moment {
  readonly connector: ScrewedPart;
  readonly step: number | undefined;
}

/**
 * Tells whether an obstacle stands already when a screw is tightened, is put in at that same step, or later. Without a step a screw is
 * taken with the bars its connector holds and the other connectors of its joint.
 */
export function standingOf(order: BuildOrder): (at: Moment, thing: Obstacle) => Standing {
  const present = new Map<number, ReadonlySet<string>>();
  const thereAt = (step: number): ReadonlySet<string> => {
    let known = present.get(step);
    if (!known) {
      known = order.presentAt(step);
      present.set(step, known);
    }
    return known;
  };
  return ({ connector, step }, { of, part, joint }) => {
    if (part.id === connector.ref.id) return "there";
    if (of.kind === "bar" && connector.holds.some((hold) => hold.bar === of.id)) return "there";
    if (connector.sheet?.id === of.id) return "there";
    if (step === undefined) return joint?.id === connector.joint.id ? "beside" : "later";
    if (!thereAt(step).has(part.id)) return "later";
    return part.kind === "connector" && order.placedAt(part.id) === step ? "beside" : "there";
  };
}

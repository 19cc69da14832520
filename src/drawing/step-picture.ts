import { buildOrder } from "../facts/build-order.ts";
import { factOf } from "../facts/fact.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { type Look, lineDrawing } from "./line-drawing.ts";
import { sceneOf } from "./scene.ts";
import type { Solid } from "./solids/solid.ts";
import { views } from "./view.ts";

/** Draws the piece that is worked on after some steps of one piece: what they put in is brought out. */
export type StepPicture = (steps: { readonly first: number; readonly last: number }, title: string) => string;

/** Pictures of the steps of building, all to one scale, [picture units]. */
export function stepPictures(frame: Frame, size: Vec2): StepPicture {
  const scene = sceneOf(frame);
  const order = factOf(buildOrder, frame);
  const bars = new Set(frame.bars.map((bar) => bar.ref.id));
  return ({ first, last }, title) => {
    const there = order.presentAt(last);
    const own = order.steps[first - 1]?.assembly;
    const before = order.steps.findLast((step) => step.number < first && step.assembly === own);
    const known = before ? order.presentAt(before.number) : new Set<string>();
    // Screw heads and caps are no parts of a piece of their own: they are there with what carries them.
    const look = ({ kind, of, with: carriers }: Solid): Look => {
      const small = kind === "screw" || kind === "cap";
      const carried = (parts: ReadonlySet<string>): boolean => carriers.every((id) => !bars.has(id) || parts.has(id));
      if (!carried(there) || !(small ? (order.placedAt(of.id) ?? Number.POSITIVE_INFINITY) <= last : there.has(of.id)))
        return "hidden";
      return (small ? carried(known) : known.has(of.id)) ? "plain" : "marked";
    };
    return lineDrawing(scene, { view: views.isometric, size, title, look });
  };
}

import { buildOrder } from "../facts/build-order.ts";
import { factOf } from "../facts/fact.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { type Look, lineDrawing } from "./line-drawing.ts";
import { sceneOf } from "./scene.ts";
import { massSolid } from "./solids/mass-solid.ts";
import type { Solid } from "./solids/solid.ts";
import { views } from "./view.ts";

/** Draws the piece that is worked on after some steps of one piece: what they put in is brought out. */
export type StepPicture = (steps: { readonly first: number; readonly last: number }, title: string) => string;

/** Screw heads, caps and equipment are no parts of a piece of their own: they are there with what carries them, once put on. */
const CARRIED: ReadonlySet<Solid["kind"]> = new Set(["screw", "cap", "mass"]);

/** Pictures of the steps of building, all to one scale, [picture units]; equipment that is bolted on as its box. */
export function stepPictures(frame: Frame, size: Vec2): StepPicture {
  const parts = sceneOf(frame);
  const equipment = frame.masses.filter(({ fixed }) => fixed).flatMap((mass) => massSolid(mass) ?? []);
  const scene = { ...parts, solids: [...parts.solids, ...equipment] };
  const order = factOf(buildOrder, frame);
  const carrying = new Set([...frame.bars, ...frame.panels].map((part) => part.ref.id));
  return ({ first, last }, title) => {
    const there = order.presentAt(last);
    const own = order.steps[first - 1]?.assembly;
    const before = order.steps.findLast((step) => step.number < first && step.assembly === own);
    const known = before ? order.presentAt(before.number) : new Set<string>();
    const look = ({ kind, of, with: carriers }: Solid): Look => {
      const carried = (here: ReadonlySet<string>): boolean => carriers.every((id) => !carrying.has(id) || here.has(id));
      if (CARRIED.has(kind)) {
        const at = order.placedAt(of.id) ?? Number.POSITIVE_INFINITY;
        if (at > last || !carried(there)) return "hidden";
        return at >= first || !carried(known) ? "marked" : "plain";
      }
      // A panel stands in its slots before the last of its bars is put in.
      if (!there.has(of.id) || !(kind === "panel" || carried(there))) return "hidden";
      return known.has(of.id) ? "plain" : "marked";
    };
    return lineDrawing(scene, { view: views.isometric, size, title, look });
  };
}

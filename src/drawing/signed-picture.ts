import { boundsOf } from "../geometry/bounds.ts";
import { distance, midpoint, type Vec2 } from "../geometry/vector.ts";
import { type Look, lineDrawing } from "./line-drawing.ts";
import type { Mark } from "./marks.ts";
import { inPicture } from "./round-about.ts";
import { plainScene, type Scene, SMALL } from "./scene.ts";
import type { Symbols } from "./symbols.ts";
import { views } from "./view.ts";

const SIZE: Vec2 = [420, 340];
/** Room round parts that fill the picture, as a share of their size. */
const ROOM = 0.5;

/** What is brought out and written on a frame that is drawn as a whole. */
export interface Signed {
  readonly symbols?: Symbols;
  readonly marks?: readonly Mark[];
  /** Parts brought out, by id. */
  readonly named?: ReadonlySet<string>;
  /** Parts that fill the picture, by id; all where absent. */
  readonly round?: readonly string[];
  readonly title: string;
}

/** The frame as a whole, all of it held back but what is named, with signs over it. */
export function signedPicture(scene: Scene, { symbols, marks = [], named, round = [], title }: Signed): string {
  const look = (id: string): Look => (named?.has(id) ? "marked" : "faint");
  const within = scene.solids.filter(({ of }) => round.includes(of.id)).flatMap(({ prism }) => prism.vertices);
  const { min, max } = boundsOf(within.length > 0 ? within : [[0, 0, 0]]);
  const focus = within.length > 0 ? { at: midpoint(min, max), radius: ROOM * distance(min, max) } : undefined;
  // What lies beside the picture is not drawn.
  const solids = focus ? scene.solids.filter((solid) => inPicture(solid, focus)) : scene.solids;
  return lineDrawing(plainScene({ ...scene, solids }), {
    view: views.isometric,
    size: SIZE,
    finest: 2,
    title,
    // What is small and not named would be specks.
    look: ({ kind, of }) => (SMALL.has(kind) && !named?.has(of.id) ? "hidden" : look(of.id)),
    marks,
    ...(focus ? { focus } : {}),
    ...(symbols ? { symbols } : {}),
  });
}

import { boundsOf } from "../geometry/bounds.ts";
import { distance, midpoint, normalise, type Vec2, type Vec3 } from "../geometry/vector.ts";
import { differences } from "./differences.ts";
import { bestCorner } from "./joint-picture.ts";
import { type Look, lineDrawing, type Picture } from "./line-drawing.ts";
import type { FatedBar } from "./overlay.ts";
import { roundAbout } from "./round-about.ts";
import type { Scene } from "./scene.ts";
import { type Solid, skins } from "./solids/solid.ts";
import { viewFrom, views } from "./view.ts";

const SIZE: Vec2 = [300, 240];
/** Room round what changes, as a share of its size, and the least of it, m. */
const ROOM = 0.9;
const LEAST = 0.08;

/** A change to a frame as two pictures from one place, what changes brought out. */
export interface CurePictures {
  readonly before: string;
  readonly after: string;
}

/** Pieces that change on more than one joint further apart than this are shown on one of them, m. */
const APART = 0.3;
/** What changes over more than this is seen on the whole frame, m. */
const WIDE = 0.4;
/** Corners within this are where they were, m. */
const STILL = 1e-5;

interface Change {
  readonly old: ReadonlySet<Solid>;
  readonly now: ReadonlySet<Solid>;
  /** Corners of what is no longer, or not yet, there. */
  readonly points: readonly Vec3[];
}

const extent = (points: readonly Vec3[]): number => {
  const { min, max } = boundsOf(points);
  return distance(min, max);
};

/** How fine the outline of a bar's section is: another one is another section. */
const outline = (solid: Solid | undefined): number =>
  (solid?.surfaces ?? []).reduce((sum, { kind, rings }) => sum + (kind === "sawn" ? rings.flat().length : 0), 0);

/** Corners of each of two bars that the other has not; all of them where the section is another one. */
function moved(a: Solid | undefined, b: Solid | undefined): readonly Vec3[] {
  const [one, other] = [a?.prism.vertices ?? [], b?.prism.vertices ?? []];
  if (outline(a) !== outline(b)) return [...one, ...other];
  const fresh = (own: readonly Vec3[], known: readonly Vec3[]): readonly Vec3[] =>
    own.filter((point) => !known.some((there) => distance(there, point) < STILL));
  return [...fresh(one, other), ...fresh(other, one)];
}

function changeOf(before: Scene, after: Scene, bars: readonly FatedBar[], near: string): Change {
  const { gone, fresh } = differences(before, after);
  const barIn = ({ solids }: Scene, bar: string): Solid | undefined =>
    solids.find(({ kind, of }) => kind === "bar" && of.id === bar);
  const [old, now] = [new Set(gone), new Set(fresh)];
  const points: Vec3[] = [];
  for (const { bar } of bars) {
    const [was, is] = [barIn(before, bar), barIn(after, bar)];
    const own = moved(was, is);
    if (own.length === 0) continue;
    points.push(...own);
    if (was) old.add(was);
    if (is) now.add(is);
  }
  const pieces = [...gone, ...fresh];
  const corners = (solids: readonly Solid[]): readonly Vec3[] => solids.flatMap(({ prism }) => prism.vertices);
  const all = corners(pieces);
  // The first that a piece belongs to is its joint.
  const joint = (pieces.find((piece) => piece.with.includes(near)) ?? pieces[0])?.with[0];
  const here = pieces.filter((piece) => joint !== undefined && piece.with.includes(joint));
  const spread = points.length === 0 && all.length > 0 && extent(all) > APART && here.length > 0;
  // What goes with a bar that moves needs no room of its own.
  if (points.length === 0) points.push(...(spread ? corners(here) : all));
  return { old, now, points };
}

/** From where a place is seen from outside and above. */
export function cornerFor(changed: readonly Solid[], at: Vec3, middle: Vec3): Vec3 {
  if (changed.some(({ kind }) => kind === "screw")) return bestCorner(changed);
  return normalise([at[0] < middle[0] ? -1 : 1, at[1] > middle[1] ? 1 : -1, 1]);
}

/** Undefined where the change is not seen: another screw in its hole, a torque. `near` is the joint or part it is about. */
export function curePictures(
  before: Scene,
  after: Scene,
  bars: readonly FatedBar[],
  near: string,
  title: string,
): CurePictures | undefined {
  const { old, now, points } = changeOf(before, after, bars, near);
  const changed = [...old, ...now];
  if (points.length === 0) return undefined;
  const { min, max } = boundsOf(points);
  const at = midpoint(min, max);
  const whole = distance(min, max) > WIDE;
  const radius = Math.max(ROOM * distance(min, max), LEAST);
  const all = boundsOf(before.solids.flatMap(({ prism }) => prism.vertices));
  // From near by only the bars that carry what changes, and what is on their joints, so that nothing stands before it.
  const own = new Set(changed.flatMap(({ of, with: held }) => [of.id, ...held]));
  const carriers = new Set(
    [...before.solids, ...after.solids].flatMap(({ kind, with: held }) =>
      kind !== "panel" && held.some((id) => own.has(id)) ? held : [],
    ),
  );
  const frame: Omit<Picture, "title" | "look"> = whole
    ? { view: views.isometric, size: SIZE }
    : {
        view: viewFrom("near", cornerFor(changed, at, midpoint(all.min, all.max)), [0, 0, 1]),
        size: SIZE,
        focus: { at, radius },
      };
  const drawn = (scene: Scene, marked: ReadonlySet<Solid>, word: string): string => {
    const shown = (solid: Solid): boolean =>
      whole ||
      marked.has(solid) ||
      (solid.kind === "bar" ? carriers.has(solid.of.id) : solid.with.every((id) => carriers.has(id)));
    const looks = new Map<Solid, Look>();
    for (const solid of scene.solids.filter(shown)) {
      const small = solid.kind === "screw" || solid.kind === "cap" || solid.kind === "connector";
      const drawnAs = whole ? { ...solid, surfaces: skins(solid.prism) } : roundAbout(solid, at, radius);
      const rest = whole ? (small ? "hidden" : "faint") : "plain";
      if (drawnAs) looks.set(drawnAs, marked.has(solid) ? "marked" : rest);
    }
    const picked = { ...scene, solids: [...looks.keys()] };
    return lineDrawing(picked, { ...frame, title: `${title}, ${word}`, look: (solid) => looks.get(solid) ?? "plain" });
  };
  return { before: drawn(before, old, "before"), after: drawn(after, now, "after") };
}

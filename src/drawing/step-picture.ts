import { type BuildStep, buildOrder } from "../facts/build-order.ts";
import { factOf } from "../facts/fact.ts";
import { type Bounds3, boundsOf } from "../geometry/bounds.ts";
import { add, cross, dot, midpoint, scale, subtract, type Vec2, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { type Band, type Look, lineDrawing } from "./line-drawing.ts";
import { sceneOf } from "./scene.ts";
import { massSolid } from "./solids/mass-solid.ts";
import type { Solid } from "./solids/solid.ts";
import { projected, type View, viewFrom, views } from "./view.ts";
import { wayArrows } from "./way-arrows.ts";

/** Draws the piece that is worked on after some steps of one piece: what they put in is brought out. */
export type StepPicture = (steps: { readonly first: number; readonly last: number }, title: string) => string;

/** Screw heads, caps and equipment are no parts of a piece of their own: they are there with what carries them, once put on. */
const CARRIED: ReadonlySet<Solid["kind"]> = new Set(["screw", "cap", "mass"]);
/** Arrows of more steps than this would hide what they point at. */
const MOST_ARROWS = 4;
/** What is shown round a piece, as a share of it. */
const ROOM = 1.12;
/** The table under a piece stands out so far round it, as a share of its size. */
const TABLE_EDGE = 0.06;
const TABLE_INK = "#8b8577";

const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const DOWN: Vec3 = [0, 0, -1];

const cornersOf = (solids: readonly Solid[]): readonly Vec3[] => solids.flatMap(({ prism }) => prism.vertices);

/** The side on which what is flat lies on a table: the back of its thinnest direction; a piece as thick as it is wide stays as it stands. */
function flatSide({ min, max }: Bounds3): Vec3 {
  const sizes = subtract(max, min);
  const thin = [0, 1, 2].reduce((a, b) => ((sizes[b] ?? 0) < (sizes[a] ?? 0) ? b : a), 2);
  const axis = AXES[thin] ?? DOWN;
  return thin === 2 ? DOWN : scale(axis, axis[0] > 0 ? -1 : 1);
}

/** The isometric view of what lies with a side down, turned over that side. */
function viewOver(down: Vec3): View {
  if (down === DOWN) return views.isometric;
  const over = scale(down, -1);
  // What was up lies away from the eye, to the left.
  const [, , up] = AXES;
  const right = up ? cross(up, over) : over;
  return viewFrom("lying", add(subtract(right, up ?? over), over), over);
}

/** The edge of the table under what lies on it. */
function tableUnder(corners: readonly Vec3[], down: Vec3): Band {
  const level = AXES.filter((axis) => Math.abs(dot(axis, down)) < 0.5);
  const low = Math.max(...corners.map((corner) => dot(corner, down)));
  const spans = level.map((axis) => {
    const reach = corners.map((corner) => dot(corner, axis));
    return [Math.min(...reach), Math.max(...reach)] as const;
  });
  const margin = TABLE_EDGE * Math.max(...spans.map(([from, to]) => to - from));
  const at = (i: number, j: number): Vec3 => {
    const [[a, b] = [0, 0], [c, d] = [0, 0]] = spans;
    const [u, v] = level;
    if (!u || !v) return scale(down, low);
    return add(scale(down, low), add(scale(u, i ? b + margin : a - margin), scale(v, j ? d + margin : c - margin)));
  };
  const points = [at(0, 0), at(1, 0), at(1, 1), at(0, 1), at(0, 0)];
  return { points, ink: TABLE_INK, wide: { units: 1 }, dashes: "7 4", name: "the table" };
}

/** Pictures of the steps of building, those of one piece to one scale [picture units]; equipment that is bolted on as its box. */
export function stepPictures(frame: Frame, size: Vec2): StepPicture {
  const parts = sceneOf(frame);
  const equipment = frame.masses.filter(({ fixed }) => fixed).flatMap((mass) => massSolid(mass) ?? []);
  const scene = { ...parts, solids: [...parts.solids, ...equipment] };
  const order = factOf(buildOrder, frame);
  const carrying = new Set([...frame.bars, ...frame.panels].map((part) => part.ref.id));
  /** Equipment that the steps of the piece put on. */
  const equipmentOn = (assembly: string): readonly Solid[] => {
    const on = order.steps
      .filter((step) => step.assembly === assembly)
      .flatMap(({ places, bolts }) => [...places, ...bolts]);
    return equipment.filter(({ of }) => on.some(({ id }) => id === of.id));
  };
  const solidsOf = (ids: ReadonlySet<string>): readonly Solid[] =>
    scene.solids.filter(({ kind, of }) => (kind === "bar" || kind === "panel") && ids.has(of.id));
  /** All bars and panels that the piece ends up with. */
  const wholeOf = (assembly: string): readonly Solid[] => {
    const last = order.steps.findLast((step) => step.assembly === assembly);
    return solidsOf(last ? order.presentAt(last.number) : new Set());
  };
  const downOf = ({ assembly, lying }: BuildStep, whole: readonly Solid[]): Vec3 => {
    if (assembly !== "") return flatSide(boundsOf(cornersOf(whole)));
    return (lying ? order.lyingOn : undefined) ?? DOWN;
  };
  /** The middle of what a step puts in last: a bar, a panel or a whole sub-assembly. */
  const middleOf = ({ assembly, places }: BuildStep): Vec3 | undefined => {
    const id = places.at(-1)?.id ?? "";
    const sub = order.assemblies.find(
      (one) => one.id !== assembly && (one.sub?.ref.id ?? one.items[0]?.parts[0]) === id,
    );
    const put = solidsOf(new Set(sub ? sub.items.flatMap((item) => item.parts) : [id]));
    if (put.length === 0) return undefined;
    const { min, max } = boundsOf(cornersOf(put));
    return midpoint(min, max);
  };
  return ({ first, last }, title) => {
    const there = order.presentAt(last);
    const step = order.steps[first - 1];
    const own = step?.assembly;
    const before = order.steps.findLast((one) => one.number < first && one.assembly === own);
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
    const whole = wholeOf(own ?? "");
    if (!step || whole.length === 0) return lineDrawing(scene, { view: views.isometric, size, title, look });
    const corners = cornersOf(whole);
    const shown = [...corners, ...cornersOf(equipmentOn(step.assembly))];
    const { min, max } = boundsOf(shown);
    const down = downOf(step, whole);
    const view = viewOver(down);
    const at = midpoint(min, max);
    const radius =
      ROOM * Math.max(...shown.flatMap((corner) => projected(view, subtract(corner, at)).map((one) => Math.abs(one))));
    const bands: Band[] = own === "" ? [] : [tableUnder(corners, down)];
    if (own === "") {
      for (const one of order.steps.slice(first - 1, last).slice(0, MOST_ARROWS)) {
        const middle = middleOf(one);
        // Of two pieces that nothing joins yet neither goes into the other.
        const joins = one.places.length === 1 || one.connectors.length > 0;
        if (middle && one.path && joins && one.path.past.length === 0)
          bands.push(...wayArrows(middle, one.path.legs, radius, view, `way in, step ${one.number}`));
      }
    }
    return lineDrawing(scene, { view, size, title, look, bands, focus: { at, radius } });
  };
}

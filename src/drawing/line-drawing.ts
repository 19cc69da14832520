import { boundsOf } from "../geometry/bounds.ts";
import { depthOrder } from "../geometry/depth-order.ts";
import { along, dot, type Vec2, type Vec3 } from "../geometry/vector.ts";
import { type Dimension, drawnDimensions } from "./dimensions.ts";
import { drawnSymbols } from "./draw-symbols.ts";
import { drawnMarks, type Mark } from "./marks.ts";
import { ringPath } from "./ring-path.ts";
import type { Scene } from "./scene.ts";
import type { Solid, Surface } from "./solids/solid.ts";
import { escaped, tidy } from "./svg.ts";
import type { Symbols } from "./symbols.ts";
import { projected, type View } from "./view.ts";

/** How a part is drawn: as it is, brought out, held back, or not at all. */
export type Look = "plain" | "marked" | "faint" | "hidden";

export interface Picture {
  readonly view: View;
  /** Greatest width and height, picture units; the height shrinks to what is drawn. */
  readonly size: Vec2;
  /** Surfaces smaller than this would be specks and are left out, picture units; 1 where absent. */
  readonly finest?: number;
  /** Width of a part's lines as a share of the usual; 1 where absent. */
  readonly line?: (solid: Solid) => number;
  /** What the picture shows, for those who do not see it. */
  readonly title: string;
  /** Plain where absent. */
  readonly look?: (solid: Solid) => Look;
  /** Colour of a part's surfaces before light falls on them, channels 0 to 255; the look's own where undefined. */
  readonly tint?: (solid: Solid) => Vec3 | undefined;
  /** Parts that are not there: in dashed outline over those that are. */
  readonly ghosts?: readonly Ghost[];
  /** Areas seen through, over the parts and under the lines. */
  readonly areas?: readonly Area[];
  /** Lines with a width of their own, over the parts and under the signs. */
  readonly bands?: readonly Band[];
  /** Only what lies round this point fills the picture, m; the rest runs out of it. */
  readonly focus?: { readonly at: Vec3; readonly radius: number };
  /** Lengths written into the drawing, over the parts. */
  readonly dimensions?: readonly Dimension[];
  /** Balloons over the drawing. */
  readonly marks?: readonly Mark[];
  /** Loads and supports over the drawing. */
  readonly symbols?: Symbols;
}

/** A part drawn in outline, in this colour and width. */
export interface Ghost {
  readonly solid: Solid;
  readonly ink: string;
  readonly width: number;
}

/** What lies within rings, holes after the outer one, and is no part of the frame. */
export interface Area {
  readonly rings: readonly (readonly Vec3[])[];
  readonly fill: string;
  /** What it is, for those who look into the drawing. */
  readonly name: string;
}

/** A line through points, as wide as a thing of this size [m] or this many picture units; seen through where it stands for a part. */
export interface Band {
  readonly points: readonly Vec3[];
  readonly ink: string;
  readonly wide: { readonly size: number } | { readonly units: number };
  readonly opacity?: number;
  readonly dashes?: string;
  /** What it is, for those who look into the drawing. */
  readonly name: string;
}

const MARGIN = 18;
const INK = "#20262b";
const FAINT_INK = "#a9b0b5";
/** Greys of surfaces turned from, and towards, the light. */
const DARK = 0xc4;
const LIGHT = 0xff;
const PLAIN: Vec3 = [LIGHT, LIGHT, LIGHT];
const MARKED: Vec3 = [0xf3, 0xc9, 0x6b];
/** The light comes from above, over the left shoulder of the eye. */
const light = ({ right, up, toward }: View): Vec3 => {
  const mixed = [0, 1, 2].map((i) => 0.7 * (up[i] ?? 0) + 0.55 * (toward[i] ?? 0) - 0.45 * (right[i] ?? 0));
  const size = Math.hypot(...mixed);
  return [(mixed[0] ?? 0) / size, (mixed[1] ?? 0) / size, (mixed[2] ?? 0) / size];
};

const hex = (channels: readonly number[]): string =>
  `#${channels.map((c) => Math.round(c).toString(16).padStart(2, "0")).join("")}`;

/** Usual widths of lines round parts, and round what lies deep in them, picture units. */
const EDGE = 0.9;
const FINE = 0.45;
/** How much darker what lies deep is painted than the skin round it. */
const DEPTH: Readonly<Record<Surface["kind"], number>> = { skin: 1, sawn: 0.86, slot: 0.8, recess: 0.55 };

interface Sheet {
  place(point: Vec3): Vec2;
  readonly width: number;
  readonly height: number;
  /** Picture units a metre. */
  readonly scale: number;
}

/** All that the picture has to hold. */
function pointsIn(
  { solids }: Scene,
  { symbols, focus, view, ghosts = [], areas = [], bands = [] }: Picture,
): readonly Vec3[] {
  if (focus)
    return [-1, 1].map((side) => along(along(focus.at, view.right, side * focus.radius), view.up, side * focus.radius));
  const signs = symbols
    ? [
        ...symbols.arrows.flatMap(({ from, to }) => [from, to]),
        ...symbols.masses.flatMap(({ edges }) => edges.flat()),
        ...symbols.supports.map(({ at }) => at),
      ]
    : [];
  const shapes = [...solids, ...ghosts.map(({ solid }) => solid)];
  const lines = [...bands.map(({ points }) => points), ...areas.flatMap(({ rings }) => rings)];
  return [...shapes.flatMap(({ prism }) => prism.vertices), ...lines.flat(), ...signs];
}

function sheetFor(scene: Scene, picture: Picture): Sheet {
  const { view, size } = picture;
  const points = pointsIn(scene, picture).map((p): Vec3 => [...projected(view, p), 0]);
  const { min, max } = boundsOf(points.length > 0 ? points : [[0, 0, 0]]);
  const [wide, high] = [Math.max(max[0] - min[0], 1e-3), Math.max(max[1] - min[1], 1e-3)];
  const scale = Math.min((size[0] - 2 * MARGIN) / wide, (size[1] - 2 * MARGIN) / high);
  const left = (size[0] - wide * scale) / 2;
  return {
    width: size[0],
    height: high * scale + 2 * MARGIN,
    scale,
    place(point) {
      const [x, y] = projected(view, point);
      return [left + (x - min[0]) * scale, MARGIN + (max[1] - y) * scale];
    },
  };
}

const pathOf = (rings: Surface["rings"], sheet: Sheet): string =>
  rings.map((ring) => ringPath(ring.map((point) => sheet.place(point)))).join("");

function fillOf({ kind, normal }: Surface, base: Vec3, view: View): string {
  const lit = Math.max(0, dot(normal, light(view)));
  const share = (DARK + (LIGHT - DARK) * lit) / LIGHT;
  return hex(base.map((c) => c * share * DEPTH[kind]));
}

/** Whether a ring on the picture is at least so large one way or the other. */
function atLeast(ring: readonly Vec2[] = [], size: number): boolean {
  const spread = (axis: 0 | 1): number => {
    let [low, high] = [Infinity, -Infinity];
    for (const point of ring) [low, high] = [Math.min(low, point[axis]), Math.max(high, point[axis])];
    return high - low;
  };
  return spread(0) >= size || spread(1) >= size;
}

/** A surface of a bar thinner than this on the picture shows as no more than its edges: one of the bar's is enough then, picture units. */
const THIN = 0.5;

/** How thick a ring is: its area over its longer spread. */
function thickness(ring: readonly Vec2[]): number {
  const { min, max } = boundsOf(ring.map(([x, y]): Vec3 => [x, y, 0]));
  const area = ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length] ?? [x, y];
    return sum + (x * v - u * y) / 2;
  }, 0);
  return Math.abs(area) / Math.max(max[0] - min[0], max[1] - min[1], 1e-9);
}

function painted(
  solid: Solid,
  look: Look,
  tint: Vec3 | undefined,
  sheet: Sheet,
  { view, finest = 1, line }: Picture,
): string {
  const base = tint ?? (look === "marked" ? MARKED : PLAIN);
  // Ink and the width of lines are those of the drawing, told once round all parts, unless the part has its own.
  const ink = look === "faint" ? ` stroke="${FAINT_INK}"` : "";
  const seen = solid.surfaces.filter(({ normal }) => dot(normal, view.toward) > 1e-6);
  const see =
    solid.kind === "panel" || solid.kind === "mass"
      ? ' fill-opacity="0.35"'
      : look === "faint"
        ? ' fill-opacity="0.6"'
        : "";
  const wide = line?.(solid) ?? 1;
  const width = wide === 1 ? "" : ` stroke-width="${tidy(wide * EDGE)}"`;
  // Surfaces that follow each other and look alike are one path.
  const paths: { readonly style: string; d: string }[] = [];
  for (const surface of seen) {
    const rings = surface.rings.map((ring) => ring.map((point) => sheet.place(point)));
    if (!atLeast(rings[0], finest)) continue;
    if (solid.kind === "bar" && paths.length > 0 && thickness(rings[0] ?? []) < THIN) continue;
    const fine = surface.kind === "skin" ? "" : ` stroke-width="${tidy(wide * FINE)}"`;
    const style = `fill="${fillOf(surface, base, view)}"${fine}`;
    const last = paths.at(-1);
    const d = rings.map(ringPath).join("");
    if (last?.style === style) last.d += d;
    else paths.push({ style, d });
  }
  if (paths.length === 0) return "";
  const drawn = paths.map(({ style, d }) => `<path d="${d}" ${style}/>`).join("");
  return `<g data-part="${escaped(`${solid.of.kind} ${solid.of.id}`)}"${ink}${width}${see}>${drawn}</g>\n`;
}

/** What was there and is no longer: the edges turned to the eye, dashed, over a breath of their colour. */
function ghosted({ solid, ink, width }: Ghost, sheet: Sheet, view: View): string {
  const seen = solid.prism.faces.filter(({ normal }) => dot(normal, view.toward) > 1e-6);
  const d = pathOf(
    seen.map(({ vertices }) => vertices),
    sheet,
  );
  return `<path data-ghost="${escaped(`${solid.of.kind} ${solid.of.id}`)}" d="${d}" fill="${ink}" fill-opacity="0.07" stroke="${ink}" stroke-width="${width}" stroke-dasharray="6 3"/>\n`;
}

/** A tenth of a picture unit is less than a hair on paper. */
const tenths = (value: number): number => Math.round(value * 10) / 10 + 0;

function banded({ points, ink, wide, opacity = 1, dashes, name }: Band, sheet: Sheet): string {
  const d = points.map((point) => sheet.place(point).map(tenths).join(" ")).join("L");
  const width = "size" in wide ? wide.size * sheet.scale : wide.units;
  const line = dashes === undefined ? "" : ` stroke-dasharray="${dashes}"`;
  const through = opacity === 1 ? "" : ` stroke-opacity="${opacity}"`;
  return `<path data-band="${escaped(name)}" d="M${d}" fill="none" stroke="${ink}" stroke-width="${tidy(width)}"${through}${line}/>\n`;
}

const covered = ({ rings, fill, name }: Area, sheet: Sheet): string =>
  `<path data-area="${escaped(name)}" d="${pathOf(rings, sheet)}" fill="${fill}" fill-opacity="0.6" stroke-width="1.2"/>\n`;

/** Only the edges, over everything: for parts that run into each other and so have no place in the order. */
function outlined(solid: Solid, sheet: Sheet): string {
  const d = pathOf(
    solid.prism.faces.map(({ vertices }) => vertices),
    sheet,
  );
  return `<path data-outline="${escaped(`${solid.of.kind} ${solid.of.id}`)}" d="${d}" fill="none" stroke="${INK}" stroke-width="1" stroke-dasharray="5 2"/>\n`;
}

/**
 * A frame as a line drawing, an SVG document of attributes alone: no script, no style sheet, nothing fetched. Nearer parts hide those
 * behind; parts that run into each other are drawn again in outline over all. The scale depends on the whole frame, so that pictures
 * of one frame with parts hidden fit onto each other.
 */
export function lineDrawing(scene: Scene, picture: Picture): string {
  const { view, title, marks = [], symbols } = picture;
  const look = picture.look ?? (() => "plain");
  const sheet = sheetFor(scene, picture);
  const shown = scene.solids.filter((solid) => look(solid) !== "hidden");
  const { order } = depthOrder(
    shown.map(({ prism }) => prism),
    view.toward,
  );
  const parts = order.flatMap((index) => {
    const solid = shown[index];
    return solid ? [painted(solid, look(solid), picture.tint?.(solid), sheet, picture)] : [];
  });
  const clashing = shown.filter(({ kind, of }) => kind !== "screw" && scene.clashing.has(of.id));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${tidy(sheet.width)} ${tidy(sheet.height)}" role="img">\n`,
    `<title>${escaped(title)}</title>\n`,
    `<g stroke="${INK}" stroke-width="${EDGE}" stroke-linejoin="round" fill-rule="evenodd">\n`,
    ...parts,
    ...clashing.map((solid) => outlined(solid, sheet)),
    ...(picture.ghosts ?? []).map((ghost) => ghosted(ghost, sheet, view)),
    ...(picture.areas ?? []).map((area) => covered(area, sheet)),
    ...(picture.bands ?? []).map((band) => banded(band, sheet)),
    "</g>\n",
    symbols ? drawnSymbols(symbols, sheet.place) : "",
    drawnDimensions(picture.dimensions ?? [], sheet.place, sheet.width),
    drawnMarks(marks, sheet.place, [sheet.width, sheet.height]),
    "</svg>\n",
  ].join("");
}

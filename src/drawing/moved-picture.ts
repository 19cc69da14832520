import type { BarLine } from "../facts/bent-line.ts";
import { type Body, bodies, cutPoint } from "../facts/bodies.ts";
import { factOf } from "../facts/fact.ts";
import { add, along, cross, distance, length, lerp, scale, type Vec2, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { type Band, lineDrawing } from "./line-drawing.ts";
import { plainScene, type Scene } from "./scene.ts";
import { views } from "./view.ts";

/** The greatest movement is drawn as this share of the frame's size, the greatest turn about a bar's axis as this angle [rad] at the most. */
const SHARE = 0.1;
const TURN = 0.4;
/** What moves less than this share of the most stands still. */
const STILL = 0.02;
/** A turn about its own axis that is drawn, rad. */
const ROLLS = 0.05;
const SIZE: Vec2 = [420, 340];
const INK = "#84230f";

interface Moving {
  readonly body: Body;
  readonly line: BarLine;
}

/** How far any skin of a bar goes. */
const reach = ({ body, line }: Moving): number =>
  Math.max(
    ...line.moved.map(length),
    ...line.rolled.map((turn) => Math.abs(turn) * Math.hypot(body.half.y, body.half.z)),
  );

function bandsOf({ body, line }: Moving, factor: number): readonly Band[] {
  const [from, to] = [cutPoint(body, "from"), cutPoint(body, "to")];
  const last = line.moved.length - 1;
  const axis = line.moved.map((moved, i) => along(lerp(from, to, i / last), moved, factor));
  const name = body.bar.ref.id;
  const { y, z } = body.half;
  const bands: Band[] = [
    { points: axis, ink: INK, wide: { size: 2 * Math.min(y, z) }, opacity: 0.22, name },
    { points: axis, ink: INK, wide: { units: 1.2 }, name },
  ];
  const roll = (line.rolled[Math.floor(last / 2)] ?? 0) * factor;
  if (Math.abs(roll) < ROLLS) return bands;
  // A bar that turns about itself does not leave its axis: its ends are drawn as they come to stand.
  for (const [end, moved] of [
    [from, line.moved[0]],
    [to, line.moved[last]],
  ] as const) {
    const centre = along(end, moved ?? [0, 0, 0], factor);
    const corners = [
      [1, 1],
      [-1, 1],
      [-1, -1],
      [1, -1],
      [1, 1],
    ].map(([a = 0, b = 0]): Vec3 => {
      const arm = add(scale(body.axes.y, a * y), scale(body.axes.z, b * z));
      return add(centre, add(arm, scale(cross(body.axes.x, arm), roll)));
    });
    bands.push({ points: corners, ink: INK, wide: { units: 1 }, name });
  }
  return bands;
}

/** The frame held back, and over it its bars as they come to stand when it moves; enlarged until that is well seen. Undefined where nothing moves. */
export function movedPicture(
  frame: Frame,
  scene: Scene,
  lineOf: (bar: string) => BarLine | undefined,
  title: string,
): string | undefined {
  const all = [...factOf(bodies, frame).values()].filter(({ prism }) => prism);
  const moving = all.flatMap((body): readonly Moving[] => {
    const line = lineOf(body.bar.ref.id);
    return line ? [{ body, line }] : [];
  });
  const most = Math.max(0, ...moving.map(reach));
  if (most === 0) return undefined;
  const points = all.flatMap(({ bounds }) => [bounds.min, bounds.max]);
  const [first = [0, 0, 0] as Vec3] = points;
  const across = Math.max(...points.map((point) => distance(point, first)));
  const turns = Math.max(0, ...moving.flatMap(({ line }) => line.rolled.map(Math.abs)));
  const factor = Math.min((SHARE * across) / most, turns > 0 ? TURN / turns : Infinity);
  const bars = new Set(all.map(({ bar }) => bar.ref.id));
  return lineDrawing(plainScene(scene), {
    view: views.isometric,
    size: SIZE,
    title,
    look: ({ kind, of }) => (kind === "bar" && bars.has(of.id) ? "faint" : kind === "stand" ? "faint" : "hidden"),
    bands: moving.filter((one) => reach(one) > STILL * most).flatMap((one) => bandsOf(one, factor)),
  });
}

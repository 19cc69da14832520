import { add, cross, dot } from "../geometry/vector.ts";
import { type BarLine, bentLine } from "./bent-line.ts";
import { type Body, bodies, cutPoint } from "./bodies.ts";
import { buckledLine } from "./buckled-line.ts";
import { defineFact } from "./fact.ts";
import type { LooseMotion } from "./loose-motion.ts";
import { type LoosePart, looseParts } from "./loose-parts.ts";
import { response } from "./response.ts";
import { stability } from "./stability.ts";
import { structure } from "./structure.ts";
import { usualViews } from "./usual-views.ts";

/** A way in which a frame moves, bar by bar. */
export interface MovingShape {
  readonly kind: "bent" | "buckled" | "loose";
  /** Loads under which it bends or buckles; which part is loose. */
  readonly name: string;
  /** Of the loads, at which it buckles so. */
  readonly factor?: number;
  /** To true size for a bent shape; the size of the others is free. Undefined where the bar is no part of the structure. */
  lineOf(bar: string): BarLine | undefined;
}

/** Stations along a bar, bent shapes and buckling modes at most, and bars of a frame beyond which one mode is enough. */
const STATIONS = 9;
const BENDS = 8;
const MODES = 3;
const MANY_BARS = 400;

function rigidLine({ rate: { turn, shift } }: LooseMotion, body: Body): BarLine {
  const at = (end: "from" | "to") => add(shift, cross(turn, cutPoint(body, end)));
  const roll = dot(turn, body.axes.x);
  return { moved: [at("from"), at("to")], rolled: [roll, roll] };
}

function looseShapes(
  motions: readonly LooseMotion[],
  parts: readonly LoosePart[],
  all: ReadonlyMap<string, Body>,
): readonly MovingShape[] {
  const words = new Map(
    parts.flatMap(({ ways, mechanisms }) => mechanisms.map((one, i) => [one, ways[i] ?? ""] as const)),
  );
  const byMechanism = new Map<number, LooseMotion[]>();
  for (const motion of motions)
    byMechanism.set(motion.mechanism, [...(byMechanism.get(motion.mechanism) ?? []), motion]);
  return [...byMechanism].map(([mechanism, own]): MovingShape => {
    const lines = new Map<string, BarLine>();
    for (const motion of own)
      for (const bar of motion.bars) {
        const body = all.get(bar);
        if (body && !lines.has(bar)) lines.set(bar, rigidLine(motion, body));
      }
    return { kind: "loose", name: words.get(mechanism) ?? "", lineOf: (bar) => lines.get(bar) };
  });
}

/** How the frame bends under the loads of use, the farthest first; the ways in which it buckles first; or how what is loose moves. */
export const movingShapes = defineFact<
  readonly MovingShape[],
  {
    response: typeof response;
    stability: typeof stability;
    looseParts: typeof looseParts;
    structure: typeof structure;
    bodies: typeof bodies;
  }
>({
  id: "moving-shapes",
  needs: { response, stability, looseParts, structure, bodies },
  compute({ response: found, stability: { governing }, looseParts: parts, structure: known, bodies: all }, frame) {
    if (found.kind === "loose") return looseShapes(found.motions, parts, all);
    if (found.kind !== "solved") return [];
    const cached = (line: (body: Body) => BarLine | undefined): MovingShape["lineOf"] => {
      const lines = new Map<string, BarLine | undefined>();
      return (bar) => {
        const body = all.get(bar);
        if (!lines.has(bar)) lines.set(bar, body?.prism && line(body));
        return lines.get(bar);
      };
    };
    const most = ({ lineOf }: MovingShape): number =>
      frame.bars.reduce((far, { ref }) => {
        for (const [x, y, z] of lineOf(ref.id)?.moved ?? []) far = Math.max(far, Math.hypot(x, y, z));
        return far;
      }, 0);
    const bent = usualViews(found.views)
      .map(
        (view): MovingShape => ({
          kind: "bent",
          name: view.combination.name,
          lineOf: cached((body) => bentLine(view, body, STATIONS)),
        }),
      )
      .map((shape) => ({ shape, most: most(shape) }))
      .filter((one) => one.most > 0)
      .sort((a, b) => b.most - a.most)
      .slice(0, BENDS)
      .map(({ shape }) => shape);
    const modes = !governing
      ? []
      : frame.bars.length > MANY_BARS
        ? [governing.mode]
        : governing.view.bucklingModes(MODES);
    const buckled = modes.map(
      (mode): MovingShape => ({
        kind: "buckled",
        name: governing?.view.combination.name ?? "",
        factor: mode.factor,
        lineOf: cached((body) => buckledLine(mode, known, body, STATIONS)),
      }),
    );
    return [...bent, ...buckled];
  },
});

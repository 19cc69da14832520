import { add, cross, dot } from "../geometry/vector.ts";
import { type BarLine, bentLine } from "./bent-line.ts";
import { type Body, bodies, cutPoint } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { frequencies, type Shaking } from "./frequencies.ts";
import type { LooseMotion } from "./loose-motion.ts";
import { type LoosePart, looseParts } from "./loose-parts.ts";
import { evenPoints, modeLine } from "./mode-line.ts";
import { response, type View } from "./response.ts";
import { stability } from "./stability.ts";
import { type Structure, structure } from "./structure.ts";
import type { TurningPart } from "./turning.ts";
import { usualViews } from "./usual-views.ts";

/** A way in which a frame moves, bar by bar. */
export interface MovingShape {
  readonly kind: "bent" | "buckled" | "swinging" | "loose" | "turning";
  /** Loads under which it bends or buckles; what shakes it; which part is loose, or turns about which lone screws. */
  readonly name: string;
  /** Of the loads, at which it buckles so. */
  readonly factor?: number;
  /** At which it swings so by itself, Hz, and whether that is above what shakes it. */
  readonly swings?: { readonly frequency: number; readonly side: "below" | "above" };
  /** To true size for a bent shape; the size of the others is free. Undefined where the bar is no part of the structure. */
  lineOf(bar: string): BarLine | undefined;
}

/** Stations along a bar, bent shapes and buckling modes at most, and bars of a frame beyond which fewer shapes and one mode are enough. */
const STATIONS = 9;
const BENDS = 8;
const BENDS_OF_MANY = 3;
const MODES = 3;
const MANY_BARS = 400;

function rigidLine({ turn, shift }: LooseMotion["rate"], body: Body): BarLine {
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
        if (body && !lines.has(bar)) lines.set(bar, rigidLine(motion.rate, body));
      }
    return { kind: "loose", name: words.get(mechanism) ?? "", lineOf: (bar) => lines.get(bar) };
  });
}

/** How a part moves that only the friction of lone screws holds. */
export function turningShape({ bars, joints, rates }: TurningPart, all: ReadonlyMap<string, Body>): MovingShape {
  return {
    kind: "turning",
    name: `${bars.join(", ")} at ${joints.join(" and ")}`,
    lineOf(bar) {
      const [rate, body] = [rates.get(bar), all.get(bar)];
      return rate && body && rigidLine(rate, body);
    },
  };
}

type LineOf = MovingShape["lineOf"];

/** Each bar's line is worked out once, when it is asked for. */
function lines(all: ReadonlyMap<string, Body>, line: (body: Body) => BarLine | undefined): LineOf {
  const known = new Map<string, BarLine | undefined>();
  return (bar) => {
    const body = all.get(bar);
    if (!known.has(bar)) known.set(bar, body?.prism && line(body));
    return known.get(bar);
  };
}

/** How the frame bends in one state of its loads and joints. */
export function bentShape(view: View, all: ReadonlyMap<string, Body>): MovingShape {
  const { combination, bound } = view;
  return {
    kind: "bent",
    name: bound === "typical" ? combination.name : `${combination.name}, ${bound} joints`,
    lineOf: lines(all, (body) => bentLine(view, body, STATIONS)),
  };
}

/** The ways next to what shakes it in which it swings by itself, joints typical. */
function swinging(
  shaking: readonly Shaking[],
  known: Structure,
  all: ReadonlyMap<string, Body>,
): readonly MovingShape[] {
  return shaking.flatMap(({ mass, next }) =>
    (["below", "above"] as const).flatMap((side): readonly MovingShape[] => {
      const typical = next.get("typical");
      const [way, frequency] = [typical?.ways[side], typical?.[side]];
      if (!way || frequency === undefined) return [];
      const lineOf = lines(all, (body) => modeLine(way, known, body, STATIONS));
      return [{ kind: "swinging", name: mass.ref.id, swings: { frequency, side }, lineOf }];
    }),
  );
}

/** How the frame bends under the loads of use, the farthest first; the ways in which it buckles first; how it swings next to what shakes it; or how what is loose moves. */
export const movingShapes = defineFact<
  readonly MovingShape[],
  {
    response: typeof response;
    stability: typeof stability;
    looseParts: typeof looseParts;
    structure: typeof structure;
    bodies: typeof bodies;
    frequencies: typeof frequencies;
  }
>({
  id: "moving-shapes",
  needs: { response, stability, looseParts, structure, bodies, frequencies },
  compute(
    {
      response: found,
      stability: { governing },
      looseParts: parts,
      structure: known,
      bodies: all,
      frequencies: shaking,
    },
    frame,
  ) {
    if (found.kind === "loose") return looseShapes(found.motions, parts, all);
    if (found.kind !== "solved") return [];
    const most = ({ lineOf }: MovingShape): number =>
      frame.bars.reduce((far, { ref }) => {
        for (const [x, y, z] of lineOf(ref.id)?.moved ?? []) far = Math.max(far, Math.hypot(x, y, z));
        return far;
      }, 0);
    const bent = usualViews(found.views)
      .map((view) => bentShape(view, all))
      .map((shape) => ({ shape, most: most(shape) }))
      .filter((one) => one.most > 0)
      .sort((a, b) => b.most - a.most)
      .slice(0, frame.bars.length > MANY_BARS ? BENDS_OF_MANY : BENDS)
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
        lineOf: lines(all, (body) => modeLine((piece) => evenPoints(mode.along(piece)), known, body, STATIONS)),
      }),
    );
    return [...bent, ...buckled, ...swinging(shaking, known, all)];
  },
});

import { along, dot, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Mass } from "../model/frame.ts";
import { type Body, cutStation } from "./bodies.ts";
import { borneBeside, type Patch } from "./borne-beside.ts";
import type { PanelShare } from "./panel-shares.ts";
import { supportLines } from "./supports-beside.ts";

/** A stretch of a bar on which a thing rests; a point where it has no length. */
export interface Carrier {
  readonly bar: string;
  /** Stations along the bar, m. */
  readonly from: number;
  readonly to: number;
  /** In its middle, m. */
  readonly at: Vec3;
  /** Share of what rests there, as the thing stands; all of them sum to 1. */
  readonly share: number;
}

/** Stretches alike in which a box rests on each bar: forces that turn it differ from one to the next. */
const PARTS = 4;
/** Patches along each side of a box on a panel: small beside what bars of a panel stand apart. */
const PATCHES = 8;
/** A thing shorter than this along a bar rests on it in one point, m. */
const SHORT = 0.02;

/** A panel steeper than this hangs in its plane and is as good as stiff in it; on one that is less steep a thing lies. */
const LEVEL = Math.SQRT1_2;

/** Half of a thing's box along a direction, m. */
function halfAlong({ box }: Mass, way: Vec3): number {
  const [a = 0, b = 0, c = 0] = box ?? [];
  return (Math.abs(way[0]) * a + Math.abs(way[1]) * b + Math.abs(way[2]) * c) / 2;
}

/** Stretches alike from one end to the other; the two ends of what is rigid, the middle of what is short. */
function stretches(
  from: number,
  to: number,
  middle: number,
  rigid: boolean,
  count: number,
): readonly (readonly [number, number])[] {
  if (to - from < SHORT) return [[middle, middle]];
  if (rigid)
    return [
      [from, from],
      [to, to],
    ];
  const part = (to - from) / count;
  return Array.from({ length: count }, (_, i) => [from + i * part, from + (i + 1) * part] as const);
}

function carrier({ bar, axes }: Body, from: number, to: number, share: number): Carrier {
  return { bar: bar.ref.id, from, to, at: along(bar.from, axes.x, (from + to) / 2), share };
}

/** Where a thing rests on one bar. */
function restsOn(mass: Mass, body: Body): readonly (readonly [number, number])[] {
  const [low, high] = [cutStation(body, "from"), cutStation(body, "to")];
  const on = (station: number): number => Math.min(Math.max(station, low), high);
  const middle = dot(subtract(mass.centre, body.bar.from), body.axes.x);
  const half = halfAlong(mass, body.axes.x);
  return stretches(on(middle - half), on(middle + half), on(middle), mass.rigid, PARTS);
}

/** Of a thing that lies on a panel, or presses it, how those bars bear it that run along the panel. */
function beside(
  { normal, ways }: PanelShare,
  bars: readonly Body[],
  { centre, halves, rigid }: Pick<Mass, "centre" | "rigid"> & { readonly halves: readonly number[] },
): readonly Carrier[] {
  const level = bars.filter(({ axes }) => Math.abs(dot(axes.x, normal)) < LEVEL);
  const sides = ways.map((way, i) => {
    const [middle, half] = [dot(centre, way), halves[i] ?? 0];
    return stretches(middle - half, middle + half, middle, rigid, PATCHES);
  });
  const [us = [], vs = []] = sides;
  const patches = us.flatMap(([u0, u1]) =>
    vs.map(([v0, v1]): Patch => ({ at: [(u0 + u1) / 2, (v0 + v1) / 2], size: [u1 - u0, v1 - v0] })),
  );
  return borneBeside(supportLines(level, ways), patches).map(({ support: { body }, from, to, share }) => {
    const [low, high] = [cutStation(body, "from"), cutStation(body, "to")];
    const on = (t: number): number => low + t * (high - low);
    return carrier(body, on(from), on(to), share);
  });
}

const barsOf = (ids: readonly string[], all: ReadonlyMap<string, Body>): readonly Body[] =>
  [...new Set(ids)].map((id) => all.get(id)).filter((body) => body?.prism !== undefined) as Body[];

/** Stretches of bars that bear what presses a panel square to it on a patch of this side [m] in its middle. */
export function pressed(share: PanelShare, side: number, all: ReadonlyMap<string, Body>): readonly Carrier[] {
  const bars = barsOf(
    share.strips.map((strip) => strip.bar),
    all,
  );
  return beside(share, bars, { centre: share.middle, halves: [side / 2, side / 2], rigid: false });
}

/** Stretches of bars on which a thing rests. */
export function carriers(
  mass: Mass,
  all: ReadonlyMap<string, Body>,
  shares: ReadonlyMap<string, PanelShare>,
): readonly Carrier[] {
  const bars = barsOf(
    mass.on.flatMap((id) => shares.get(id)?.strips.map((strip) => strip.bar) ?? [id]),
    all,
  );
  const panels = mass.on.flatMap((id) => shares.get(id) ?? []);
  const [first] = panels;
  if (first && panels.every(({ normal }) => Math.abs(normal[2]) > LEVEL)) {
    const halves = first.ways.map((way) => halfAlong(mass, way));
    const found = beside(first, bars, { centre: mass.centre, halves, rigid: mass.rigid });
    if (found.length > 0) return found;
  }
  return bars.flatMap((body) => {
    const places = restsOn(mass, body);
    return places.map(([from, to]) => carrier(body, from, to, 1 / places.length / bars.length));
  });
}

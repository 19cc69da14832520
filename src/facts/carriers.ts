import { along, dot, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Mass } from "../model/frame.ts";
import { type Body, cutStation } from "./bodies.ts";
import type { PanelShare } from "./panel-shares.ts";

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
/** A thing shorter than this along a bar rests on it in one point, m. */
const SHORT = 0.02;

/** Where a thing rests on one bar: along the whole of its box, or at the two ends of it where it is rigid. */
function restsOn(mass: Mass, body: Body): readonly (readonly [number, number])[] {
  const [low, high] = [cutStation(body, "from"), cutStation(body, "to")];
  const on = (station: number): number => Math.min(Math.max(station, low), high);
  const x = body.axes.x;
  const middle = dot(subtract(mass.centre, body.bar.from), x);
  const [a = 0, b = 0, c = 0] = mass.box ?? [];
  const half = (Math.abs(x[0]) * a + Math.abs(x[1]) * b + Math.abs(x[2]) * c) / 2;
  const [from, to] = [on(middle - half), on(middle + half)];
  if (to - from < SHORT) return [[on(middle), on(middle)]];
  if (mass.rigid)
    return [
      [from, from],
      [to, to],
    ];
  const part = (to - from) / PARTS;
  return Array.from({ length: PARTS }, (_, i) => [from + i * part, from + (i + 1) * part] as const);
}

/** Stretches of bars on which a thing rests. */
export function carriers(
  mass: Mass,
  all: ReadonlyMap<string, Body>,
  shares: ReadonlyMap<string, PanelShare>,
): readonly Carrier[] {
  const ids = mass.on.flatMap((id) => shares.get(id)?.strips.map((strip) => strip.bar) ?? [id]);
  const bars = [...new Set(ids)].map((id) => all.get(id)).filter((body) => body?.prism !== undefined) as Body[];
  return bars.flatMap((body) => {
    const places = restsOn(mass, body);
    return places.map(([from, to]) => ({
      bar: body.bar.ref.id,
      from,
      to,
      at: along(body.bar.from, body.axes.x, (from + to) / 2),
      share: 1 / places.length / bars.length,
    }));
  });
}

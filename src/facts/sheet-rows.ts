import { along, dot, type Vec3 } from "../geometry/vector.ts";
import { type Body, cutStation } from "./bodies.ts";
import type { LaidSheet } from "./sheets.ts";

/** A row of screws between a sheet and one bar. */
export interface SheetRow {
  readonly bar: string;
  /** Of the first and the last screw, along the bar from its drawn from point, m. */
  readonly stations: readonly [number, number];
  /** The same, in the plane in which sheet and bar touch. */
  readonly ends: readonly [Vec3, Vec3];
  readonly screws: number;
}

/** From the edge of the sheet, or the cut of the bar, to the first screw, m (common practice). */
const INSET = 0.02;
/** A bar braced by a sheet touches it, up to this, m. */
const TOUCH = 0.001;
/** Sine within which a bar lies in the plane of the sheet: 1°. */
const FLAT = Math.sin(Math.PI / 180);

function rowOf(body: Body, sheet: LaidSheet, pitch: number): SheetRow | undefined {
  const { x } = body.axes;
  const [corner] = sheet.corners;
  const top = dot(corner, sheet.normal);
  const face = Math.max(...(body.prism?.vertices ?? []).map((vertex) => dot(vertex, sheet.normal)));
  if (Math.abs(dot(x, sheet.normal)) > FLAT || !(Math.abs(face - top) <= TOUCH)) return undefined;
  let [low, high] = [cutStation(body, "from"), cutStation(body, "to")];
  for (const axis of sheet.axes) {
    const slope = dot(x, axis);
    const at = dot(body.bar.from, axis);
    const ends = sheet.corners.map((one) => dot(one, axis));
    const [least, most] = [Math.min(...ends), Math.max(...ends)];
    if (Math.abs(slope) < FLAT) continue;
    const cuts = [(least - at) / slope, (most - at) / slope];
    low = Math.max(low, Math.min(...cuts));
    high = Math.min(high, Math.max(...cuts));
  }
  const length = high - low - 2 * INSET;
  if (!(length > INSET)) return undefined;
  const stations = [low + INSET, high - INSET] as const;
  const onto = (station: number): Vec3 => {
    const point = along(body.bar.from, x, station);
    return along(point, sheet.normal, top - dot(point, sheet.normal));
  };
  return {
    bar: body.bar.ref.id,
    stations,
    ends: [onto(stations[0]), onto(stations[1])],
    screws: Math.ceil(length / pitch - 1e-9) + 1,
  };
}

/** The rows of screws of a sheet on the faces of bars, at most so far apart, m. */
export function screwRows(sheet: LaidSheet, bodies: ReadonlyMap<string, Body>, pitch: number): readonly SheetRow[] {
  return sheet.bars.flatMap((id) => {
    const body = bodies.get(id);
    return (body && rowOf(body, sheet, pitch)) ?? [];
  });
}

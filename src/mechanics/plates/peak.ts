import { type PatchLoad, type Plate, type PlateField, plateStates } from "./levy.ts";

/** The largest deflection (m) and bending stress (Pa) of a plate field, small deflections. */
export interface PlatePeak {
  readonly deflection: number;
  readonly stress: number;
}

/** Stations across the width at mid-span where the state is looked at; the patch's own middle and edges are among them. */
const STATIONS = 20;

/** Peaks along the middle of the span, where a load that is even about it does most. */
export function platePeak(plate: Plate, field: PlateField, load: PatchLoad): PlatePeak {
  const ys = Array.from({ length: STATIONS + 1 }, (_, i) => (i * field.width) / STATIONS);
  ys.push(...load.y, (load.y[0] + load.y[1]) / 2);
  const states = plateStates(
    plate,
    field,
    load,
    ys.map((y) => [field.span / 2, y] as const),
  );
  const moment = Math.max(...states.map(({ mx, my }) => Math.max(Math.abs(mx), Math.abs(my))));
  return {
    deflection: Math.max(...states.map((state) => Math.abs(state.deflection))),
    stress: (6 * moment) / plate.thickness ** 2,
  };
}

/** Pressure over the whole field. */
export function uniformLoad(field: PlateField, pressure: number): PatchLoad {
  return { pressure, x: [0, field.span], y: [0, field.width] };
}

/**
 * A force (N) on a square patch of this side (m), where the field gives most: its middle, or the middle of a free edge. A patch larger
 * than the field covers it.
 */
export function pushLoad(field: PlateField, force: number, side: number): PatchLoad {
  const [along, across] = [Math.min(side, field.span), Math.min(side, field.width)];
  const [low, high] = field.edges;
  const start = high === "free" ? field.width - across : low === "free" ? 0 : (field.width - across) / 2;
  return {
    pressure: force / (along * across),
    x: [(field.span - along) / 2, (field.span + along) / 2],
    y: [start, start + across],
  };
}

/** Share of the cube of deflection over thickness that the stretching of the middle plane takes, edges free to draw in. */
const STRETCH = 0.272;

/**
 * Deflection (m) with the stretching of the middle plane, from that of small-deflection theory: w/t + A (w/t)³ = w₀/t, A = 0.272 for
 * a centrally loaded plate whose edges are held against the push alone and may draw in (Timoshenko and Woinowsky-Krieger,
 * article 97, table 82; a round plate, from memory). Never more than small-deflection theory gives.
 */
export function stretchedDeflection(small: number, thickness: number): number {
  const target = small / thickness;
  // One real root of a rising cubic: Newton from above stays above and converges.
  let x = target;
  for (let i = 0; i < 60; i += 1) x -= (x + STRETCH * x ** 3 - target) / (1 + 3 * STRETCH * x ** 2);
  return x * thickness;
}

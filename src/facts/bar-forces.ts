import { extrema, largest, type Piecewise } from "../mechanics/piecewise.ts";
import type { View } from "./response.ts";
import type { Sags } from "./sag.ts";
import type { Span } from "./spans.ts";

/** The largest forces in one bar under one combination: N, N·m, and its sag, m. */
export interface BarForces {
  readonly bar: string;
  /** Smallest and largest: compression is negative. */
  readonly N: readonly [number, number];
  readonly Vy: number;
  readonly Vz: number;
  readonly T: number;
  readonly My: number;
  readonly Mz: number;
  /** Over the worst of its spans; undefined where nothing holds it. */
  readonly sag?: number;
}

/** Extremes along a bar, at their exact places. */
export function barForces(view: View, bar: string, held: readonly Span[], sags: Sags): BarForces | undefined {
  const forces = view.forces(bar);
  if (!forces) return undefined;
  const size = (field: Piecewise): number => Math.abs(largest(field).value);
  const { min, max } = extrema(forces.N);
  let sag: number | undefined;
  for (const span of held) sag = Math.max(sag ?? 0, sags.of(view, bar, span) ?? 0);
  return {
    bar,
    N: [min.value, max.value],
    Vy: size(forces.Vy),
    Vz: size(forces.Vz),
    T: size(forces.T),
    My: size(forces.My),
    Mz: size(forces.Mz),
    ...(sag === undefined ? {} : { sag }),
  };
}

import type { BarForces } from "../../facts/bar-forces.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";

export type Triple = readonly [number, number, number];

/** What one foothold puts on the frame: N, N·m. */
export interface FootLine {
  readonly foot: string;
  readonly at: Triple;
  readonly force: Triple;
  readonly moment: Triple;
}

/** One combination with one joint stiffness, as a body cut free of the floor. Moments are about the origin of the drawing. */
export interface StaticsLine {
  readonly combination: string;
  readonly joints: string;
  readonly applied: { readonly force: Triple; readonly moment: Triple };
  readonly feet: readonly FootLine[];
  readonly sum: { readonly force: Triple; readonly moment: Triple };
  /** What is left over, as a share of all forces or moments that meet. */
  readonly residual: number;
  readonly bar?: BarForces;
}

export interface StaticsSheet {
  readonly file: string;
  readonly title: string;
  readonly units: UnitSystem;
  readonly lines: readonly StaticsLine[];
}

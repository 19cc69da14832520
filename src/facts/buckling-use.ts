import {
  bucklingReduction,
  bucklingResistance,
  criticalForce,
  relativeSlenderness,
} from "../mechanics/design/flexural-buckling.ts";
import { type Acting, linearUse, type Resistance } from "../mechanics/design/interaction.ts";
import { criticalMoment, lateralReduction } from "../mechanics/design/lateral-torsional.ts";
import { amplifier } from "../mechanics/design/second-order.ts";
import type { InternalForces } from "../mechanics/member/fields.ts";
import { extrema, largest, type Piecewise } from "../mechanics/piecewise.ts";
import type { Material, Profile } from "../model/stock/stock.ts";
import type { Bracing, Stretch } from "./bracing.ts";
import { effectiveShare } from "./effective-share.ts";
import { sectionOf } from "./sections.ts";

/** How much of what a bar can take before it buckles is used, and where. */
export interface BucklingUse {
  readonly use: number;
  /** Largest compression in the stretch, N, zero or more. */
  readonly compression: number;
  /** Buckling length, m. */
  readonly length: number;
  /** What it bears, moments amplified, and what it resists: N, N·m, N·m. */
  readonly acting: Acting;
  readonly resists: Resistance;
}

/** A bar with what it resists, computed once for all combinations. */
export interface Column {
  readonly stretches: readonly {
    readonly stretch: Stretch;
    /** Euler force, N. */
    readonly critical: number;
    /** N, N·m, N·m */
    readonly resists: Resistance;
    /** Whether it is tall, narrow and long enough to tilt over when bent. */
    readonly tilts: boolean;
  }[];
}

/** Compression up to this share of the Euler force bends nothing further (EN 1993-1-1:2005, 6.3.1.2(4), from memory). */
const NEGLIGIBLE = 0.04;
/** Second moments nearer to each other than this, relative, leave no weak axis to fall over to. */
const EQUAL = 0.05;

/** Longest stretch in a direction that shares length with another stretch, as a buckling length. */
function beside(stretch: Stretch, others: readonly Stretch[]): number {
  let longest = 0;
  for (const other of others)
    if (other.from < stretch.to && other.to > stretch.from) longest = Math.max(longest, other.length);
  return longest;
}

/** What a bar of this profile, material and bracing resists, strengths divided by `gamma`. */
export function columnOf(profile: Profile, material: Material, bracing: Bracing, gamma: number): Column {
  const section = sectionOf(profile);
  const { elasticModulus: E, shearModulus: G, proof } = material;
  const share = effectiveShare(profile, material);
  const elastic = section.elastic;
  const Wy = Math.min(elastic.zPlus, elastic.zMinus) * share;
  const Wz = Math.min(elastic.yPlus, elastic.yMinus) * share;
  const tilting = (W: number, weak: number, strong: number, length: number): number => {
    if (length === 0 || strong <= weak * (1 + EQUAL)) return 1;
    const critical = criticalMoment(E * weak, G * section.J, E * section.Iw, length);
    return lateralReduction(Math.sqrt((W * proof) / critical));
  };
  const of = (stretch: Stretch, I: number) => {
    const critical = criticalForce(E * I, stretch.length);
    const effective = section.A * share;
    const chi = bucklingReduction(relativeSlenderness(effective, proof, critical), material.bucklingClass);
    // Bent about y it would tilt over along y, and the other way round.
    const tiltY = tilting(Wy, section.Iz, section.Iy, beside(stretch, bracing.y));
    const tiltZ = tilting(Wz, section.Iy, section.Iz, beside(stretch, bracing.z));
    return {
      stretch,
      critical,
      resists: {
        N: bucklingResistance(chi, effective, proof, gamma),
        My: (tiltY * Wy * proof) / gamma,
        Mz: (tiltZ * Wz * proof) / gamma,
      },
      tilts: tiltY < 1 || tiltZ < 1,
    };
  };
  return {
    stretches: [...bracing.y.map((s) => of(s, section.Iz)), ...bracing.z.map((s) => of(s, section.Iy))],
  };
}

const sizeOf = (field: Piecewise, { from, to }: Stretch): number => Math.abs(largest(field, from, to).value);

/**
 * The linear sum N/N_b,Rd + My/My,Rd + Mz/Mz,Rd of the worst stretch, each with its largest value in the stretch. Moments are
 * amplified by 1/(1 − N/N_cr) of the stretch or by `sway` of the whole frame, whichever is more; at or beyond the critical force
 * the first term alone exceeds one. Undefined where nothing is pressed hard enough to bow out or tall enough to tilt: the stress
 * of such a bar says it all. `reserve`: what the loads leave out of those the bar may fail under.
 */
export function bucklingUse(forces: InternalForces, column: Column, sway = 1, reserve = 1): BucklingUse | undefined {
  let worst: BucklingUse | undefined;
  for (const { stretch, critical, resists, tilts } of column.stretches) {
    const compression = Math.max(0, -extrema(forces.N, stretch.from, stretch.to).min.value);
    if (!tilts && reserve * compression <= NEGLIGIBLE * critical) continue;
    const own = compression > 0 ? amplifier(critical / (reserve * compression)) : 1;
    const growth = Number.isFinite(own) ? Math.max(own, sway) : sway;
    const acting = {
      N: compression,
      My: growth * sizeOf(forces.My, stretch),
      Mz: growth * sizeOf(forces.Mz, stretch),
    };
    const use = linearUse(acting, resists);
    if (!worst || use > worst.use) worst = { use, compression, length: stretch.length, acting, resists };
  }
  return worst;
}

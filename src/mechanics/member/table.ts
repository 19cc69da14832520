import { add, dot, scale, subtract } from "../../geometry/vector.ts";
import { MechanicsInputError } from "../errors.ts";
import type { FrameModel, Member, Six } from "../model.ts";
import { isTriad, ORIGIN } from "../triad.ts";
import type { Release } from "./release.ts";
import { condense } from "./release.ts";
import { COEFFICIENTS, fillStiffness, writeCoefficients } from "./stiffness.ts";

/** A release with its place among those of the table. */
export interface PlacedRelease extends Release {
  readonly place: number;
}

/** All members in flat arrays; row m belongs to member m. */
export interface MemberTable {
  readonly count: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Length of the flexible part, m. */
  readonly length: Float64Array;
  /** Ten stiffness coefficients each (stiffness.ts). */
  readonly stiffness: Float64Array;
  /** Nine each: local x, y, z in global components. */
  readonly axes: Float64Array;
  /** Six each: rigid arms at start and end, global components. */
  readonly arms: Float64Array;
  /** Only members with released ends. */
  readonly releases: ReadonlyMap<number, PlacedRelease>;
}

const mask = (releases: Six<boolean> | undefined, shift: number): number => {
  let bits = 0;
  releases?.forEach((released, i) => {
    if (released) bits |= 1 << (i + shift);
  });
  return bits;
};

/** The flexible part must run along local x; positions computed by a caller carry rounding of this order. */
const ALIGNMENT_TOLERANCE = 1e-7;

function checkedLength(model: FrameModel, member: Member, index: number): number {
  const start = model.nodes[member.from];
  const end = model.nodes[member.to];
  if (!start || !end) throw new MechanicsInputError(`member ${index} names a node that does not exist`);
  if (!isTriad(member.axes)) throw new MechanicsInputError(`member ${index} has axes that are not orthonormal`);
  const first = add(start, member.fromOffset ?? ORIGIN);
  const last = add(end, member.toOffset ?? ORIGIN);
  const along = subtract(last, first);
  const length = Math.sqrt(dot(along, along));
  if (!(length > 0)) throw new MechanicsInputError(`member ${index} has no length between its rigid arms`);
  const off = subtract(along, scale(member.axes.x, length));
  if (!(dot(off, off) <= (ALIGNMENT_TOLERANCE * length) ** 2)) {
    throw new MechanicsInputError(`member ${index} does not run along its local x`);
  }
  const { EA, EIy, EIz, GJ, GAy, GAz } = member;
  if (!(EA > 0 && EIy > 0 && EIz > 0 && GJ > 0 && GAy > 0 && GAz > 0 && Number.isFinite(EA + EIy + EIz + GJ))) {
    throw new MechanicsInputError(`member ${index} has a stiffness that is not positive`);
  }
  return length;
}

function demandFinite(stiffness: Float64Array, m: number): void {
  for (let i = COEFFICIENTS * m; i < COEFFICIENTS * (m + 1); i++) {
    if (!Number.isFinite(stiffness[i])) throw new MechanicsInputError(`member ${m} is stiffer than numbers can say`);
  }
}

/** Checks and flattens the members of a model. Throws MechanicsInputError. */
export function memberTable(model: FrameModel): MemberTable {
  const { members } = model;
  const count = members.length;
  const table = {
    count,
    from: new Int32Array(count),
    to: new Int32Array(count),
    length: new Float64Array(count),
    stiffness: new Float64Array(COEFFICIENTS * count),
    axes: new Float64Array(9 * count),
    arms: new Float64Array(6 * count),
  };
  const releases = new Map<number, PlacedRelease>();
  members.forEach((member, m) => {
    const length = checkedLength(model, member, m);
    table.from[m] = member.from;
    table.to[m] = member.to;
    table.length[m] = length;
    writeCoefficients(table.stiffness, COEFFICIENTS * m, member, length);
    demandFinite(table.stiffness, m);
    const { x, y, z } = member.axes;
    table.axes.set(x, 9 * m);
    table.axes.set(y, 9 * m + 3);
    table.axes.set(z, 9 * m + 6);
    if (member.fromOffset) table.arms.set(member.fromOffset, 6 * m);
    if (member.toOffset) table.arms.set(member.toOffset, 6 * m + 3);
    const bits = mask(member.fromReleases, 0) | mask(member.toReleases, 6);
    if (bits) {
      const whole = new Float64Array(144);
      fillStiffness(table.stiffness, COEFFICIENTS * m, whole);
      releases.set(m, { ...condense(whole, bits), place: releases.size });
    }
  });
  return { ...table, releases };
}

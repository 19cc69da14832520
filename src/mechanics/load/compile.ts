import type { Vec3 } from "../../geometry/vector.ts";
import { add, cross, dot, subtract } from "../../geometry/vector.ts";
import { MechanicsInputError } from "../errors.ts";
import type { FrameModel, LineLoad, LoadCase, Member, NodeLoad, PointLoad, Triad } from "../model.ts";
import { ORIGIN } from "../triad.ts";

/** A load on a member, local axes: six components (force x y z, moment x y z) at `start` and at `end`; for a point load start = end. */
export interface LocalLoad {
  readonly kind: "point" | "line";
  readonly start: number;
  readonly end: number;
  /**
   * N, N·m for a point; N/m, N·m/m for a line. Twelve numbers from `at` on: at start, at end. All loads of a case share one
   * array: a number of small ones for each bar is what memory would be cleared of time and again.
   */
  readonly values: Float64Array;
  readonly at: number;
}

/** Loads and free strains of one member in one load case. */
export interface LocalLoads {
  readonly loads: readonly LocalLoad[];
  /** Free strain: axial, curvature about y, curvature about z. */
  readonly strain: Vec3;
}

export type LoadsByMember = ReadonlyMap<number, LocalLoads>;

/** Force and moment of a load that acts at `arm` from the axis, in local components, written to six places. */
function writeSix(out: Float64Array, at: number, { x, y, z }: Triad, force: Vec3, moment: Vec3, arm: Vec3): void {
  const turned = arm === ORIGIN ? moment : add(moment, cross(arm, force));
  out[at] = dot(x, force);
  out[at + 1] = dot(y, force);
  out[at + 2] = dot(z, force);
  out[at + 3] = dot(x, turned);
  out[at + 4] = dot(y, turned);
  out[at + 5] = dot(z, turned);
}

const NO_LINE = [ORIGIN, ORIGIN] as const;

function writeValue(out: Float64Array, at: number, { axes }: Member, load: PointLoad | LineLoad): void {
  const arm = load.arm ?? ORIGIN;
  if (load.kind === "point") {
    writeSix(out, at, axes, load.force ?? ORIGIN, load.moment ?? ORIGIN, arm);
    out.copyWithin(at + 6, at, at + 6);
  } else {
    const [force, moment] = [load.force ?? NO_LINE, load.moment ?? NO_LINE];
    writeSix(out, at, axes, force[0], moment[0], arm);
    writeSix(out, at + 6, axes, force[1], moment[1], arm);
  }
}

/** A station computed by a caller may lie this fraction of the length outside the member; it is then moved to the end. */
const STATION_TOLERANCE = 1e-9;

function compileOne(
  load: PointLoad | LineLoad,
  member: Member,
  length: number,
  values: Float64Array,
  at: number,
): LocalLoad {
  const [start, end] = load.kind === "point" ? [load.along, load.along] : [load.start, load.end];
  const slack = STATION_TOLERANCE * length;
  if (!(start >= -slack && end <= length + slack && start <= end)) {
    throw new MechanicsInputError(`a load lies outside member ${load.member} (stations ${start} to ${end} m)`);
  }
  writeValue(values, at, member, load);
  for (let i = at; i < at + 12; i++) {
    if (!Number.isFinite(values[i])) throw new MechanicsInputError("a load is not a finite number");
  }
  return { kind: load.kind, start: Math.max(start, 0), end: Math.min(end, length), values, at };
}

/** The member loads of a case in local axes, by member. Throws MechanicsInputError. */
export function compileMemberLoads(model: FrameModel, lengths: Float64Array, loadCase: LoadCase): LoadsByMember {
  const given = loadCase.members ?? [];
  const byMember = new Map<number, { loads: LocalLoad[]; strain: Vec3 }>();
  const values = new Float64Array(12 * given.length);
  let at = 0;
  for (const load of given) {
    const member = model.members[load.member];
    const length = lengths[load.member];
    if (!member || length === undefined) throw new MechanicsInputError(`a load names member ${load.member}`);
    const own = byMember.get(load.member);
    if (load.kind === "strain") {
      const strain = add(own?.strain ?? ORIGIN, [load.axial ?? 0, load.curvatureY ?? 0, load.curvatureZ ?? 0]);
      if (own) own.strain = strain;
      else byMember.set(load.member, { loads: [], strain });
      continue;
    }
    const local = compileOne(load, member, length, values, at);
    at += 12;
    if (own) own.loads.push(local);
    else byMember.set(load.member, { loads: [local], strain: ORIGIN });
  }
  return byMember;
}

/** Force and moment of a node load at its node. */
export function atNode(model: FrameModel, load: NodeLoad): readonly [Vec3, Vec3] {
  const node = model.nodes[load.node];
  if (!node) throw new MechanicsInputError(`a load names node ${load.node}, which does not exist`);
  const force = load.force ?? ORIGIN;
  const moment = load.moment ?? ORIGIN;
  if (![...force, ...moment].every(Number.isFinite)) throw new MechanicsInputError("a load is not a finite number");
  return [force, load.at ? add(moment, cross(subtract(load.at, node), force)) : moment];
}

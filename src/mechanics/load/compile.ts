import type { Vec3 } from "../../geometry/vector.ts";
import { add, cross, subtract } from "../../geometry/vector.ts";
import { MechanicsInputError } from "../errors.ts";
import type { FrameModel, LineLoad, LoadCase, Member, MemberLoad, NodeLoad, PointLoad } from "../model.ts";
import { into, ORIGIN } from "../triad.ts";

/** A load on a member, local axes: six components (force x y z, moment x y z) at `start` and at `end`; for a point load start = end. */
export interface LocalLoad {
  readonly kind: "point" | "line";
  readonly start: number;
  readonly end: number;
  /** N, N·m for a point; N/m, N·m/m for a line. Twelve numbers: at start, at end. */
  readonly value: Float64Array;
}

/** Loads and free strains of one member in one load case. */
export interface LocalLoads {
  readonly loads: readonly LocalLoad[];
  /** Free strain: axial, curvature about y, curvature about z. */
  readonly strain: Vec3;
}

export type LoadsByMember = ReadonlyMap<number, LocalLoads>;

function six(member: Member, force: Vec3, moment: Vec3, arm: Vec3): number[] {
  return [...into(member.axes, force), ...into(member.axes, add(moment, cross(arm, force)))];
}

function localPoint(member: Member, load: PointLoad): LocalLoad {
  const value = six(member, load.force ?? ORIGIN, load.moment ?? ORIGIN, load.arm ?? ORIGIN);
  return { kind: "point", start: load.along, end: load.along, value: Float64Array.of(...value, ...value) };
}

function localLine(member: Member, load: LineLoad): LocalLoad {
  const [force, moment, arm] = [load.force ?? [ORIGIN, ORIGIN], load.moment ?? [ORIGIN, ORIGIN], load.arm ?? ORIGIN];
  const value = Float64Array.of(...six(member, force[0], moment[0], arm), ...six(member, force[1], moment[1], arm));
  return { kind: "line", start: load.start, end: load.end, value };
}

/** A station computed by a caller may lie this fraction of the length outside the member; it is then moved to the end. */
const STATION_TOLERANCE = 1e-9;

function onMember(load: LocalLoad, length: number, m: number): LocalLoad {
  const slack = STATION_TOLERANCE * length;
  if (!(load.start >= -slack && load.end <= length + slack && load.start <= load.end)) {
    throw new MechanicsInputError(`a load lies outside member ${m} (stations ${load.start} to ${load.end} m)`);
  }
  const inside = (x: number): number => Math.min(Math.max(x, 0), length);
  return { ...load, start: inside(load.start), end: inside(load.end) };
}

function compileOne(load: Exclude<MemberLoad, { kind: "strain" }>, member: Member, length: number): LocalLoad {
  const local = load.kind === "point" ? localPoint(member, load) : localLine(member, load);
  if (!local.value.every(Number.isFinite)) throw new MechanicsInputError("a load is not a finite number");
  return onMember(local, length, load.member);
}

/** The member loads of a case in local axes, by member. Throws MechanicsInputError. */
export function compileMemberLoads(model: FrameModel, lengths: Float64Array, loadCase: LoadCase): LoadsByMember {
  const byMember = new Map<number, { loads: LocalLoad[]; strain: Vec3 }>();
  for (const load of loadCase.members ?? []) {
    const member = model.members[load.member];
    const length = lengths[load.member];
    if (!member || length === undefined) throw new MechanicsInputError(`a load names member ${load.member}`);
    let own = byMember.get(load.member);
    if (!own) {
      own = { loads: [], strain: ORIGIN };
      byMember.set(load.member, own);
    }
    if (load.kind === "strain") {
      own.strain = add(own.strain, [load.axial ?? 0, load.curvatureY ?? 0, load.curvatureZ ?? 0]);
    } else {
      own.loads.push(compileOne(load, member, length));
    }
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

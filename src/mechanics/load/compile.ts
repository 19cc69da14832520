import type { Vec3 } from "../../geometry/vector.ts";
import { add, cross, dot, subtract } from "../../geometry/vector.ts";
import { MechanicsInputError } from "../errors.ts";
import type {
  FrameModel,
  LineLoad,
  LoadCase,
  Member,
  MemberLoad,
  NodeLoad,
  PointLoad,
  StrainLoad,
  Triad,
} from "../model.ts";
import { ORIGIN } from "../triad.ts";

/** Kinds of a load on a member: at a point (its start is its end), along a line, the same all along or not. */
export const POINT = 0;
export const EVEN = 1;
export const VARYING = 2;

/** Numbers that the start of a load has, force and moment together. */
export const SIX = 6;

/**
 * The point and line loads on the members in one case, local axes, and free strains. In flat arrays, since a number of small objects
 * for each bar is what memory would be cleared of time and again.
 */
export interface MemberLoads {
  /** Members that some load or strain acts on, in the order they are first named. */
  readonly loaded: Int32Array;
  /** The loads of member m are those from first[m] to first[m + 1], in the order given. */
  readonly first: Int32Array;
  readonly kind: Uint8Array;
  readonly start: Float64Array;
  readonly end: Float64Array;
  /** Where the values of load i begin. */
  readonly place: Int32Array;
  /** Force x y z and moment x y z; of a load that varies at its start, then at its end. N, N·m for a point; N/m, N·m/m for a line. */
  readonly values: Float64Array;
  /** Three a member: axial, curvature about y, curvature about z. Absent where no member is strained. */
  readonly strain: Float64Array | undefined;
}

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

const same = ([a, b]: readonly [Vec3, Vec3]): boolean => a === b || (a[0] === b[0] && a[1] === b[1] && a[2] === b[2]);

function kindOf(load: PointLoad | LineLoad): number {
  if (load.kind === "point") return POINT;
  return same(load.force ?? NO_LINE) && same(load.moment ?? NO_LINE) ? EVEN : VARYING;
}

const widthOf = (kind: number): number => (kind === VARYING ? 2 * SIX : SIX);

function writeValue(out: Float64Array, at: number, { axes }: Member, load: PointLoad | LineLoad, kind: number): void {
  const arm = load.arm ?? ORIGIN;
  if (load.kind === "point") {
    writeSix(out, at, axes, load.force ?? ORIGIN, load.moment ?? ORIGIN, arm);
    return;
  }
  const [force, moment] = [load.force ?? NO_LINE, load.moment ?? NO_LINE];
  writeSix(out, at, axes, force[0], moment[0], arm);
  if (kind === VARYING) writeSix(out, at + SIX, axes, force[1], moment[1], arm);
}

/** A station computed by a caller may lie this fraction of the length outside the member; it is then moved to the end. */
const STATION_TOLERANCE = 1e-9;

function compileOne(load: PointLoad | LineLoad, member: Member, length: number, out: MemberLoads, i: number): void {
  const [start, end] = load.kind === "point" ? [load.along, load.along] : [load.start, load.end];
  const slack = STATION_TOLERANCE * length;
  if (!(start >= -slack && end <= length + slack && start <= end)) {
    throw new MechanicsInputError(`a load lies outside member ${load.member} (stations ${start} to ${end} m)`);
  }
  const [at, kind] = [out.place[i] as number, out.kind[i] as number];
  writeValue(out.values, at, member, load, kind);
  for (let k = at; k < at + widthOf(kind); k++) {
    if (!Number.isFinite(out.values[k])) throw new MechanicsInputError("a load is not a finite number");
  }
  out.start[i] = Math.max(start, 0);
  out.end[i] = Math.min(end, length);
}

function addStrain(strain: Float64Array, { member, axial = 0, curvatureY = 0, curvatureZ = 0 }: StrainLoad): void {
  for (const [i, own] of [axial, curvatureY, curvatureZ].entries())
    strain[3 * member + i] = (strain[3 * member + i] as number) + own;
}

/** Which load of a case comes where: by member, and among those of a member as given. */
interface Places extends Pick<MemberLoads, "loaded" | "first" | "kind" | "place"> {
  /** Numbers that all values take. */
  readonly width: number;
}

/** How many loads each member has, one place on, and which members are named. */
function counted(given: readonly MemberLoad[], members: number): Pick<MemberLoads, "loaded" | "first"> {
  const first = new Int32Array(members + 1);
  const named = new Uint8Array(members);
  const loaded = new Int32Array(Math.min(given.length, members));
  let count = 0;
  for (const { kind, member } of given) {
    if (!(member >= 0 && member < members)) throw new MechanicsInputError(`a load names member ${member}`);
    if (kind !== "strain") first[member + 1] = (first[member + 1] as number) + 1;
    if (named[member]) continue;
    named[member] = 1;
    loaded[count++] = member;
  }
  for (let m = 0; m < members; m++) first[m + 1] = (first[m + 1] as number) + (first[m] as number);
  return { first, loaded: loaded.subarray(0, count) };
}

/** Goes through the loads, each with its place by member. */
function eachLoad(
  given: readonly MemberLoad[],
  first: Int32Array,
  visit: (load: PointLoad | LineLoad, i: number) => void,
): void {
  const next = first.slice();
  for (const load of given) {
    if (load.kind === "strain") continue;
    const i = next[load.member] as number;
    next[load.member] = i + 1;
    visit(load, i);
  }
}

function placesOf(given: readonly MemberLoad[], members: number): Places {
  const { first, loaded } = counted(given, members);
  const count = first[members] as number;
  const kind = new Uint8Array(count);
  eachLoad(given, first, (load, i) => {
    kind[i] = kindOf(load);
  });
  const place = new Int32Array(count);
  let width = 0;
  for (let i = 0; i < count; i++) {
    place[i] = width;
    width += widthOf(kind[i] as number);
  }
  return { first, loaded, kind, place, width };
}

/** The member loads of a case in local axes, by member. Throws MechanicsInputError. */
export function compileMemberLoads(model: FrameModel, lengths: Float64Array, loadCase: LoadCase): MemberLoads {
  const given = loadCase.members ?? [];
  const { width, ...places } = placesOf(given, lengths.length);
  const count = places.kind.length;
  const strained = given.filter((load) => load.kind === "strain");
  const strain = strained.length > 0 ? new Float64Array(3 * lengths.length) : undefined;
  const loads: MemberLoads = {
    ...places,
    start: new Float64Array(count),
    end: new Float64Array(count),
    values: new Float64Array(width),
    strain,
  };
  eachLoad(given, places.first, (load, i) => {
    compileOne(load, model.members[load.member] as Member, lengths[load.member] as number, loads, i);
  });
  if (strain) for (const load of strained) addStrain(strain, load);
  return loads;
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

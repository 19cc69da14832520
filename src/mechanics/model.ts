import type { Vec3 } from "../geometry/vector.ts";

/**
 * What the frame solver is given. SI units (m, N, rad, kg); right-handed global axes.
 * Six components are always in the order: translation x y z, rotation x y z.
 */
export type { Vec3 };
export type Six<T> = readonly [T, T, T, T, T, T];

/** Orthonormal right-handed axes, each given in global components. */
export interface Triad {
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
}

export const GROUND = "ground";
/** Index of a node, or the ground. */
export type Anchor = number | typeof GROUND;

/**
 * A straight prismatic member. Its flexible part runs from node `from` + `fromOffset` to node `to` + `toOffset`
 * along `axes.x`; the offsets are rigid arms. Shear stiffness may be Infinity (no shear deformation).
 */
export interface Member {
  readonly from: number;
  readonly to: number;
  readonly axes: Triad;
  /** Rigid arms from the node to the end of the flexible part, m, global components. */
  readonly fromOffset?: Vec3;
  readonly toOffset?: Vec3;
  /** Axial stiffness, N. */
  readonly EA: number;
  /** Bending stiffness about local y and z, N·m². */
  readonly EIy: number;
  readonly EIz: number;
  /** Torsional stiffness, N·m². */
  readonly GJ: number;
  /** Shear stiffness for forces along local y and z, N. */
  readonly GAy: number;
  readonly GAz: number;
  /** kg/m. */
  readonly massPerLength: number;
  /** Components (local axes) that the end does not pass on to its node. */
  readonly fromReleases?: Six<boolean>;
  readonly toReleases?: Six<boolean>;
}

/** Six springs along and about `axes`, acting at point `at` (rigid arms lead there from both sides). */
export interface Spring {
  readonly from: number;
  readonly to: Anchor;
  readonly axes: Triad;
  /** N/m and N·m/rad; zero or more. */
  readonly stiffness: Six<number>;
  /** Where the spring acts; the position of `from` when absent. */
  readonly at?: Vec3;
}

/**
 * One spring on a motion that several points share: Σ (motion of the point) · direction, weights in the directions. It must
 * vanish when all points move as one piece, so that its forces balance.
 */
export interface Coupling {
  readonly points: readonly { readonly node: number; readonly at: Vec3; readonly direction: Vec3 }[];
  /** N/m for directions without units. */
  readonly stiffness: number;
}

/** How one component of a node is held: free, fixed, or by a spring of this stiffness (N/m, N·m/rad) to ground. */
export type Hold = "free" | "fixed" | number;

export interface Support {
  readonly node: number;
  readonly holds: Six<Hold>;
}

/**
 * A contact that pushes and never pulls. It pushes `from` along `normal` and `to` the other way.
 * Opening = gap + (motion of from − motion of to) · normal, never negative.
 */
export interface Contact {
  readonly from: number;
  readonly to: Anchor;
  /** Unit vector. */
  readonly normal: Vec3;
  /** m; negative means interference. */
  readonly gap: number;
  /** Where they touch; the position of `from` when absent. */
  readonly at?: Vec3;
  /** N/m; rigid when absent. */
  readonly stiffness?: number;
  /** Friction: a closed contact holds sideways up to coefficient × its push. Frictionless when absent. */
  readonly friction?: number;
  /** N/m sideways while friction holds; rigid when absent. */
  readonly hold?: number;
}

/** What one combination meets at the contacts instead of what the model says. */
export interface ContactTerms {
  /** One gap for each contact, m. */
  readonly gaps?: readonly number[];
  /** Coefficient at every contact that has friction; above zero. */
  readonly friction?: number;
}

/** A mass carried at a node. */
export interface NodeMass {
  readonly node: number;
  /** kg. */
  readonly mass: number;
  /** Moments of inertia about global x, y, z at the node, kg·m². */
  readonly inertia?: Vec3;
}

export interface FrameModel {
  readonly nodes: readonly Vec3[];
  readonly members: readonly Member[];
  readonly springs?: readonly Spring[];
  readonly couplings?: readonly Coupling[];
  readonly supports?: readonly Support[];
  readonly contacts?: readonly Contact[];
  readonly masses?: readonly NodeMass[];
}

/** Force and moment on a node, global components, N and N·m; `at` is where the force acts (default: at the node). */
export interface NodeLoad {
  readonly node: number;
  readonly force?: Vec3;
  readonly moment?: Vec3;
  readonly at?: Vec3;
}

/** `along` is measured from the start of the flexible part, m. Vectors have global components. */
export interface PointLoad {
  readonly kind: "point";
  readonly member: number;
  readonly along: number;
  readonly force?: Vec3;
  readonly moment?: Vec3;
  /** From the axis of the member to where the force acts, m. */
  readonly arm?: Vec3;
}

/** A load per length that varies linearly from station `start` to station `end`; N/m and N·m/m. */
export interface LineLoad {
  readonly kind: "line";
  readonly member: number;
  readonly start: number;
  readonly end: number;
  readonly force?: readonly [atStart: Vec3, atEnd: Vec3];
  readonly moment?: readonly [atStart: Vec3, atEnd: Vec3];
  /** From the axis of the member to where the force acts, m. */
  readonly arm?: Vec3;
}

/**
 * Strains that the member would take if nothing held it, for example by temperature: axial = α ΔT,
 * curvature about y = α (change of temperature along +z) per m, about z = −α (change along +y) per m.
 */
export interface StrainLoad {
  readonly kind: "strain";
  readonly member: number;
  readonly axial?: number;
  /** 1/m. */
  readonly curvatureY?: number;
  readonly curvatureZ?: number;
}

export type MemberLoad = PointLoad | LineLoad | StrainLoad;

/** A component of a fixed support that is moved by `value` (m or rad). Component 0..5. */
export interface Settlement {
  readonly node: number;
  readonly component: number;
  readonly value: number;
}

export interface LoadCase {
  readonly nodes?: readonly NodeLoad[];
  readonly members?: readonly MemberLoad[];
  readonly settlements?: readonly Settlement[];
}

/** One factor for each load case. */
export type Combination = readonly number[];

import { cross, dot, normalise, type Vec3 } from "../geometry/vector.ts";
import type { Connector } from "../model/stock/stock.ts";
import type { PlacedConnector } from "./placed.ts";

/** Joint stiffness is rarely known: what no test backs is taken soft, typical and stiff. */
export type Bound = "soft" | "typical" | "stiff";
export const bounds: readonly Bound[] = ["soft", "typical", "stiff"];

/** Rotational stiffness of one plain inside bracket of 40 mm pitch in its own plane, N·m/rad (common practice). */
export const PLAIN_BRACKET: Readonly<Record<Bound, number>> = { soft: 2.5e3, typical: 8e3, stiff: 25e3 };
/** Stiffness of one connector against being pulled off or sheared along, N/m (common practice: a clamped M8 in a slot). */
const SHIFT: Readonly<Record<Bound, number>> = { soft: 5e6, typical: 20e6, stiff: 100e6 };
/** Pitch the values above are for, m, and the power by which they change with it: 30 mm 0.4, 20 mm 0.1 of them (common practice). */
const PITCH = 0.04;
const PITCH_POWER = 3.3;
/** Share of the in-plane stiffness that a bracket has about its other two axes (common practice). */
const OUT_OF_PLANE = 0.3;

/** A bracket with side walls beside a plain one (common practice). */
const GUSSETED = 3;

/** How much stiffer than a plain bracket with one screw a leg each kind of connector is (common practice). */
function sturdiness(part: Connector): number {
  switch (part.kind) {
    case "bracket":
      if (part.gussets > 0) return GUSSETED;
      return Math.min(part.legs.a.holes.length, part.legs.b.holes.length) >= 2 ? 2 : 1;
    case "end-screw":
    case "plate":
      return 3;
    case "end-fastener":
      return 2;
    case "side-tie":
    case "pivot":
    case "hinge":
      return 1;
  }
}

export interface ConnectorStiffness {
  /** N·m/rad about each of three axes. */
  readonly turn: readonly [number, number, number];
  /** N/m, alike in all directions. */
  readonly shift: number;
  /** Backed by a test: the same in every bound. */
  readonly tested: boolean;
}

/** The axis about which a connector is strongest: square to the plane of its two legs. */
function strongAxis(placed: PlacedConnector): Vec3 | undefined {
  const [first] = placed.screws;
  const other = placed.screws.find((screw) => first && Math.abs(dot(screw.axis, first.axis)) < 0.5);
  return first && other ? normalise(cross(first.axis, other.axis)) : undefined;
}

/** Stiffness of one placed connector about the axes of the bar it ends, for a profile of this pitch [m]. */
export function connectorStiffness(
  placed: PlacedConnector,
  axes: readonly [Vec3, Vec3, Vec3],
  pitch: number,
  bound: Bound,
): ConnectorStiffness {
  const { part } = placed;
  const size = (pitch / PITCH) ** PITCH_POWER;
  const tested = part.tested?.rotationalStiffness;
  const strong = tested ?? PLAIN_BRACKET[bound] * sturdiness(part) * size;
  const axis = strongAxis(placed);
  const about = (direction: Vec3): number => {
    if (!axis) return strong;
    const share = dot(direction, axis) ** 2;
    return strong * (share + OUT_OF_PLANE * (1 - share));
  };
  return {
    turn: [about(axes[0]), about(axes[1]), about(axes[2])],
    shift: SHIFT[bound] * (pitch / PITCH),
    tested: tested !== undefined,
  };
}

/**
 * Two bars side by side, pressed face on face by one screw: about the two axes in the face as stiff as a plain bracket,
 * about the screw as a bracket is about its own (common practice). N·m/rad about each of three axes.
 */
export function tieStiffness(
  screw: Vec3,
  axes: readonly [Vec3, Vec3, Vec3],
  pitch: number,
  bound: Bound,
): readonly [number, number, number] {
  const strong = PLAIN_BRACKET[bound] * (pitch / PITCH) ** PITCH_POWER;
  const about = (direction: Vec3): number => strong * (1 - (1 - OUT_OF_PLANE) * dot(direction, screw) ** 2);
  return [about(axes[0]), about(axes[1]), about(axes[2])];
}

/** A bar on a plate that is anchored to the floor turns as little as on a gusseted bracket (common practice). N·m/rad. */
export function basePlateStiffness(pitch: number, bound: Bound): number {
  return GUSSETED * PLAIN_BRACKET[bound] * (pitch / PITCH) ** PITCH_POWER;
}

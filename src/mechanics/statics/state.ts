import type { Vec3 } from "../../geometry/vector.ts";
import type { Mechanism } from "../mechanism/bodies.ts";
import type { MemberEnds } from "./member-forces.ts";

export type ContactStatus = "open" | "closed" | "holds" | "slips";

/** One contact under one combination. */
export interface ContactResult {
  /** closed: pushes, without friction; holds or slips: pushes, with friction that is enough or used up. */
  readonly status: ContactStatus;
  /** N, zero when open. */
  readonly push: number;
  /** Sideways force on `from`, global components, N. */
  readonly sideways: Vec3;
  /** m; zero for a rigid contact that is closed, negative by push / stiffness for one that yields. */
  readonly opening: number;
}

/** Defects that the self checks measured, dimensionless. */
export interface Quality {
  readonly residual: number;
  readonly equilibrium: number;
  readonly energy: number;
}

/** Response to one combination. Node arrays have six entries a node (global), member arrays twelve a member (local). */
export interface SolvedState {
  readonly kind: "solved";
  readonly displacements: Float64Array;
  /** Forces of fixed and elastic supports on the frame. */
  readonly reactions: Float64Array;
  readonly ends: MemberEnds;
  /** Six a spring: force and moment on `from`, along and about the spring's axes. */
  readonly springs: Float64Array;
  /** One a coupling: the force that works on its motion, positive where the motion is. */
  readonly couplings: Float64Array;
  readonly contacts: readonly ContactResult[];
  readonly quality: Quality;
}

/** The frame, or a part of it, moves away: contacts open and nothing else holds it. */
export interface MovingState {
  readonly kind: "mechanism";
  readonly mechanisms: readonly Mechanism[];
}

/** No set of open and closed contacts satisfies all conditions; only friction can bring this about. */
export interface UnsettledState {
  readonly kind: "unsettled";
  /** Sets of contacts that were tried. */
  readonly tried: number;
}

export type State = SolvedState | MovingState | UnsettledState;

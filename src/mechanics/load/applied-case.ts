import type { MemberLoads } from "./compile.ts";
import type { Resultant } from "./resultant.ts";

/** Forces on single freedoms (6 · node + component); one freedom may come more than once. */
export interface NodeForces {
  readonly freedoms: readonly number[];
  readonly values: readonly number[];
}

/** A load case made ready for the solver. Node quantities have six entries per node, member quantities twelve per member. */
export interface AppliedCase {
  readonly onMembers: MemberLoads;
  /** End forces of loaded members with held ends. */
  readonly held: Float64Array;
  /** Forces applied directly to nodes. */
  readonly onNodes: NodeForces;
  /** These and the reversed held end forces together: the right-hand side. */
  readonly total: Float64Array;
  /** Prescribed displacements, zero elsewhere; absent where no support settles. */
  readonly settled: Float64Array | undefined;
  readonly resultant: Resultant;
}

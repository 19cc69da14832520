import type { MemberLoads } from "./compile.ts";
import type { Resultant } from "./resultant.ts";

/** A load case made ready for the solver. Node quantities have six entries per node, member quantities twelve per member. */
export interface AppliedCase {
  readonly onMembers: MemberLoads;
  /** End forces of loaded members with held ends. */
  readonly held: Float64Array;
  /** Forces applied directly to nodes. */
  readonly onNodes: Float64Array;
  /** onNodes and the reversed held end forces together: the right-hand side. */
  readonly total: Float64Array;
  /** Prescribed displacements, zero elsewhere. */
  readonly settled: Float64Array;
  readonly hasSettlements: boolean;
  readonly resultant: Resultant;
}

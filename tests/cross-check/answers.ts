/** What a solver says of a checked frame; every list is in the order of the frame model. */
export interface Answers {
  /** m and rad, six a node. */
  readonly displacements: readonly number[];
  /** Forces and moments of supports that are springs on the frame, N and N·m, six a node; zero elsewhere. */
  readonly reactions: readonly number[];
  /** Force and moment on `from` along and about the axes of the spring, six a spring. */
  readonly springs: readonly number[];
  /** N, one a contact. */
  readonly pushes: readonly number[];
  /** Hz. */
  readonly modes: readonly number[];
  /** By which the loads may grow before the frame buckles, lowest first. */
  readonly factors: readonly number[];
}

export const NOTHING: Answers = { displacements: [], reactions: [], springs: [], pushes: [], modes: [], factors: [] };

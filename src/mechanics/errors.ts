/** A solution that does not satisfy its own equations: a failure of the tool, never a property of the frame. */
export class SolveCheckFailed extends Error {
  override readonly name = "SolveCheckFailed";
  readonly check: string;
  /** The measured defect, dimensionless. */
  readonly defect: number;
  /** The defect that was allowed. */
  readonly allowed: number;

  constructor(check: string, defect: number, allowed: number) {
    super(`the solution fails its ${check} check: ${defect.toExponential(2)}, ${allowed.toExponential(0)} allowed`);
    this.check = check;
    this.defect = defect;
    this.allowed = allowed;
  }
}

/** A frame model or a load that contradicts itself (a node that does not exist, axes that are not orthonormal). */
export class MechanicsInputError extends Error {
  override readonly name = "MechanicsInputError";
}

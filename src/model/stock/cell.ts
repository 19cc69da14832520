/** One square cell of a generated profile, m. The slot lies in the middle of each outer side. */
export interface Cell {
  readonly pitch: number;
  readonly slot: {
    /** Width between the lips. */
    readonly opening: number;
    /** Thickness of the lips. */
    readonly lip: number;
    /** Width behind the lips. */
    readonly cavity: number;
    /** Face to slot floor. */
    readonly depth: number;
    /** Least thickness of the diagonal webs. */
    readonly web: number;
  };
  readonly bore?: { readonly diameter: number; readonly thread: string };
  readonly cornerRadius: number;
  /** Wall round the hollow in each outer corner; solid when absent. */
  readonly cornerWall?: number;
  /** Outer wall of the hollows between cells; solid when absent. */
  readonly cellWall?: number;
  /** Skin over closed slots. */
  readonly closedWall?: number;
  /** How far a polygon may lie off the round it stands for. */
  readonly chordError: number;
}

/** From the side of a cell to the side of its slot cavity, m. */
export function blockOf(cell: Cell): number {
  return (cell.pitch - cell.slot.cavity) / 2;
}

/**
 * Depth at which the cavity's sides turn inwards at 45°, m. The cavities of two neighbouring faces then run parallel, along the lines
 * through [block, shoulder] and [shoulder, block] in the corner's coordinates, √2 (block − shoulder) apart: so that the web between
 * them keeps its thickness, shoulder = block − web / √2. A cavity that stays clear of the web keeps its full width to the floor.
 */
export function shoulderOf(cell: Cell): number {
  return Math.min(cell.slot.depth, blockOf(cell) - cell.slot.web / Math.SQRT2);
}

/** Half the width of the slot floor, m. */
export function halfFloorOf(cell: Cell): number {
  return cell.slot.cavity / 2 - (cell.slot.depth - shoulderOf(cell));
}

/** Why no bar can have such a cell: a pair of the field at fault and what it must be. Undefined when all is well. */
export function impossible(cell: Cell): { readonly field: string; readonly expected: string } | undefined {
  const { slot, pitch } = cell;
  const half = pitch / 2;
  const block = blockOf(cell);
  const fault = (field: string, expected: string) => ({ field, expected });
  if (slot.opening >= slot.cavity) return fault("slot/opening", "narrower than the cavity");
  if (slot.cavity >= pitch) return fault("slot/cavity", "narrower than the pitch");
  if (slot.depth >= half) return fault("slot/depth", "less than half the pitch");
  if (slot.lip >= shoulderOf(cell)) {
    return fault("slot/lip", "thinner than the depth at which the cavity starts to taper");
  }
  if (halfFloorOf(cell) <= 0) return fault("slot/web", "thin enough to leave a slot floor");
  if (halfFloorOf(cell) >= half - slot.depth) return fault("slot/web", "thick enough to keep neighbouring slots apart");
  if (cell.bore && cell.bore.diameter / 2 >= half - slot.depth) return fault("bore/diameter", "smaller than the core");
  if (cell.cornerRadius >= half - slot.opening / 2) return fault("cornerRadius", "clear of the slot opening");
  if (
    cell.cornerWall !== undefined &&
    block - 2 * cell.cornerWall <= Math.max(0, cell.cornerRadius - cell.cornerWall)
  ) {
    return fault("cornerWall", "thin enough to leave a hollow in the corner");
  }
  if (cell.cellWall !== undefined && cell.cellWall >= block) return fault("cellWall", "thinner than the corner block");
  if (cell.closedWall !== undefined && cell.closedWall >= shoulderOf(cell)) {
    return fault("closedWall", "thinner than the depth at which the cavity starts to taper");
  }
  return undefined;
}

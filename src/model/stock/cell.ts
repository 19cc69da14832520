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

/** Walls, steps and clearances thinner than this are slips of the pen, m. */
const LEAST = 5e-5;

/** Why no bar can have such a cell: the field at fault and what it must be. Undefined when all is well. */
export function impossible(cell: Cell): { readonly field: string; readonly expected: string } | undefined {
  const { slot, pitch } = cell;
  const core = pitch / 2 - slot.depth;
  const block = blockOf(cell);
  const shoulder = shoulderOf(cell);
  const floor = halfFloorOf(cell);
  const corner = cell.cornerWall === undefined ? undefined : block - 2 * cell.cornerWall;
  const needs: readonly (readonly [field: string, expected: string, room: number | undefined])[] = [
    ["slot/opening", "narrower than the cavity", slot.cavity - slot.opening],
    ["slot/cavity", "narrower than the pitch", 2 * block],
    ["slot/depth", "less than half the pitch", core],
    ["slot/lip", "thinner than the depth at which the cavity starts to taper", shoulder - slot.lip],
    ["slot/web", "thin enough to leave a slot floor", floor],
    ["slot/web", "thick enough to keep neighbouring slots apart", core - floor],
    ["bore/diameter", "smaller than the core", cell.bore && core - cell.bore.diameter / 2],
    ["cornerRadius", "clear of the slot opening", pitch / 2 - slot.opening / 2 - cell.cornerRadius],
    [
      "cornerWall",
      "thin enough to leave a hollow in the corner",
      corner && corner - Math.max(0, cell.cornerRadius - (cell.cornerWall ?? 0)),
    ],
    // The inner corner of the hollow, seen from the middle of the core.
    [
      "cornerWall",
      "thick enough to keep the hollow off the core bore",
      cell.cornerWall && cell.bore && Math.SQRT2 * (pitch / 2 - block + cell.cornerWall) - cell.bore.diameter / 2,
    ],
    ["cellWall", "thinner than the corner block", cell.cellWall && block - cell.cellWall],
    [
      "closedWall",
      "thinner than the depth at which the cavity starts to taper",
      cell.closedWall && shoulder - cell.closedWall,
    ],
  ];
  // NaN stands for a value that could not be read: it was told already.
  const fault = needs.find(([, , room]) => room !== undefined && room < LEAST);
  return fault && { field: fault[0], expected: fault[1] };
}

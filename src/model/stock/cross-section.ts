import { circle, quarterArc } from "./arc.ts";
import { type Cell, halfFloorOf, shoulderOf } from "./cell.ts";
import { cellHollow, cornerHollow, nodeHollow } from "./hollows.ts";
import type { Pair } from "./pair.ts";
import { asHole, withoutRepeats } from "./ring.ts";
import type { Bore, FaceName, Slot } from "./stock.ts";

/** A true cross-section, [y, z] in m about the middle of its envelope, with the slots and bores it draws. */
export interface CrossSection {
  readonly outer: readonly Pair[];
  readonly holes: readonly (readonly Pair[])[];
  readonly slots: readonly Slot[];
  readonly bores: readonly Bore[];
}

/** Half the size along y and z, m. */
interface Envelope {
  readonly y: number;
  readonly z: number;
}

/** One side of the envelope: `at` brings [along the face in counting order, depth into the bar] into the section. */
interface Side {
  readonly face: FaceName;
  readonly half: number;
  readonly cells: number;
  readonly at: (s: number, d: number) => Pair;
}

function sidesOf(half: Envelope, columns: number, rows: number): readonly Side[] {
  return [
    { face: "A", half: half.z, cells: columns, at: (s, d) => [half.y - d, s] },
    { face: "B", half: half.y, cells: rows, at: (s, d) => [-s, half.z - d] },
    { face: "C", half: half.z, cells: columns, at: (s, d) => [-half.y + d, -s] },
    { face: "D", half: half.y, cells: rows, at: (s, d) => [s, -half.z + d] },
  ];
}

/** Middles of n cells in a row, about 0, m. */
function middles(n: number, pitch: number): readonly number[] {
  return Array.from({ length: n }, (_, i) => (i - (n - 1) / 2) * pitch);
}

/** Right half of a cavity from its upper edge to the floor, as [half width, depth]. */
function cavitySide(cell: Cell, top: number): readonly Pair[] {
  const side = cell.slot.cavity / 2;
  return [
    [side, top],
    [side, shoulderOf(cell)],
    [halfFloorOf(cell), cell.slot.depth],
  ];
}

/** Down one side and up the other, about a slot's line. */
function mirrored(half: readonly Pair[], across: number): readonly Pair[] {
  return [
    ...half.map(([s, d]): Pair => [across - s, d]),
    ...[...half].reverse().map(([s, d]): Pair => [across + s, d]),
  ];
}

function openSlot(cell: Cell, across: number): readonly Pair[] {
  const { opening, lip } = cell.slot;
  return mirrored([[opening / 2, 0], [opening / 2, lip], ...cavitySide(cell, lip)], across);
}

function slotOf(cell: Cell, side: Side, index: number, across: number, skin: number | undefined): Slot {
  const { opening, lip, depth, cavity } = cell.slot;
  const closed = skin !== undefined;
  return {
    face: side.face,
    number: index + 1,
    across,
    opening: closed ? 0 : opening,
    lip: skin ?? lip,
    depth,
    cavity,
    closed,
  };
}

/** Boundaries between neighbouring cells, and the points where four cells meet. */
function innerHollows(cell: Cell, half: Envelope, columns: number, rows: number, wall: number): Pair[][] {
  const hollows: Pair[][] = [];
  const ys = middles(rows, cell.pitch);
  const zs = middles(columns, cell.pitch);
  const ends = (index: number, count: number) => ({
    low: index === 0 ? cell.pitch / 2 : undefined,
    high: index === count - 1 ? cell.pitch / 2 : undefined,
  });
  for (let row = 1; row < rows; row++) {
    const y = row * cell.pitch - half.y;
    zs.forEach((z, column) => {
      hollows.push(cellHollow(cell, ends(column, columns), wall).map(([n, t]): Pair => [y + n, z + t]));
    });
  }
  for (let column = 1; column < columns; column++) {
    const z = column * cell.pitch - half.z;
    ys.forEach((y, row) => {
      hollows.push(cellHollow(cell, ends(row, rows), wall).map(([n, t]): Pair => [y + t, z + n]));
    });
    for (let row = 1; row < rows; row++) {
      const y = row * cell.pitch - half.y;
      hollows.push(nodeHollow(cell).map(([a, b]): Pair => [y + a, z + b]));
    }
  }
  return hollows;
}

/**
 * The cross-section of columns × rows cells, outline running from y towards z, holes the other way round. Width (along z) is
 * columns × pitch, height (along y) rows × pitch. Slots are numbered along their face in counting order A → B → C → D; bores by
 * rows from −y, then from −z. The cell must not be `impossible`. A closed face needs `closedWall`; without it the face stays open.
 */
export function crossSection(cell: Cell, columns: number, rows: number, closed: ReadonlySet<FaceName>): CrossSection {
  const half: Envelope = { y: (rows * cell.pitch) / 2, z: (columns * cell.pitch) / 2 };
  const outer: Pair[] = [];
  const holes: Pair[][] = [];
  const slots: Slot[] = [];
  const corner = cornerHollow(cell);
  for (const side of sidesOf(half, columns, rows)) {
    const skin = closed.has(side.face) ? cell.closedWall : undefined;
    middles(side.cells, cell.pitch).forEach((across, index) => {
      slots.push(slotOf(cell, side, index, across, skin));
      if (skin === undefined) for (const [s, d] of openSlot(cell, across)) outer.push(side.at(s, d));
      else holes.push(mirrored(cavitySide(cell, skin), across).map(([s, d]) => side.at(s, d)));
    });
    const radius = cell.cornerRadius;
    for (const [along, up] of quarterArc(radius, cell.chordError)) {
      outer.push(side.at(side.half - radius + along, radius - up));
    }
    if (corner) holes.push(corner.map(([u, v]) => side.at(side.half - u, v)));
  }
  if (cell.cellWall !== undefined) {
    for (const hollow of innerHollows(cell, half, columns, rows, cell.cellWall)) holes.push(hollow);
  }
  const bores: Bore[] = [];
  if (cell.bore) {
    for (const y of middles(rows, cell.pitch)) {
      for (const z of middles(columns, cell.pitch)) {
        bores.push({ number: bores.length + 1, at: [y, z], diameter: cell.bore.diameter, thread: cell.bore.thread });
        holes.push(circle([y, z], cell.bore.diameter / 2, cell.chordError));
      }
    }
  }
  return { outer: withoutRepeats(outer), holes: holes.map((hole) => asHole(withoutRepeats(hole))), slots, bores };
}

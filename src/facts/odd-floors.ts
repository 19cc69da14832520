import type { Foothold } from "./footing.ts";

/** An uneven floor under one foot. */
export interface OddFloor {
  readonly foot: Foothold;
  /** "leg-1.foot in a hollow of the floor". */
  readonly words: string;
  /** How far the floor lies below each foot that is not anchored, m, as contacts of the solver are counted. */
  readonly gaps: readonly number[];
}

/** Three feet stand firm on any floor. */
const FIRM = 3;

/**
 * Each foot that is not anchored in turn over a hollow and on a bump, everything else as drawn. A hollow deeper than the frame
 * gives leaves its foot in the air: two feet across the corner and the weight's share of a third then carry it.
 */
export function oddFloors(feet: readonly Foothold[], uneven: number): readonly OddFloor[] {
  const free = feet.filter((foot) => foot.hold !== "anchored");
  if (!(uneven > 0) || feet.length <= FIRM) return [];
  return free.flatMap((foot) => {
    const gaps = (gap: number): readonly number[] => free.map((other) => (other === foot ? gap : 0));
    const { id } = foot.ref;
    return [
      { foot, words: `${id} in a hollow of the floor`, gaps: gaps(uneven) },
      { foot, words: `${id} on a bump of the floor`, gaps: gaps(-uneven) },
    ];
  });
}

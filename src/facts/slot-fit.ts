import type { Growth } from "./sheet-growth.ts";

/** Two slots that face each other, m: between the faces of the bars, and how deep a sheet may go into each. */
export interface FacingSlots {
  readonly opening: number;
  readonly depths: readonly [number, number];
}

export const betweenFloors = ({ opening, depths }: FacingSlots): number => opening + depths[0] + depths[1];

/** The largest sheet that leaves so much room between the floors when it has grown most, m. */
export function largestSize(slots: FacingSlots, spare: number, growth: Growth): number {
  return (betweenFloors(slots) - spare) / (1 + growth.most);
}

/** Room left between the floors when a sheet sawn large by `within` has grown most, m; negative where it jams. */
export function roomLeft(slots: FacingSlots, size: number, within: number, growth: Growth): number {
  return betweenFloors(slots) - (size + within) * (1 + growth.most);
}

/**
 * What stays in one slot, 0 or 1, when a sheet sawn small by `within` has shrunk most and lies at the floor of the other, m;
 * negative where it comes out.
 */
export function leastEngaged(slots: FacingSlots, slot: 0 | 1, size: number, within: number, growth: Growth): number {
  return (size - within) * (1 - growth.least) - slots.opening - slots.depths[slot === 0 ? 1 : 0];
}

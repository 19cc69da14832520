/** Two coordinates of a plane: [y, z] of a section, [u, v] of a plate; m. */
export type Pair = readonly [number, number];

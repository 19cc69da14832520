/** Element of an array of reals at an index known to lie within it. */
export const real = (values: Float64Array, index: number): number => values[index] as number;

/** Element of an array of integers at an index known to lie within it. */
export const int = (values: Int32Array, index: number): number => values[index] as number;

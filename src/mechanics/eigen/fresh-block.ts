/** Vectors that go through the factor together; also the multiplicity that is seen at once. */
export const BLOCK = 4;

/** BLOCK answers of n entries each to numbers without pattern: directions in which `act` acts. The generator repeats, so results do. */
export function freshBlock(
  n: number,
  act: (vectors: Float64Array, count: number) => Float64Array,
  round: number,
): Float64Array {
  let state = 12345 + 7919 * round;
  const raw = new Float64Array(n * BLOCK).map(() => {
    state = (state * 48271) % 2147483647; // Park and Miller 1988
    return state / 2147483647 - 0.5;
  });
  // Applied twice: stiff directions, which have no part in the modes looked for, fade.
  return act(act(raw, BLOCK), BLOCK);
}

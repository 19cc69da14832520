/** The integer at a place the caller knows to exist. */
export function at(list: Int32Array, place: number): number {
  return list[place] as number;
}

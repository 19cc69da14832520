const PIECES = /\d+|\D+/g;

/** Negative, zero or positive as people count: "b2" before "b10"; the same in every locale. */
export function compareNaturally(a: string, b: string): number {
  const [left, right] = [a.match(PIECES) ?? [], b.match(PIECES) ?? []];
  for (let i = 0; i < Math.min(left.length, right.length); i++) {
    const [one = "", other = ""] = [left[i], right[i]];
    const difference = Number(one) - Number(other);
    // Words are no numbers: their difference is none either.
    if (difference !== 0 && !Number.isNaN(difference)) return difference;
    if (one !== other) return one < other ? -1 : 1;
  }
  return left.length - right.length;
}

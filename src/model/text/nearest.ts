/** Words longer than this are compared no further: a suggestion for them helps nobody. */
const WORD_LENGTH = 64;
/** Up to a third of the letters may differ. */
const LETTERS_PER_SLIP = 3;

/**
 * Optimal string alignment distance: insertions, deletions, substitutions and swaps of neighbours each cost 1.
 * Restricted Damerau-Levenshtein, three rolling rows. Returns limit + 1 as soon as the distance must exceed the limit.
 */
export function editDistance(a: string, b: string, limit = Number.POSITIVE_INFINITY): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let older: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min((previous[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (previous[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, (older[j - 2] ?? 0) + 1);
      }
      row.push(cost);
      least = Math.min(least, cost);
    }
    if (least > limit) return limit + 1;
    older = previous;
    previous = row;
  }
  return previous[b.length] ?? 0;
}

/** Case, hyphens, underscores and blanks are what authors mix up most: they cost nothing. */
function plain(word: string): string {
  return word.toLowerCase().replace(/[-_\s]/g, "");
}

/** The only candidate that the word begins. */
function completed(wanted: string, candidates: readonly string[]): string | undefined {
  if (wanted.length < 2) return undefined;
  const longer = candidates.filter((candidate) => plain(candidate).startsWith(wanted));
  return longer.length === 1 ? longer[0] : undefined;
}

/**
 * The candidate that the word was most likely meant to be, or undefined when none is near. Of several as near the first counts, but in a
 * short word, where one letter is all that tells them apart, none does.
 */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  if (word.length > WORD_LENGTH) return undefined;
  const wanted = plain(word);
  const others = [...candidates].filter((candidate) => candidate !== word && candidate.length <= WORD_LENGTH);
  let best: string | undefined;
  let tied = false;
  let bestCost = Math.max(1, Math.floor(wanted.length / LETTERS_PER_SLIP)) + 1;
  for (const candidate of others) {
    const other = plain(candidate);
    // One slip in a word of one letter leaves nothing in common but the length.
    if (Math.min(wanted.length, other.length) < 2 && wanted !== other) continue;
    const cost = editDistance(wanted, other, bestCost);
    if (cost > bestCost || (cost === bestCost && best === undefined)) continue;
    tied = cost === bestCost;
    if (!tied) best = candidate;
    bestCost = cost;
  }
  if (best === undefined) return completed(wanted, others);
  return tied && wanted.length <= LETTERS_PER_SLIP && bestCost > 0 ? undefined : best;
}

/** The nearest candidate and, up to `most` in all, the others that are as near. */
export function nearestFew(word: string, candidates: Iterable<string>, most: number): readonly string[] {
  const all = [...candidates];
  const best = nearest(word, all);
  if (best === undefined) return [];
  const wanted = plain(word);
  const cost = editDistance(wanted, plain(best), WORD_LENGTH);
  const alike = all.filter(
    (other) => other !== best && other.length <= WORD_LENGTH && editDistance(wanted, plain(other), cost) === cost,
  );
  return [best, ...alike].slice(0, most);
}

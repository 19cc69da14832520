/** The runs of digits and letters of a name. */
function pieces(name: string): readonly string[] {
  return name.toLowerCase().match(/[a-z0-9]+/g) ?? [];
}

const digits = (name: string): string => name.replace(/\D/g, "");

/**
 * Candidates that have something of the word in them, in their order and at most `most`: first those that begin with its digits ("4040":
 * 40x40-8), then those with one of its pieces ("8": 40x40-8, 80x80-8). None where they have nothing in common.
 */
export function kinOf(word: string, candidates: Iterable<string>, most: number): readonly string[] {
  const all = [...candidates];
  const wanted = digits(word);
  const begun = wanted.length > 1 ? all.filter((one) => digits(one).startsWith(wanted)) : [];
  if (begun.length > 0) return begun.slice(0, most);
  const own = new Set(pieces(word));
  return all.filter((one) => pieces(one).some((piece) => own.has(piece))).slice(0, most);
}

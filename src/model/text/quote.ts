/** Longest piece of an input that a message repeats, in code points. */
const QUOTED_LENGTH = 40;

/**
 * Code points that do not show as what they are: controls, soft hyphen, zero-width, line and paragraph separators, bidi marks and
 * embeddings, invisible operators, byte order mark, lone surrogates, tags. Unicode categories Cc, Cf, Cs, Zl, Zp, plus the
 * fillers that print as nothing.
 */
const HIDDEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\u034f\u115f\u1160\u17b4\u17b5\u180b-\u180d\u3164\ufe00-\ufe0f\uffa0]/u;

/** The text with everything hidden written as \u escapes. */
export function showHidden(text: string): string {
  let shown = "";
  for (const character of text) {
    if (!HIDDEN.test(character)) {
      shown += character;
      continue;
    }
    for (let i = 0; i < character.length; i++) {
      shown += `\\u${character.charCodeAt(i).toString(16).padStart(4, "0")}`;
    }
  }
  return shown;
}

/** A piece of the input as a message may repeat it: at most 40 characters, nothing hidden. */
export function quote(token: string): string {
  // Two units a code point at most, so this slice holds enough and stays short for a token of any length.
  const points = Array.from(token.slice(0, 2 * QUOTED_LENGTH + 2));
  if (points.length <= QUOTED_LENGTH) return showHidden(token);
  return `${showHidden(points.slice(0, QUOTED_LENGTH - 1).join(""))}…`;
}

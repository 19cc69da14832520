/** Longest piece of an input that a message repeats, in code points. */
const QUOTED_LENGTH = 40;

/**
 * Code points that do not show as what they are. Unicode categories Cc (controls), Cf (soft hyphen, zero-width, bidi marks, byte order
 * mark, tags), Cs (lone surrogates), Zl, Zp, blanks other than the space, and the fillers and variation selectors that print as nothing.
 */
const HIDDEN_CLASS = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]|(?! )\p{Zs}/u;
const HIDDEN_RANGES: readonly (readonly [number, number])[] = [
  [0x034f, 0x034f],
  [0x115f, 0x1160],
  [0x17b4, 0x17b5],
  [0x180b, 0x180f],
  [0x3164, 0x3164],
  [0xfe00, 0xfe0f],
  [0xffa0, 0xffa0],
  [0xe0100, 0xe01ef],
];

function isHidden(character: string): boolean {
  if (HIDDEN_CLASS.test(character)) return true;
  const point = character.codePointAt(0) ?? 0;
  return HIDDEN_RANGES.some(([first, last]) => point >= first && point <= last);
}

/** The text with everything hidden written as \u escapes. */
export function showHidden(text: string): string {
  let shown = "";
  for (const character of text) {
    if (!isHidden(character)) {
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

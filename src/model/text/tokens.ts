import { STRING_LENGTH } from "./limits.ts";
import { quote } from "./quote.ts";

/** Tells of something wrong between two offsets. */
export type Tell = (code: string, start: number, end: number, found: string, expected: string, mend?: string) => void;

export type TokenKind =
  | "{"
  | "}"
  | "["
  | "]"
  | ":"
  | ","
  | "string"
  | "number"
  | "malformed number"
  | "literal"
  | "word"
  | "end";

/** The token last read; one object is written over and over, because a large file has millions. */
export interface Token {
  kind: TokenKind;
  start: number;
  end: number;
  /** A string holds a backslash, so that its text is not what stands between the quotes. */
  escaped: boolean;
  /** A number of so few digits, and not minus zero, that it surely means the same when read. */
  short: boolean;
}

export function newToken(): Token {
  return { kind: "end", start: 0, end: 0, escaped: false, short: false };
}

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD_END = /[\s{}[\]:,"'/#]|$/g;
const ODD_BLANKS = /(?:(?![\t\n\r ])[\s\p{Cc}\p{Cf}\p{Zl}\p{Zp}])+/uy;
const LINE_END = /[\r\n]|$/g;
const LITERALS: ReadonlySet<string> = new Set(["true", "false", "null"]);

const QUOTE = 34;
const APOSTROPHE = 39;
const BACKSLASH = 92;
const FIRST_PRINTABLE = 32;
const LETTER_U = 117;
const MINUS = 45;
const POINT = 46;
const ZERO = 48;
/** Doubles tell all decimals of 15 digits apart. */
const SHORT_NUMBER = 15;

function isDigit(unit: number): boolean {
  return unit >= 48 && unit <= 57;
}

function findFrom(pattern: RegExp, text: string, from: number): number {
  pattern.lastIndex = from;
  return pattern.exec(text)?.index ?? text.length;
}

/** The number behind \u, or undefined when four hex digits do not follow. */
function escapedUnit(text: string, backslash: number): number | undefined {
  if (text.charCodeAt(backslash) !== BACKSLASH || text.charCodeAt(backslash + 1) !== LETTER_U) return undefined;
  const digits = text.slice(backslash + 2, backslash + 6);
  return /^[\da-fA-F]{4}$/.test(digits) ? Number.parseInt(digits, 16) : undefined;
}

/** Reads one escape; returns the offset behind it. */
function readEscape(text: string, at: number, tell: Tell): number {
  const letter = text[at + 1] ?? "";
  if ('"\\/bfnrt'.includes(letter) && letter !== "") return at + 2;
  if (letter !== "u") {
    const end = Math.min(at + 2, text.length);
    const mend = letter === "" ? undefined : `write \\\\ for a backslash`;
    // A line end or quote after the backslash is left for the string to end at.
    tell("bad-escape", at, end, quote(text.slice(at, end)), 'one of \\" \\\\ \\/ \\b \\f \\n \\r \\t \\uXXXX', mend);
    return letter < " " ? at + 1 : end;
  }
  const unit = escapedUnit(text, at);
  if (unit === undefined) {
    const digits = /^[\da-fA-F]*/.exec(text.slice(at + 2, at + 6))?.[0] ?? "";
    const end = at + 2 + digits.length;
    tell("bad-escape", at, end, quote(text.slice(at, end)), "four hexadecimal digits after \\u");
    return end;
  }
  if (unit < 0xd800 || unit > 0xdfff) return at + 6;
  const next = escapedUnit(text, at + 6);
  if (unit <= 0xdbff && next !== undefined && next >= 0xdc00 && next <= 0xdfff) return at + 12;
  tell("half-a-character", at, at + 6, text.slice(at, at + 6), "a whole surrogate pair, or the character itself");
  return at + 6;
}

/** Reads the string whose opening quote stands at token.start; sets its end and whether it is escaped. */
function readString(text: string, token: Token, tell: Tell): void {
  const closing = text.charCodeAt(token.start);
  let at = token.start + 1;
  token.kind = "string";
  token.escaped = false;
  for (;;) {
    const unit = text.charCodeAt(at);
    if (unit === closing) {
      token.end = at + 1;
      break;
    }
    if (unit === BACKSLASH) {
      token.escaped = true;
      at = readEscape(text, at, tell);
    } else if (unit >= FIRST_PRINTABLE) {
      at++;
    } else if (unit === 9 || (unit < FIRST_PRINTABLE && unit !== 10 && unit !== 13)) {
      const shown = quote(text.charAt(at));
      tell(
        "control-character",
        at,
        at + 1,
        `the control character ${shown} in a string`,
        "an escape",
        `write ${shown}`,
      );
      at++;
    } else {
      token.end = at;
      const found = Number.isNaN(unit) ? "the end of the file" : "the end of the line";
      const mend = "close the string; a line end inside one is written \\n";
      tell(
        "string-not-closed",
        token.start,
        at,
        `${found} inside the string ${quote(text.slice(token.start, at))}`,
        '"',
        mend,
      );
      break;
    }
  }
  if (token.end - token.start - 2 > STRING_LENGTH) {
    const found = `a string of ${token.end - token.start - 2} characters`;
    tell("string-too-long", token.start, token.end, found, `at most ${STRING_LENGTH} characters`);
  }
  if (closing === APOSTROPHE) {
    const found = quote(text.slice(token.start, token.end));
    tell("single-quotes", token.start, token.end, found, "a string in double quotes", "write \" instead of '");
  }
}

/** Skips a comment; returns the offset behind it, or undefined where there is none. */
function skipComment(text: string, at: number, tell: Tell): number | undefined {
  const block = text.startsWith("/*", at);
  if (!block && !text.startsWith("//", at) && text[at] !== "#") return undefined;
  const close = block ? text.indexOf("*/", at + 2) : -1;
  const end = block ? (close < 0 ? text.length : close + 2) : findFrom(LINE_END, text, at);
  const mend = 'remove it, or keep it as text under a key that holds remarks (a frame has "notes")';
  tell("comment", at, end, `the comment ${quote(text.slice(at, end))}`, "JSON, which has no comments", mend);
  return end;
}

/** Skips blanks, and with a word about them comments and what JSON does not count as a blank. */
function skipToToken(text: string, from: number, tell: Tell): number {
  let at = from;
  for (;;) {
    const unit = text.charCodeAt(at);
    if (unit === 32 || unit === 10 || unit === 13 || unit === 9) {
      at++;
    } else if (unit === 47 || unit === 35) {
      const end = skipComment(text, at, tell);
      if (end === undefined) return at;
      at = end;
    } else if (unit < 32 || unit >= 127) {
      ODD_BLANKS.lastIndex = at;
      const run = ODD_BLANKS.exec(text)?.[0];
      if (run === undefined) return at;
      const end = at + run.length;
      tell("odd-blank", at, end, quote(run), "a space, a tab or a line end between values", "remove it");
      at = end;
    } else {
      return at;
    }
  }
}

/** The common numbers, digits with at most one point, without a regular expression; false leaves the token alone. */
function readShortNumber(text: string, token: Token): boolean {
  let at = token.start;
  if (text.charCodeAt(at) === MINUS) at++;
  const negative = at > token.start;
  const first = text.charCodeAt(at);
  if (!isDigit(first) || (first === ZERO && (negative || isDigit(text.charCodeAt(at + 1))))) return false;
  while (isDigit(text.charCodeAt(at))) at++;
  if (text.charCodeAt(at) === POINT) {
    at++;
    if (!isDigit(text.charCodeAt(at))) return false;
    while (isDigit(text.charCodeAt(at))) at++;
  }
  const next = text[at];
  if (at - token.start > SHORT_NUMBER || (next !== "," && next !== "]" && next !== "}" && next !== "\n")) return false;
  token.kind = "number";
  token.end = at;
  token.short = true;
  return true;
}

function readWord(text: string, token: Token): void {
  token.short = false;
  if (readShortNumber(text, token)) return;
  const start = token.start;
  const unit = text.charCodeAt(start);
  if (isDigit(unit) || unit === MINUS) {
    NUMBER.lastIndex = start;
    if (NUMBER.test(text)) {
      token.end = NUMBER.lastIndex;
      token.kind = "number";
      if (findFrom(WORD_END, text, token.end) === token.end) return;
    }
  }
  token.end = Math.max(findFrom(WORD_END, text, start + 1), start + 1);
  const word = text.slice(start, Math.min(token.end, start + 8));
  if (LITERALS.has(word)) token.kind = "literal";
  else token.kind = /^[+-]?\.?\d/.test(word) ? "malformed number" : "word";
}

/** Reads the token at or behind an offset into the given object. Never fails: whatever stands there becomes some token. */
export function readToken(text: string, from: number, token: Token, tell: Tell): void {
  const start = skipToToken(text, from, tell);
  token.start = start;
  token.end = start + 1;
  const unit = text.charCodeAt(start);
  if (Number.isNaN(unit)) {
    token.kind = "end";
    token.end = start;
  } else if (unit === QUOTE || unit === APOSTROPHE) {
    readString(text, token, tell);
  } else {
    const sign = text[start];
    if (sign === "{" || sign === "}" || sign === "[" || sign === "]" || sign === ":" || sign === ",") token.kind = sign;
    else readWord(text, token);
  }
}

import type { Problem } from "../problem.ts";
import { FILE_BYTES } from "./limits.ts";
import { linesOf } from "./lines.ts";

export interface Decoded {
  /** The text without a byte order mark; absent when the bytes are not UTF-8. */
  readonly text?: string;
  readonly problems: readonly Problem[];
}

const BYTE_ORDER_MARK = 0xfeff;
const WANTED = "UTF-8 text";

function startsWith(bytes: Uint8Array, pattern: readonly number[]): boolean {
  return bytes.length >= pattern.length && pattern.every((byte, i) => bytes[i] === byte);
}

/** UTF-16 and UTF-32 by their byte order mark, or by the zero bytes around a first ASCII character (RFC 4627 section 3). */
function wideEncoding(bytes: Uint8Array): string | undefined {
  if (startsWith(bytes, [0xff, 0xfe, 0, 0]) || startsWith(bytes, [0, 0, 0xfe, 0xff])) return "UTF-32";
  if (startsWith(bytes, [0xff, 0xfe]) || startsWith(bytes, [0xfe, 0xff])) return "UTF-16";
  if (bytes.length < 2) return undefined;
  const [a = 1, b = 1, c = 1, d = 1] = bytes.subarray(0, 4);
  if ((a === 0 && b === 0 && c === 0 && d !== 0) || (a !== 0 && b === 0 && c === 0 && d === 0)) return "UTF-32";
  if ((a === 0) !== (b === 0)) return "UTF-16";
  return undefined;
}

/** Well-formed byte sequences of the Unicode Standard, table 3-7: bounds of the second byte, number of bytes that follow. */
function lead(byte: number): { readonly low: number; readonly high: number; readonly more: number } | undefined {
  if (byte >= 0xc2 && byte <= 0xdf) return { low: 0x80, high: 0xbf, more: 1 };
  if (byte === 0xe0) return { low: 0xa0, high: 0xbf, more: 2 };
  if (byte === 0xed) return { low: 0x80, high: 0x9f, more: 2 };
  if (byte >= 0xe1 && byte <= 0xef) return { low: 0x80, high: 0xbf, more: 2 };
  if (byte === 0xf0) return { low: 0x90, high: 0xbf, more: 3 };
  if (byte >= 0xf1 && byte <= 0xf3) return { low: 0x80, high: 0xbf, more: 3 };
  if (byte === 0xf4) return { low: 0x80, high: 0x8f, more: 3 };
  return undefined;
}

/** What is wrong with the sequence that starts with this byte. */
function fault(bytes: Uint8Array, at: number): string {
  const [first = 0, second = 0] = bytes.subarray(at, at + 2);
  const follows = second >= 0x80 && second <= 0xbf;
  if (first === 0xc0 || first === 0xc1 || (first === 0xe0 && follows) || (first === 0xf0 && follows && second < 0x90)) {
    return "an overlong encoding";
  }
  if (first === 0xed && second >= 0xa0 && follows) return "half of a surrogate pair";
  if (first >= 0xf5 || (first === 0xf4 && follows)) return "no byte that Unicode text can hold";
  if (first < 0xc0) return "a continuation byte without its beginning";
  if (at + 1 + (lead(first)?.more ?? 0) >= bytes.length) return "a character cut off by the end of the file";
  return "a byte of another encoding, perhaps Latin-1";
}

/** Offset of the first byte that begins no well-formed sequence; the length when all are well formed. */
function firstFault(bytes: Uint8Array): number {
  let at = 0;
  while (at < bytes.length) {
    const byte = bytes[at] ?? 0;
    if (byte < 0x80) {
      at++;
      continue;
    }
    const known = lead(byte);
    if (known === undefined) return at;
    for (let i = 1; i <= known.more; i++) {
      const next = bytes[at + i] ?? 0;
      if (next < (i === 1 ? known.low : 0x80) || next > (i === 1 ? known.high : 0xbf)) return at;
    }
    at += known.more + 1;
  }
  return at;
}

function hex(byte: number): string {
  return `0x${byte.toString(16).toUpperCase().padStart(2, "0")}`;
}

/** Bytes to text, strictly: what is not UTF-8 is refused with the byte offset, never replaced. */
export function decode(file: string, bytes: Uint8Array): Decoded {
  const atStart = { file, pointer: "", line: 1, column: 1, endLine: 1, endColumn: 1 };
  const refuse = (code: string, found: string, expected: string, mend: string, place = atStart): Decoded => ({
    problems: [{ code, weight: "error", place, found, expected, mend }],
  });
  if (bytes.length > FILE_BYTES) {
    const most = `at most ${FILE_BYTES} bytes`;
    return refuse("file-too-large", `a file of ${bytes.length} bytes`, most, "split the frame into several files");
  }
  const wide = wideEncoding(bytes);
  if (wide !== undefined) return refuse("not-utf-8", `${wide} text`, WANTED, "save the file as UTF-8");
  let text: string;
  try {
    text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    const at = firstFault(bytes);
    const sound = new TextDecoder().decode(bytes.subarray(0, at));
    const place = linesOf(file, sound).place("", { start: sound.length, end: sound.length });
    const found = `${fault(bytes, at)}: ${hex(bytes[at] ?? 0)} at byte offset ${at}`;
    return refuse("not-utf-8", found, WANTED, "save the file as UTF-8", place);
  }
  if (text.charCodeAt(0) !== BYTE_ORDER_MARK) return { text, problems: [] };
  const mark: Problem = {
    code: "byte-order-mark",
    weight: "warning",
    place: atStart,
    found: "a byte order mark before the text",
    expected: "UTF-8 text without one",
    mend: "save the file as UTF-8 without a byte order mark",
  };
  return { text: text.slice(1), problems: [mark] };
}

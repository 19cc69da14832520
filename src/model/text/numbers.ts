/** A larger relative change between what is written and what is read is worth a warning. */
const LOST_PRECISION = 1e-15;
/** Digits that are compared; a few more than a double holds. */
const COMPARED_DIGITS = 20;
/** A longer malformed number is no slip of the pen. */
const MENDED_LENGTH = 32;

export interface NumberFault {
  readonly code: "number-too-large" | "number-too-small" | "number-loses-digits" | "minus-zero";
  readonly weight: "error" | "warning";
  readonly expected: string;
  readonly mend?: string;
}

interface Decimal {
  /** The first COMPARED_DIGITS significant digits. */
  readonly digits: bigint;
  /** Power of ten of the first of them. */
  readonly exponent: number;
}

/** A number literal as decimal digits; undefined for zero. */
function decimalOf(literal: string): Decimal | undefined {
  const [mantissa = "", power = "0"] = literal.toLowerCase().replace(/^-/, "").split("e", 2);
  const [whole = "", fraction = ""] = mantissa.split(".", 2);
  const all = whole + fraction;
  const first = all.search(/[1-9]/);
  if (first < 0) return undefined;
  const digits = BigInt(all.slice(first, first + COMPARED_DIGITS).padEnd(COMPARED_DIGITS, "0"));
  return { digits, exponent: whole.length - 1 - first + Number(power) };
}

function relativeChange(written: Decimal, read: Decimal): number {
  const shift = read.exponent - written.exponent;
  if (Math.abs(shift) > 1) return 1;
  const a = shift < 0 ? written.digits * 10n : written.digits;
  const b = shift > 0 ? read.digits * 10n : read.digits;
  return Math.abs(Number(a - b)) / Number(a);
}

function losesDigits(literal: string, value: number): boolean {
  if (/^-?\d+$/.test(literal)) return BigInt(literal) !== BigInt(value);
  const written = decimalOf(literal);
  const read = decimalOf(String(value));
  return written !== undefined && read !== undefined && relativeChange(written, read) > LOST_PRECISION;
}

/** What happens to a well-formed JSON number when it becomes a double, if its value changes or vanishes. */
export function numberFault(literal: string): NumberFault | undefined {
  const value = Number(literal);
  if (!Number.isFinite(value)) {
    return { code: "number-too-large", weight: "error", expected: "a number between -1.797e308 and 1.797e308" };
  }
  if (value === 0) {
    if (/^[^eE]*[1-9]/.test(literal)) {
      const expected = "0, or a number of at least 4.941e-324";
      return { code: "number-too-small", weight: "warning", expected, mend: "write 0; it is read as 0" };
    }
    if (!literal.startsWith("-")) return undefined;
    return { code: "minus-zero", weight: "warning", expected: "0", mend: "write 0; it is read as 0" };
  }
  if (!losesDigits(literal, value)) return undefined;
  const expected = "a number of at most 15 significant digits";
  return { code: "number-loses-digits", weight: "warning", expected, mend: `it is read as ${value}` };
}

/** A well-formed spelling of what an author most likely meant by a malformed number, ready to be written into the file. */
export function mendedNumber(word: string): string | undefined {
  if (word.length > MENDED_LENGTH) return undefined;
  const unit = /^(-?\d+(?:\.\d+)?)([A-Za-z°µ%][^\d]*)$/.exec(word);
  if (unit !== null && !/^[eExX]$/.test(unit[2] ?? "")) return `"${unit[1]} ${unit[2]}"`;
  const parts = /^([+-]?)0*(\d*)(?:\.(\d*))?([eE][+-]?\d+)?$/.exec(word);
  if (parts === null) return undefined;
  const [, sign = "", whole = "", fraction = "", power = ""] = parts;
  if (!/\d/.test(word)) return undefined;
  const mended = `${sign === "-" ? "-" : ""}${whole || "0"}${fraction === "" ? "" : `.${fraction}`}${power}`;
  return mended === word ? undefined : mended;
}

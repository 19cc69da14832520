import { quote } from "../model/text/quote.ts";
import { formatQuantity } from "../model/units/format-quantity.ts";
import { QUANTITY_WORDS } from "../model/units/quantity-words.ts";
import { readQuantity, type Unreadable } from "../model/units/read-quantity.ts";
import type { UnitSystem } from "../model/units/unit-system.ts";
import type { Criterion } from "./criterion.ts";
import { rangeOf } from "./range.ts";

/** A limit as its writer meant it, in SI: so much, or a share of the span but at least so much. */
export type Meant = { readonly fixed: number } | { readonly shareOf: number; readonly atLeast: number };

/** What must be known of a criterion to read a limit for it. */
export type Limited = Pick<Criterion, "name" | "quantity" | "standard" | "within">;

/** Digits behind the point of a printed end: a hundredth of a millimetre is told from nought, and a thousandth of an inch. */
const END_DECIMALS = 3;

const SPAN = /^span\b/;
const SHARE = /^span\s*\/\s*(\d+(?:\.\d+)?)(?:\s*,?\s*at least\s+(.+))?$/;

/** From a bar that hangs visibly to one that only a level shows: what a share of the span may be. */
const LEAST_DIVISOR = 20;
const MOST_DIVISOR = 10_000;

/** "a length from 0.1 mm to 100 mm". */
function rangeWords({ quantity, within }: Limited, system: UnitSystem): string {
  const { least, most } = rangeOf(quantity, within);
  const print = (value: number): string => formatQuantity(value, quantity, system, END_DECIMALS);
  const from = least === undefined ? " above 0" : ` from ${print(least)}`;
  const to = most === undefined ? "" : `${least === undefined ? " and up" : ""} to ${print(most)}`;
  return `${quantity === "count" ? "a whole number" : QUANTITY_WORDS[quantity]}${from}${to}`;
}

function readFixed(written: number | string, shown: string, limited: Limited, system: UnitSystem): Meant | Unreadable {
  const read = readQuantity(written, limited.quantity, system);
  if (!("si" in read)) return read;
  const { least, most } = rangeOf(limited.quantity, limited.within);
  const fits = (least === undefined ? read.si > 0 : read.si >= least) && (most === undefined || read.si <= most);
  return fits ? { fixed: read.si } : { found: shown, expected: rangeWords(limited, system) };
}

function readShare(text: string, limited: Limited, system: UnitSystem): Meant | Unreadable {
  const { standard, quantity } = limited;
  if (!SPAN.test(standard)) {
    const mend = `give ${QUANTITY_WORDS[quantity]}, like "${standard}"`;
    return { found: `"${text}", but it has no span`, expected: rangeWords(limited, system), mend };
  }
  const share = SHARE.exec(text);
  const shareOf = Number(share?.[1]);
  if (!(shareOf >= LEAST_DIVISOR && shareOf <= MOST_DIVISOR)) {
    const shares = `"span / ${LEAST_DIVISOR}" to "span / ${MOST_DIVISOR}"`;
    return { found: `"${text}"`, expected: `${shares}, or ${rangeWords(limited, system)}` };
  }
  const floor = share?.[2];
  if (floor === undefined) return { shareOf, atLeast: 0 };
  const read = readFixed(floor, `at least ${floor} in "${text}"`, limited, system);
  return "fixed" in read ? { shareOf, atLeast: read.fixed } : read;
}

/**
 * The standard value of a criterion, whatever the range: a rule means what it says.
 * @throws Error where it is no such quantity
 */
export function readStandard(criterion: Limited): Meant {
  const { name, quantity, standard } = criterion;
  const read = SPAN.test(standard)
    ? readShare(standard, criterion, "mm-N-kg")
    : readQuantity(standard, quantity, "mm-N-kg");
  if ("found" in read) throw new Error(`criterion ${name}: standard value ${read.found}, expected ${read.expected}`);
  return "si" in read ? { fixed: read.si } : read;
}

/**
 * A limit as a house or frame file writes it: a number, text with a unit, or a share of the span where the standard value is one; within
 * the range of its criterion. Never throws.
 */
export function readLimit(written: number | string, limited: Limited, system: UnitSystem): Meant | Unreadable {
  if (typeof written === "number") return readFixed(written, String(written), limited, system);
  const text = written.trim();
  return SPAN.test(text)
    ? readShare(quote(text), limited, system)
    : readFixed(text, `"${quote(text)}"`, limited, system);
}

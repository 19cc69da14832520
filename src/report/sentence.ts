import type { Finding, Measure } from "../inspection/report.ts";
import type { Quantity } from "../model/units/quantity.ts";
import { shareOfLimit } from "./count.ts";

/** Of these a share says nothing that the two numbers do not say better. */
const NO_SHARE: ReadonlySet<Quantity> = new Set<Quantity>(["angle", "count", "ratio", "temperature"]);

/** Whether the sentence tells a value below nought without its sign, as an overlap. */
export function overlaps({ text, measure }: Finding): boolean {
  const measured = measure?.shown.measured ?? "";
  return measured.startsWith("-") && !text.includes(measured) && text.includes(measured.slice(1));
}

/** "; 4.9 mm allowed (165 %)", with the measured value in front where the sentence has not said it. */
function amount(text: string, measure: Measure): string {
  const { measured, limit } = measure.shown;
  const none = measure.quantity === "count" && measure.measured === 0 && text.includes("none");
  const said = none || text.includes(measured) ? "" : `${measured}, `;
  const bound = measure.sense === "at most" ? "allowed" : "needed";
  const share =
    measure.utilisation === undefined || NO_SHARE.has(measure.quantity)
      ? ""
      : ` (${shareOfLimit(measure.utilisation, measure.sense)})`;
  const times = measure.quantity === "ratio" && text.includes(`${measured} times`) ? " times" : "";
  return `; ${said}${limit}${times} ${bound}${share}`;
}

/** What a finding says of its part, with the numbers. */
export function sentence(finding: Finding): string {
  const { text, measure } = finding;
  if (measure === undefined) return text;
  if (!overlaps(finding)) return text + amount(text, measure);
  return measure.limit === 0 ? text : `${text}; ${measure.shown.limit} to spare needed`;
}

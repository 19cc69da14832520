import type { Finding, Measure } from "../inspection/report.ts";
import { percent } from "./count.ts";

/** "; 4.9 mm allowed (165 %)", with the measured value in front where the sentence has not said it. */
function amount(text: string, measure: Measure): string {
  const { measured, limit } = measure.shown;
  const said = text.includes(measured) ? "" : `${measured}, `;
  const bound = measure.sense === "at most" ? "allowed" : "needed";
  const share = measure.utilisation === undefined ? "" : ` (${percent(measure.utilisation)})`;
  return `; ${said}${limit} ${bound}${share}`;
}

/** What a finding says of its part, with the numbers. */
export function sentence({ text, measure }: Finding): string {
  return measure === undefined ? text : text + amount(text, measure);
}

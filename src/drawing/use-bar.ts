import { tidy } from "./svg.ts";

/** The picture reaches to twice the limit; what is beyond is cut off with a break. */
const FULL = 2;
const WIDE = 120;
const HIGH = 10;
const INK = "#20262b";

/** How much of a limit is used, as a bar with the limit as a stroke across it; hatched beyond the limit, so that it reads in grey. */
export function useBar(share: number): string {
  const at = (part: number): number => (Math.min(Math.max(part, 0), FULL) / FULL) * WIDE;
  const within = at(Math.min(share, 1));
  const beyond = at(share) - at(1);
  const over =
    beyond > 0
      ? `<rect x="${tidy(at(1))}" y="1" width="${tidy(beyond)}" height="8" fill="${INK}"/>${share > FULL ? `<path d="M${WIDE - 6} 11l4 -12" stroke="#ffffff" stroke-width="2.5"/>` : ""}`
      : "";
  return `<svg class="use" viewBox="0 0 ${WIDE} ${HIGH}" width="${WIDE}" height="${HIGH}" aria-hidden="true"><rect x="0" y="2.5" width="${tidy(within)}" height="5" fill="#6f8088"/>${over}<path d="M0 9.5h${WIDE}" stroke="#b9b4a6" stroke-width="1"/><path d="M${tidy(at(1))} 0v10" stroke="${INK}" stroke-width="1.5"/></svg>`;
}

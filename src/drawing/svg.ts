import { showHidden } from "../model/text/quote.ts";

/** Text made safe for SVG and HTML, in elements and quoted attributes; characters that hide themselves are shown by their code. */
export const escaped = (text: string): string =>
  showHidden(text)
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&#39;");

/** A coordinate to a hundredth of a picture unit, never "-0". */
export const tidy = (value: number): string => String(Math.round(value * 100) / 100 + 0);

import type { Rgb } from "./colours.ts";
import { element } from "./element.ts";

/** A small field of a colour, for legends. */
export function swatch([r, g, b]: Rgb): HTMLElement {
  const made = element("span", { class: "swatch" });
  made.style.backgroundColor = `rgb(${r},${g},${b})`;
  return made;
}

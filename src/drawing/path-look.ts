/** Colours of a load path, RGB: each differs from its neighbours in lightness too. */
export const PATH_COLOURS = {
  pressed: "1d4f75",
  pulled: "e0a040",
  across: "8aa39b",
  bears: "20262b",
  held: "b8501f",
  floor: "1f5f8b",
} as const;
/** Along the bar by this share of the whole force or more: it is pressed or pulled. */
const ALONG = 0.7;
/** Width of the greatest force as a share of the slimmest bar, and the least, m. */
export const WIDEST = 0.8;
export const LEAST = 0.004;
/** Arrows of forces smaller than this share of the greatest are left out. */
export const WORTH = 0.03;

/** How a stretch of a bar carries a force, of which so much runs along it, pull positive. */
export const carriedAs = (size: number, axial: number): "pressed" | "pulled" | "across" =>
  Math.abs(axial) < ALONG * size ? "across" : axial < 0 ? "pressed" : "pulled";

import { cross, normalise, perpendicularPair } from "../geometry/vector.ts";
import type { Axes } from "./axes.ts";
import type { Link } from "./structure.ts";

/** The axes that the forces of a link are along: those of the bar that ends there; of what turns, its own axis and two square to it. */
export function linkAxes({ freeAbout }: Link, bar: Axes): Axes {
  if (!freeAbout) return bar;
  const x = normalise(freeAbout);
  const [y] = perpendicularPair(x);
  return { x, y, z: cross(x, y) };
}

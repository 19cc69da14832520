import { lerp, type Vec2, type Vec3 } from "../geometry/vector.ts";
import { escaped, tidy } from "./svg.ts";
import type { Symbols } from "./symbols.ts";

/** Signs of loads are drawn in one dark blue: it differs from ink in lightness too. */
const LOAD = "#1f5f8b";
const GROUND = "#20262b";
const HEAD = 7;
const WING = 2.6;

function arrow([x1, y1]: Vec2, [x2, y2]: Vec2, name: string): string {
  const size = Math.hypot(x2 - x1, y2 - y1);
  // Seen end on, an arrow is a dot in a ring.
  if (size < HEAD)
    return `<g data-load="${escaped(name)}"><circle cx="${tidy(x2)}" cy="${tidy(y2)}" r="4" fill="#ffffff" stroke="${LOAD}"/><circle cx="${tidy(x2)}" cy="${tidy(y2)}" r="1.4" fill="${LOAD}"/></g>\n`;
  const [ux, uy] = [(x2 - x1) / size, (y2 - y1) / size];
  const wing = (side: number): string =>
    `${tidy(x2 - HEAD * ux - side * WING * uy)} ${tidy(y2 - HEAD * uy + side * WING * ux)}`;
  return `<path data-load="${escaped(name)}" d="M${tidy(x1)} ${tidy(y1)}L${tidy(x2 - HEAD * ux)} ${tidy(y2 - HEAD * uy)}M${tidy(x2)} ${tidy(y2)}L${wing(1)}L${wing(-1)}Z" fill="${LOAD}" stroke="${LOAD}" stroke-width="1.1"/>\n`;
}

/** A support: a triangle on the ground; rollers under it where it may move, a filled one where it is anchored. */
function support([x, y]: Vec2, hold: Symbols["supports"][number]["hold"], name: string): string {
  const fill = hold === "anchored" ? GROUND : "#ffffff";
  const wheels =
    hold === "rolling"
      ? `<circle cx="${tidy(x - 4)}" cy="${tidy(y + 11)}" r="1.8"/><circle cx="${tidy(x + 4)}" cy="${tidy(y + 11)}" r="1.8"/>`
      : "";
  const ground = hold === "rolling" ? 13 : 9;
  return `<g data-support="${escaped(name)}" fill="${fill}" stroke="${GROUND}" stroke-width="1"><path d="M${tidy(x)} ${tidy(y)}l6 9h-12z"/>${wheels}<path d="M${tidy(x - 10)} ${tidy(y + ground)}h20"/></g>\n`;
}

/** Signs over a picture, put there by `place`. */
export function drawnSymbols(symbols: Symbols, place: (point: Vec3) => Vec2): string {
  const parts: string[] = [];
  for (const { stand, at, hold } of symbols.supports) parts.push(support(place(at), hold, stand));
  for (const { mass, centre, edges } of symbols.masses) {
    const lines = edges.map(([a, b]) => `M${place(a).map(tidy).join(" ")}L${place(b).map(tidy).join(" ")}`).join("");
    const [x, y] = place(centre);
    parts.push(
      `<g data-mass="${escaped(mass)}" fill="none" stroke="${LOAD}" stroke-width="0.8"><path d="${lines}" stroke-dasharray="4 2.5"/><circle cx="${tidy(x)}" cy="${tidy(y)}" r="5" fill="#ffffff"/><path d="M${tidy(x)} ${tidy(y - 5)}a5 5 0 0 1 5 5h-10a5 5 0 0 0 5 5z" fill="${LOAD}" stroke="none"/></g>\n`,
    );
  }
  for (const { load, from, to } of symbols.arrows) parts.push(arrow(place(from), place(to), load));
  // A moment has two heads on its axis.
  for (const { load, from, to } of symbols.moments)
    parts.push(arrow(place(from), place(to), load), arrow(place(from), place(lerp(from, to, 0.8)), load));
  return parts.join("");
}

import type { Vec2 } from "../geometry/vector.ts";

/** Steps of a tenth of a picture unit: less than a hair on paper. */
const STEPS = 10;

/** A number of such steps, as short as it can be said: "12.5", "-.3". */
const said = (steps: number): string => String(steps / STEPS).replace(/^(-?)0\./, "$1.");

/** Two numbers with no more between them than they need to stay apart. */
const pair = (x: number, y: number): string => `${said(x)}${y < 0 ? "" : " "}${said(y)}`;

/**
 * A closed outline as part of a path, each point told from the one before: a frame has many thousands. Points that fall on one another
 * are told once.
 */
export function ringPath(points: readonly Vec2[]): string {
  let path = "";
  let [x, y] = [0, 0];
  for (const [i, point] of points.entries()) {
    const [u, v] = [Math.round(point[0] * STEPS), Math.round(point[1] * STEPS)];
    const [dx, dy] = [u - x, v - y];
    if (i === 0) path += `M${pair(u, v)}`;
    else if (dx === 0 && dy === 0) continue;
    else if (dy === 0) path += `h${said(dx)}`;
    else if (dx === 0) path += `v${said(dy)}`;
    else path += `l${pair(dx, dy)}`;
    [x, y] = [u, v];
  }
  return `${path}z`;
}

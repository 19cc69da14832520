import type { Bar, FaceChoice, Triple } from "../frame.ts";
import type { FaceName } from "../stock/stock.ts";
import { cross, dot, minus, plusTimes, unit } from "./vectors.ts";

/** Within this of plumb a bar counts as vertical, and its face A looks +x at roll 0. */
const VERTICAL = Math.cos(Math.PI / 180);
/** A face looks a way when its normal is within 5° of it. */
const LOOKS = Math.cos((5 * Math.PI) / 180);

/** How a section stands: y out of face A, z out of face B, x from → to. */
export interface SectionAxes {
  readonly x: Triple;
  readonly y: Triple;
  readonly z: Triple;
}

function squareTo(x: Triple, towards: Triple): Triple {
  return unit(plusTimes(towards, x, -dot(x, towards)));
}

/** Section axes as the frame format says: tall, or turned by roll out of the usual position. */
export function sectionAxes({ from, to, stance }: Pick<Bar, "from" | "to" | "stance">): SectionAxes {
  const x = unit(minus(to, from));
  if (stance.by === "tall") {
    const y = squareTo(x, stance.direction);
    return { x, y, z: cross(x, y) };
  }
  const usual = squareTo(x, Math.abs(x[2]) > VERTICAL ? [1, 0, 0] : [0, 0, 1]);
  const side = cross(x, usual);
  const y = plusTimes(plusTimes([0, 0, 0], usual, Math.cos(stance.angle)), side, Math.sin(stance.angle));
  return { x, y, z: cross(x, y) };
}

export function faceNormals({ y, z }: SectionAxes): readonly (readonly [FaceName, Triple])[] {
  return [
    ["A", y],
    ["B", z],
    ["C", plusTimes([0, 0, 0], y, -1)],
    ["D", plusTimes([0, 0, 0], z, -1)],
  ];
}

/** The face that looks most in a direction. */
export function faceTowards(axes: SectionAxes, direction: Triple): FaceName {
  let best: FaceName = "A";
  let most = Number.NEGATIVE_INFINITY;
  for (const [face, normal] of faceNormals(axes)) {
    const share = dot(normal, direction);
    if (share <= most) continue;
    most = share;
    best = face;
  }
  return best;
}

/** Whether a bar has no face that looks the way that is written; of inner and outer that cannot be told from the bar alone. */
export function looksNowhere(bar: Bar, choice: FaceChoice): boolean {
  if (choice.by === "direction") return faceMeant(bar, choice) === undefined;
  // On an upright bar no face is above or below.
  const level = choice.by === "word" && (choice.word === "above" || choice.word === "below");
  return level && Math.abs(sectionAxes(bar).x[2]) > Math.SQRT1_2;
}

/** The face that is meant, where that can be told from the bar alone: inner and outer cannot. */
export function faceMeant(bar: Bar, choice: FaceChoice): FaceName | undefined {
  if (choice.by === "name") return choice.name;
  const axes = sectionAxes(bar);
  if (choice.by === "direction") {
    return faceNormals(axes).find(([, normal]) => dot(normal, choice.direction) >= LOOKS)?.[0];
  }
  if (choice.word === "above") return faceTowards(axes, [0, 0, 1]);
  return choice.word === "below" ? faceTowards(axes, [0, 0, -1]) : undefined;
}

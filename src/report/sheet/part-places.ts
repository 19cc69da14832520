import { pointsOf } from "../../drawing/point-of.ts";
import type { Scene } from "../../drawing/scene.ts";
import type { Frame, Triple } from "../../model/frame.ts";
import { findingPoints } from "./finding-point.ts";
import type { PartOfSheet } from "./parts.ts";

/** Where the balloon of a part with findings points, m; undefined for the frame as a whole, which has none. */
export function placesOfParts(frame: Frame, scene: Scene): (part: PartOfSheet) => Triple | undefined {
  const pointOf = pointsOf(frame, scene);
  const pointOfFinding = findingPoints(frame, scene);
  return ({ findings }) => {
    const own = findings.map(({ finding }) => finding).filter(({ at }) => at.kind !== "frame");
    // What has no place of its own is at what it names.
    const named = own.flatMap(({ related }) => related.map((other) => other.at));
    return [...own.map(pointOfFinding), ...named.map(pointOf)].find((point) => point !== undefined);
  };
}

import { holeNearEnd } from "../../drawing/edge-places.ts";
import { betweenHoles } from "../../drawing/hole-places.ts";
import { pointsOf } from "../../drawing/point-of.ts";
import type { Scene } from "../../drawing/scene.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame, Triple } from "../../model/frame.ts";

/** The holes that a finding on a bar is about: where they are, not the middle of the bar, is where to look. */
function holesPoint(frame: Frame, { rule, at, measure }: Finding): Triple | undefined {
  if (at.kind !== "bar" || !measure) return undefined;
  if (rule === "bore.clash") return betweenHoles(frame, at.id, measure.measured);
  return rule === "hole.near-edge" ? holeNearEnd(frame, at.id, measure.measured)?.at : undefined;
}

/** Where in the frame a finding is, m; undefined for the frame as a whole. */
export function findingPoints(frame: Frame, scene: Scene): (finding: Finding) => Triple | undefined {
  const pointOf = pointsOf(frame, scene);
  return (finding) => holesPoint(frame, finding) ?? pointOf(finding.at);
}

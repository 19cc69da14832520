import type { Pose } from "../../drawing/model3d/poses-data.ts";
import { factOf } from "../../facts/fact.ts";
import { type LoadPath, loadPaths } from "../../facts/load-paths.ts";
import type { View } from "../../facts/response.ts";
import type { Frame } from "../../model/frame.ts";
import type { Ref } from "../../model/ref.ts";
import { shapeOfFinding, viewOfFinding } from "./finding-shape.ts";
import type { PartOfSheet } from "./parts.ts";

/** Parts through which loads pass: what governs them is seen on the way of the loads, not in how the frame bends. */
const PASSED: ReadonlySet<Ref["kind"]> = new Set(["joint", "connector", "screw", "nut", "stand"]);

/** The path of the loads that act in a state, at their own size; one without a push beside them goes first. */
function pathUnder(frame: Frame, { combination: { acts } }: View): LoadPath | undefined {
  const loads = [...acts].sort().join();
  const fits = factOf(loadPaths, frame).filter(({ combination }) => [...combination.acts].sort().join() === loads);
  return fits.find(({ combination }) => combination.side === undefined) ?? fits[0];
}

/** What is shown with each finding that has a shape or load path of its own. */
export function findingPoses(frame: Frame, parts: readonly PartOfSheet[]): readonly Pose[] {
  return parts.flatMap(({ findings }) =>
    findings.map(({ number, finding }): Pose => {
      const view = viewOfFinding(frame, finding);
      const passed = view !== undefined && PASSED.has(finding.at.kind);
      return {
        finding: number,
        shape: passed ? undefined : shapeOfFinding(frame, finding),
        path: passed ? pathUnder(frame, view) : undefined,
      };
    }),
  );
}

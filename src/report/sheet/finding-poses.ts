import type { Pose } from "../../drawing/model3d/poses-data.ts";
import { type ToolTurn, toolTurn } from "../../drawing/tool-turn.ts";
import { factOf } from "../../facts/fact.ts";
import { type LoadPath, loadPaths } from "../../facts/load-paths.ts";
import type { View } from "../../facts/response.ts";
import { toolRoom } from "../../facts/tool-room.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import type { Ref } from "../../model/ref.ts";
import { wayWords } from "../reach/forms.ts";
import { trialOf } from "../reach/sweep-picture.ts";
import { shapeOfFinding, viewOfFinding } from "./finding-shape.ts";
import { guardOf } from "./guard-pictures.ts";
import type { PartOfSheet } from "./parts.ts";
import { TOOL_RULES } from "./tool-rules.ts";

/** Parts through which loads pass: what governs them is seen on the way of the loads, not in how the frame bends. */
const PASSED: ReadonlySet<Ref["kind"]> = new Set(["joint", "connector", "screw", "nut", "stand"]);

/** The path of the loads that act in a state, at their own size; one without a push beside them goes first. */
function pathUnder(frame: Frame, { combination: { acts } }: View): LoadPath | undefined {
  const loads = [...acts].sort().join();
  const fits = factOf(loadPaths, frame).filter(({ combination }) => [...combination.acts].sort().join() === loads);
  return fits.find(({ combination }) => combination.side === undefined) ?? fits[0];
}

/** The turn of the tool that a finding on its room names, or of the best one. */
function turnAt(frame: Frame, { rule, at, shown }: Finding): ToolTurn | undefined {
  if (!TOOL_RULES.has(rule)) return undefined;
  const room = factOf(toolRoom, frame).find(({ screw }) => screw.ref.id === at.id);
  const trial = room && trialOf(room, shown.tool);
  return trial && toolTurn(room, trial, wayWords(trial));
}

function guardPose(frame: Frame, finding: Finding): Pose["guard"] {
  const sign = guardOf(frame, finding);
  const { at, shown } = finding;
  return sign && { sign, words: shown.distance === undefined ? at.id : `${shown.distance} to ${at.id}` };
}

/** What is shown with each finding that has a shape, a load path, the turn of a tool or a guard of its own. */
export function findingPoses(frame: Frame, parts: readonly PartOfSheet[]): readonly Pose[] {
  return parts.flatMap(({ findings }) =>
    findings.map(({ number, finding }): Pose => {
      const view = viewOfFinding(frame, finding);
      const passed = view !== undefined && PASSED.has(finding.at.kind);
      return {
        finding: number,
        shape: passed ? undefined : shapeOfFinding(frame, finding),
        path: passed ? pathUnder(frame, view) : undefined,
        tool: turnAt(frame, finding),
        guard: guardPose(frame, finding),
      };
    }),
  );
}

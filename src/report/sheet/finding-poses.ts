import type { Pose } from "../../drawing/model3d/poses-data.ts";
import { type ToolTurn, toolTurn } from "../../drawing/tool-turn.ts";
import { doorSwings } from "../../facts/door-swings.ts";
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
import { tippingOf } from "./tipping-of.ts";
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

function tipPose(frame: Frame, finding: Finding): Pose["tip"] {
  const tips = tippingOf(frame, finding);
  return tips && { ...tips, words: `tips over ${tips.over.feet.map(({ id }) => id).join(" and ")}` };
}

/** Of its way a door that strikes at once has gone at least this share: nought is as it is drawn. */
const SHUT = 1e-5;

/** By which share of its way each door of the drawing stands open where a door strikes: that one as far as it goes, one that it strikes wide open. */
function openDoors(frame: Frame, { rule, key, at, related }: Finding): readonly number[] {
  const swings = factOf(doorSwings, frame);
  const own = swings.find(({ door }) => door.ref.id === at.id);
  const strike = key === "doors" ? own?.whileOpen : own?.first;
  if (rule !== "door.collides" || !own || !strike) return [];
  const named = new Set(related.map((other) => other.at.id));
  return frame.doors.map(({ ref }) => {
    if (ref.id === at.id) return Math.max(SHUT, strike.turn / own.swing);
    return key === "doors" && named.has(ref.id) ? 1 : 0;
  });
}

/** What is shown with each finding that has a shape, a load path, the turn of a tool, a guard, a way to tip or doors of its own. */
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
        tip: tipPose(frame, finding),
        open: openDoors(frame, finding),
      };
    }),
  );
}

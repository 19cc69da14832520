import { bodies } from "../../facts/bodies.ts";
import { factOf } from "../../facts/fact.ts";
import { governingView } from "../../facts/governing.ts";
import { bentShape, type MovingShape, movingShapes, turningShape } from "../../facts/moving-shapes.ts";
import { response, type View } from "../../facts/response.ts";
import { sways } from "../../facts/sway.ts";
import { type TurningPart, turning } from "../../facts/turning.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";

/** The state under which the value of a finding governs. */
export function viewOfFinding(frame: Frame, { measure }: Finding): View | undefined {
  const found = factOf(response, frame);
  const under = measure?.under;
  if (found.kind !== "solved" || !under) return undefined;
  return governingView(found.views, { under });
}

/** The push under which it gives most along an axis with soft joints: what a frame without bracing is held against. */
function softest(frame: Frame, axis: string | undefined): View | undefined {
  const soft = factOf(sways, frame).filter(
    (push) => push.view.bound === "soft" && (push.axis === 0 ? "x" : "y") === axis?.[0],
  );
  return soft.reduce<(typeof soft)[number] | undefined>((a, b) => (a && a.amount >= b.amount ? a : b), undefined)?.view;
}

/** The part that a finding has turn about lone screws: told by its first bar and the joints that let it. */
function turningPart(frame: Frame, { at, related }: Finding): TurningPart | undefined {
  const named = new Set(related.map((other) => other.at.id));
  const own = factOf(turning, frame).parts.filter(({ bars }) => bars[0] === at.id);
  return own.find(({ joints }) => joints.every((joint) => named.has(joint))) ?? own[0];
}

/** The way of moving that a finding is about: how the frame bends where it governs, buckles, swings, or moves freely. */
export function shapeOfFinding(frame: Frame, finding: Finding): MovingShape | undefined {
  const { rule, key, at, shown } = finding;
  const shapes = factOf(movingShapes, frame);
  const bent = (view: View | undefined) => view && bentShape(view, factOf(bodies, frame));
  switch (rule) {
    case "frame.loose":
      return shapes.find(({ kind, lineOf }) => kind === "loose" && lineOf(at.id) !== undefined);
    case "frame.buckles":
      return shapes.find(({ kind }) => kind === "buckled");
    case "frame.resonates":
      return shapes.find(({ name, swings }) => name === at.id && swings?.side === key);
    case "frame.unbraced":
      return bent(softest(frame, shown.axis));
    case "joint.turns": {
      // What is measured is how a screw is turned under loads; what is not is a part that turns.
      const part = finding.measure ? undefined : turningPart(frame, finding);
      return part ? turningShape(part, factOf(bodies, frame)) : bent(viewOfFinding(frame, finding));
    }
    default:
      return bent(viewOfFinding(frame, finding));
  }
}

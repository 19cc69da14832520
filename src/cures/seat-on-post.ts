import { axesOf, up } from "../facts/axes.ts";
import { along, dot, scale, type Vec3 } from "../geometry/vector.ts";
import type { Bar, Joint } from "../model/frame.ts";
import type { Cure, Edit, Patient, Proposal } from "./cure.ts";
import { jointOf, pointInFile, withoutEnd, writtenBar } from "./written.ts";

/** A direction counts as one of the drawing's own within this cosine: 2°. */
const STRAIGHT = Math.cos((2 * Math.PI) / 180);

/** Room past the bracket's end, m. */
const CLEAR = 0.01;

/** "+x" for a direction along an axis of the drawing, and its opposite. */
function words(direction: Vec3): readonly [string, string] | undefined {
  for (const [i, name] of ["x", "y", "z"].entries()) {
    const c = direction[i as 0 | 1 | 2];
    if (Math.abs(c) > STRAIGHT) return c > 0 ? [`+${name}`, `-${name}`] : [`-${name}`, `+${name}`];
  }
  return undefined;
}

function seat(joint: Joint, rail: Bar, post: Bar, patient: Patient, beyond: number): Proposal | undefined {
  const { file } = patient;
  const [writtenRail, writtenPost] = [writtenBar(file, rail.ref.id), writtenBar(file, post.ref.id)];
  const entry = jointOf(file, rail.ref.id, joint.end);
  const [connector] = joint.connectors;
  const out = scale(axesOf(rail).x, joint.end === "to" ? 1 : -1);
  const faces = words(out);
  if (!writtenRail || !writtenPost || !entry || !connector || !faces || connector.part.kind !== "bracket")
    return undefined;
  const upper = dot(axesOf(post).x, up) > 0 ? "to" : "from";
  const height = rail[joint.end][2];
  const top: Vec3 = [post[upper][0], post[upper][1], height];
  // The rail runs over the post to its outer face, or past it by the length of a bracket.
  const reach = Math.max(post.profile.width, post.profile.height) / 2 + beyond;
  const overPost = along([post[upper][0], post[upper][1], height], out, reach);
  const onLine: Vec3 = along(
    rail[joint.end],
    out,
    dot([overPost[0] - rail[joint.end][0], overPost[1] - rail[joint.end][1], 0], out),
  );
  const edits: Edit[] = [
    { pointer: `/bars/${writtenRail.index}/${joint.end}`, to: pointInFile(onLine, file) },
    { pointer: `/bars/${writtenRail.index}/ends`, to: { ...writtenRail.bar.ends, [joint.end]: { cut: "as-drawn" } } },
    { pointer: `/bars/${writtenPost.index}/${upper}`, to: pointInFile(top, file) },
    { pointer: `/bars/${writtenPost.index}/ends`, to: { ...writtenPost.bar.ends, [upper]: { butt: rail.ref.id } } },
    ...withoutEnd(file, rail.ref.id, joint.end),
    {
      pointer: "/joints/-",
      to: {
        bars: [`${post.ref.id}/${upper}`],
        onto: rail.ref.id,
        by: faces.map((on) => ({ connector: connector.part.name, on })),
      },
    },
  ];
  return { words: `${rail.ref.id} run over the top of ${post.ref.id}, so that it sits bar on bar`, edits };
}

/** Ends the post under the bar that hangs on it, and lets the bar run over it. */
export const seatOnPost: Cure = {
  id: "seat-on-post",
  turn: 1,
  mends: ["joint.hung", "joint.slips"],
  *propose(ailment, patient): Iterable<Proposal> {
    const { frame } = patient;
    const joint = frame.joints.find((j) => j.ref.id === ailment.at.id);
    const rail = joint && frame.bars.find((bar) => bar.ref.id === joint.bar);
    if (!joint || !rail || Math.abs(dot(axesOf(rail).x, up)) > 0.02) return;
    const names = new Set([
      joint.onto,
      ...ailment.related.filter((part) => part.kind === "bar").map((part) => part.id),
    ]);
    for (const post of frame.bars) {
      if (!names.has(post.ref.id) || post === rail || Math.abs(dot(axesOf(post).x, up)) < 0.98) continue;
      const bracket = joint.connectors.find((choice) => choice.part.kind === "bracket")?.part;
      for (const beyond of bracket?.kind === "bracket" ? [0, bracket.legs.b.length + CLEAR] : []) {
        const proposal = seat(joint, rail, post, patient, beyond);
        if (proposal) yield proposal;
      }
    }
  },
};

import { axesOf } from "../facts/axes.ts";
import { length, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Bar } from "../model/frame.ts";
import type { Cure, Edit, Patient, Proposal } from "./cure.ts";
import { type PostPair, postPairs } from "./posts.ts";
import { freshId, pointInFile, writtenBar } from "./written.ts";

/** Height of the new rail, as a share of the posts' height: low enough to stiffen, high enough to step past. */
const SHARE = 0.25;
/** Cosine of what counts as running along an axis. */
const ALONG = 0.98;

function railAt({ a, b, axis }: PostPair, height: number, id: string, patient: Patient): Edit | undefined {
  const at = (post: Bar): Vec3 => [post.from[0], post.from[1], height];
  // Another bar runs there already.
  const taken = patient.frame.bars.some((bar) => {
    if (Math.abs(axesOf(bar).x[axis]) < ALONG) return false;
    return (
      Math.abs(bar.from[2] - height) < 0.1 &&
      (length(subtract(bar.from, at(a))) < 0.05 || length(subtract(bar.to, at(a))) < 0.05)
    );
  });
  const written = writtenBar(patient.file, a.ref.id);
  if (taken || !written) return undefined;
  return {
    pointer: "/bars/-",
    to: {
      id,
      profile: written.bar.profile,
      from: pointInFile(at(a), patient.file),
      to: pointInFile(at(b), patient.file),
    },
  };
}

/** Rails between posts lower down: the frame then sways as two storeys, stiffer by far than as one. */
export const railBetweenPosts: Cure = {
  id: "rail-between-posts",
  turn: 2,
  mends: ["frame.sways", "frame.unbraced", "frame.buckles"],
  *propose(_, patient): Iterable<Proposal> {
    const { frame, file } = patient;
    const bracket = frame.joints.flatMap((joint) => joint.connectors).find((choice) => choice.part.kind === "bracket")
      ?.part.name;
    if (bracket === undefined) return;
    const all = postPairs(frame);
    for (const axes of [[0], [1], [0, 1]] as const) {
      const edits: Edit[] = [];
      const ids: string[] = [];
      for (const pair of all) {
        if (!(axes as readonly number[]).includes(pair.axis)) continue;
        const [low, high] = [Math.min(pair.a.from[2], pair.a.to[2]), Math.max(pair.a.from[2], pair.a.to[2])];
        const id = freshId(file, `brace-${pair.a.ref.id}-${pair.b.ref.id}`);
        const edit = ids.includes(id) ? undefined : railAt(pair, low + SHARE * (high - low), id, patient);
        if (!edit) continue;
        edits.push(edit);
        ids.push(id);
      }
      if (ids.length === 0) continue;
      edits.push({
        pointer: "/joints/-",
        to: { bars: ids, by: ["above", "below"].map((on) => ({ connector: bracket, on })) },
      });
      if (axes.length === 2 && !all.some((pair) => pair.axis === 0)) continue;
      const way = axes.map((axis) => (axis === 0 ? "x" : "y")).join(" and ");
      yield {
        words: `${ids.length === 1 ? "a rail" : `${ids.length} rails`} between the posts along ${way}, lower down`,
        edits,
      };
    }
  },
};

import { axesOf, up } from "../facts/axes.ts";
import { dot, length, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Bar } from "../model/frame.ts";
import type { Cure, Edit, Patient, Proposal } from "./cure.ts";
import { freshId, pointInFile, writtenBar } from "./written.ts";

/** Height of the new rail, as a share of the posts' height: low enough to stiffen, high enough to step past. */
const SHARE = 0.25;
const PLUMB = 0.98;
/** Shorter uprights are no posts, m. */
const TALL = 0.3;
/** Posts stand in line when they are off it by less, m. */
const IN_LINE = 0.005;

interface Pair {
  readonly a: Bar;
  readonly b: Bar;
  /** The axis of the drawing along which they stand in line. */
  readonly axis: 0 | 1;
}

/** Posts that stand beside each other along an axis of the drawing, nothing between them. */
function pairs(patient: Patient): readonly Pair[] {
  const posts = patient.frame.bars.filter(
    (bar) => Math.abs(dot(axesOf(bar).x, up)) > PLUMB && length(subtract(bar.to, bar.from)) > TALL,
  );
  const list: Pair[] = [];
  for (const axis of [0, 1] as const) {
    const across = axis === 0 ? 1 : 0;
    const lines = new Map<number, Bar[]>();
    for (const post of posts) {
      const line = Math.round(post.from[across] / IN_LINE);
      const known = lines.get(line);
      if (known) known.push(post);
      else lines.set(line, [post]);
    }
    for (const line of lines.values()) {
      line.sort((p, q) => p.from[axis] - q.from[axis]);
      for (const [i, b] of line.entries()) {
        const a = line[i - 1];
        if (a) list.push({ a, b, axis });
      }
    }
  }
  return list;
}

function railAt({ a, b, axis }: Pair, height: number, id: string, patient: Patient): Edit | undefined {
  const at = (post: Bar): Vec3 => [post.from[0], post.from[1], height];
  // Another bar runs there already.
  const taken = patient.frame.bars.some((bar) => {
    if (Math.abs(axesOf(bar).x[axis]) < PLUMB) return false;
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
    const all = pairs(patient);
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

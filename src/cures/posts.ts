import { axesOf, up } from "../facts/axes.ts";
import { dot, length, subtract } from "../geometry/vector.ts";
import type { Bar, Frame } from "../model/frame.ts";

/** Two posts that stand beside each other along an axis of the drawing, nothing between them. */
export interface PostPair {
  readonly a: Bar;
  readonly b: Bar;
  readonly axis: 0 | 1;
}

/** A pair in an outermost plane of posts, and the way out. */
export interface OuterPair {
  readonly pair: PostPair;
  readonly on: "+x" | "-x" | "+y" | "-y";
}

/** Cosine of what counts as plumb. */
const PLUMB = 0.98;
/** Shorter uprights are no posts, m. */
const TALL = 0.3;
/** Posts stand in line when they are off it by less, m. */
export const IN_LINE = 0.005;

/** All pairs of neighbouring posts, along x and along y. */
export function postPairs(frame: Frame): readonly PostPair[] {
  const posts = frame.bars.filter(
    (bar) => Math.abs(dot(axesOf(bar).x, up)) > PLUMB && length(subtract(bar.to, bar.from)) > TALL,
  );
  const list: PostPair[] = [];
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

/** The outermost pairs along an axis, those on the far side first. */
export function outerPairs(all: readonly PostPair[], axis: 0 | 1): readonly OuterPair[] {
  const across = axis === 0 ? 1 : 0;
  const own = all.filter((pair) => pair.axis === axis);
  const at = ({ a }: PostPair): number => a.from[across];
  const [far, near] = [Math.max(...own.map(at)), Math.min(...own.map(at))];
  const name = across === 0 ? "x" : "y";
  const side = (place: number, on: OuterPair["on"]): OuterPair[] =>
    own.filter((pair) => at(pair) === place).map((pair) => ({ pair, on }));
  return far > near ? [...side(far, `+${name}`), ...side(near, `-${name}`)] : side(far, `+${name}`);
}

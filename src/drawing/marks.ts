import type { Vec2, Vec3 } from "../geometry/vector.ts";
import { escaped, tidy } from "./svg.ts";

/** A numbered balloon that points at a place of the frame; the heavier the finding, the more ink. */
export interface Mark {
  readonly at: Vec3;
  readonly word: string;
  readonly weight?: "strong" | "plain" | "light";
}

const INK = "#20262b";
const RADIUS = 9;
/** Room between balloons and steps of the spiral on which a free place is sought. */
const GAP = 3;
const TRIES = 90;
/** Between a balloon and the edge of the picture. */
const EDGE = 1;

interface Put {
  readonly mark: Mark;
  readonly anchor: Vec2;
  readonly at: Vec2;
  readonly half: number;
}

const overlaps = (a: Put, at: Vec2, half: number): boolean =>
  Math.abs(a.at[0] - at[0]) < a.half + half + GAP && Math.abs(a.at[1] - at[1]) < 2 * RADIUS + GAP;

/** Moves balloons off one another, the first stays: tried on a spiral outwards from the place meant. */
function spread(marks: readonly Mark[], place: (point: Vec3) => Vec2): readonly Put[] {
  const put: Put[] = [];
  for (const mark of marks) {
    const anchor = place(mark.at);
    const half = Math.max(RADIUS, mark.word.length * 3.4 + 5);
    let at: Vec2 = anchor;
    for (let step = 0; step < TRIES && put.some((other) => overlaps(other, at, half)); step++) {
      const angle = step * 0.9;
      const far = RADIUS * (1.6 + 0.22 * step);
      at = [anchor[0] + far * Math.cos(angle), anchor[1] - far * Math.sin(angle)];
    }
    put.push({ mark, anchor, at, half });
  }
  return put;
}

/** Within the picture, so that its edge cuts none. */
function kept({ at: [x, y], half, ...put }: Put, [width, height]: Vec2): Put {
  const within = (value: number, room: number, size: number): number =>
    2 * room > size ? size / 2 : Math.min(Math.max(value, room), size - room);
  return { ...put, half, at: [within(x, half + EDGE, width), within(y, RADIUS + EDGE, height)] };
}

/** Balloons over a picture of this size; those moved aside keep a line to their place. */
export function drawnMarks(marks: readonly Mark[], place: (point: Vec3) => Vec2, size: Vec2): string {
  const put = spread(marks, place).map((one) => kept(one, size));
  const leaders = put
    .filter(({ anchor, at }) => Math.hypot(anchor[0] - at[0], anchor[1] - at[1]) > 1)
    .map(
      ({ anchor, at, mark }) =>
        `<g data-mark="${escaped(mark.word)}"><path d="M${anchor.map(tidy).join(" ")}L${at.map(tidy).join(" ")}" stroke="${INK}" stroke-width="0.9" fill="none"/><circle cx="${tidy(anchor[0])}" cy="${tidy(anchor[1])}" r="2" fill="${INK}"/></g>\n`,
    );
  const balloons = put.map(({ mark: { word, weight = "plain" }, at: [x, y], half }) => {
    const [fill, text] = weight === "strong" ? [INK, "#ffffff"] : ["#ffffff", INK];
    const edge = weight === "plain" ? "2" : "1";
    const dashes = weight === "light" ? ' stroke-dasharray="2.5 1.8"' : "";
    return (
      `<g data-mark="${escaped(word)}"><rect x="${tidy(x - half)}" y="${tidy(y - RADIUS)}" width="${tidy(2 * half)}" height="${2 * RADIUS}" rx="${RADIUS}" fill="${fill}" stroke="${INK}" stroke-width="${edge}"${dashes}/>` +
      `<text x="${tidy(x)}" y="${tidy(y + 4)}" font-family="sans-serif" font-size="11" font-weight="bold" fill="${text}" text-anchor="middle">${escaped(word)}</text></g>\n`
    );
  });
  return leaders.join("") + balloons.join("");
}

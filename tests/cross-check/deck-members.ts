import { add, scale } from "../../src/geometry/vector.ts";
import type { Member, Vec3 } from "../../src/mechanics/model.ts";
import { type Deck, lines, motionTerms, num, type RigidPoint } from "./deck-writer.ts";
import { solidSection } from "./solid-section.ts";

/** Elements along a member; so many leave only the printed digits between the solvers in square bars. */
const PIECES = 16;
/** Corners and sides of the section in halves of its size, counter-clockwise seen against local x. */
const CORNERS = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;
const SIDES = [
  [0, -1],
  [1, 0],
  [0, 1],
  [-1, 0],
] as const;
const GLOBAL: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const NO_ARM: Vec3 = [0, 0, 0];

/** Name of the element set of a member. */
export const memberSet = (m: number): string => `M${m + 1}`;

/**
 * Writes a member as a row of 20-node bricks; its end sections move rigidly with the nodes they belong to, over the rigid
 * arms. `density` makes line loads and masses: mass per length over area.
 */
export function writeMember(deck: Deck, member: Member, m: number, from: RigidPoint, to: RigidPoint): void {
  if (member.fromReleases || member.toReleases) throw new Error(`member ${m} has releases: not written`);
  const { width, height, E, G } = solidSection(member);
  const start = add(from.at, member.fromOffset ?? NO_ARM);
  const end = add(to.at, member.toOffset ?? NO_ARM);
  const place = (t: number, [y, z]: readonly [number, number]): Vec3 => {
    const axis = add(scale(start, 1 - t), scale(end, t));
    return add(axis, add(scale(member.axes.y, (y * width) / 2), scale(member.axes.z, (z * height) / 2)));
  };
  const row = (t: number, marks: readonly (readonly [number, number])[]): number[] =>
    marks.map((mark) => {
      const at = place(t, mark);
      const node = deck.node(at);
      const held = t === 0 ? from : t === 1 ? to : undefined;
      if (held) {
        for (const [i, direction] of GLOBAL.entries())
          deck.equation([[node, i + 1, -1], ...motionTerms(held, at, direction, 1)]);
      }
      return node;
    });
  const bricks: string[] = [];
  let [corners, sides] = [row(0, CORNERS), row(0, SIDES)];
  for (let i = 0; i < PIECES; i++) {
    const middles = row((i + 0.5) / PIECES, CORNERS);
    const [nextCorners, nextSides] = [row((i + 1) / PIECES, CORNERS), row((i + 1) / PIECES, SIDES)];
    bricks.push(...lines([deck.element(), ...corners, ...nextCorners, ...sides, ...nextSides, ...middles]));
    [corners, sides] = [nextCorners, nextSides];
  }
  const { x, y } = member.axes;
  const set = memberSet(m);
  deck.write(
    `*ELEMENT,TYPE=${deck.elements.bar},ELSET=${set}`,
    ...bricks,
    `*ORIENTATION,NAME=O${m + 1},SYSTEM=RECTANGULAR`,
    [...x, ...y].map(num).join(","),
    `*MATERIAL,NAME=${set}`,
    "*ELASTIC,TYPE=ENGINEERING CONSTANTS",
    `${[E, E, E, 0, 0, 0, G, G].map(num).join(",")},`,
    `${num(G)},293.`,
    "*DENSITY",
    num(solidDensity(member)),
    `*SOLID SECTION,ELSET=${set},MATERIAL=${set},ORIENTATION=O${m + 1}`,
  );
}

/** kg/m³; a member without mass gets a kilogram per metre where only forces are asked for. */
export function solidDensity(member: Member): number {
  const { width, height } = solidSection(member);
  return (member.massPerLength > 0 ? member.massPerLength : 1) / (width * height);
}

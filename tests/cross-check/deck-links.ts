import { dot } from "../../src/geometry/vector.ts";
import type { Anchor, Contact, Spring, Support, Vec3 } from "../../src/mechanics/model.ts";
import { GROUND } from "../../src/mechanics/model.ts";
import { springTo } from "./deck-spring.ts";
import { type Deck, motionTerms, type RigidPoint, type Term, turnTerms } from "./deck-writer.ts";

const ORIGIN: Vec3 = [0, 0, 0];

/** Two nodes whose freedoms 1 to 3 are the relative translations and rotations of a spring along and about its axes. */
export interface SpringNodes {
  readonly shift: number;
  readonly turn: number;
}

/** `moving`: freedom 1 is the motion along the normal; `force`: what acts on it besides its spring, N. */
export interface SeatNode {
  readonly moving: number;
  readonly force: number;
}

const motionOf = (points: readonly RigidPoint[], anchor: Anchor): RigidPoint | undefined =>
  anchor === GROUND ? undefined : points[anchor];

/** Six springs on relative motions (to − from), so the axes may point anywhere and the arms are exact. */
export function writeSpring(deck: Deck, spring: Spring, points: readonly RigidPoint[]): SpringNodes {
  const from = points[spring.from];
  if (!from) throw new Error(`node ${spring.from} does not exist`);
  const to = motionOf(points, spring.to);
  const at = spring.at ?? from.at;
  const nodes = { shift: deck.node(ORIGIN), turn: deck.node(ORIGIN) };
  const { x, y, z } = spring.axes;
  for (const [i, axis] of [x, y, z].entries()) {
    const moved = [...motionTerms(from, at, axis, -1), ...(to ? motionTerms(to, at, axis, 1) : [])];
    const turned = [...turnTerms(from, axis, -1), ...(to ? turnTerms(to, axis, 1) : [])];
    deck.equation([[nodes.shift, i + 1, -1], ...moved]);
    deck.equation([[nodes.turn, i + 1, -1], ...turned]);
  }
  for (const [i, stiffness] of spring.stiffness.entries()) {
    if (stiffness > 0) springTo(deck, i < 3 ? nodes.shift : nodes.turn, (i % 3) + 1, stiffness);
  }
  return nodes;
}

/**
 * The motion of `from` against `to` along the normal, and where the seat is taken as closed a spring on it with the force
 * the gap takes away. (GAPUNI keeps its first stiffness in a static step of small displacements.)
 * Returns the node whose freedom 1 is that motion, and that force.
 */
export function writeContact(deck: Deck, contact: Contact, points: readonly RigidPoint[], closed: boolean): SeatNode {
  const from = points[contact.from];
  if (!from) throw new Error(`node ${contact.from} does not exist`);
  if (contact.friction || contact.stiffness === undefined) throw new Error("only yielding seats without friction");
  const to = motionOf(points, contact.to);
  const at = contact.at ?? from.at;
  const size = Math.sqrt(dot(contact.normal, contact.normal));
  if (Math.abs(size - 1) > 1e-9) throw new Error("the normal of a contact is a unit vector");
  const terms: Term[] = [
    ...motionTerms(from, at, contact.normal, 1),
    ...(to ? motionTerms(to, at, contact.normal, -1) : []),
  ];
  const moving = deck.node(ORIGIN);
  deck.equation([[moving, 1, -1], ...terms]);
  // An element makes all freedoms of its node live.
  deck.write("*BOUNDARY", `${moving},2,3`);
  if (closed) springTo(deck, moving, 1, contact.stiffness);
  return { moving, force: closed ? -contact.stiffness * contact.gap : 0 };
}

export function writeSupport(deck: Deck, { holds }: Support, point: RigidPoint): void {
  for (const [i, hold] of holds.entries()) {
    const [node, freedom] = [i < 3 ? point.shift : point.turn, (i % 3) + 1];
    if (hold === "fixed") deck.write("*BOUNDARY", `${node},${freedom},${freedom}`);
    else if (hold !== "free") springTo(deck, node, freedom, hold);
  }
}

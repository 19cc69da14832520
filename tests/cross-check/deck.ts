import type { FrameModel, LoadCase, Vec3 } from "../../src/mechanics/model.ts";
import { type SpringNodes, writeContact, writeSpring, writeSupport } from "./deck-links.ts";
import { memberSet, solidDensity, writeMember } from "./deck-members.ts";
import { type Deck, type DeckElements, lines, newDeck, num, type RigidPoint } from "./deck-writer.ts";
import { solidSection } from "./solid-section.ts";

/** What the other solver is asked for. */
export type Analysis =
  | { readonly kind: "statics" }
  | { readonly kind: "frequency"; readonly count: number }
  | { readonly kind: "buckling"; readonly count: number };

const elementsFor = ({ kind }: Analysis): DeckElements =>
  kind === "buckling" ? { bar: "C3D20", spring: "C3D8" } : { bar: "C3D20R", spring: "SPRING1" };
/** Of the eigenvalues; CalculiX is content with 1e-2 unless told. */
const EIGEN_ACCURACY = 1e-8;

/** A deck and where in it the frame's nodes, springs and contacts are. */
export interface WrittenDeck {
  readonly text: string;
  readonly points: readonly RigidPoint[];
  readonly springs: readonly SpringNodes[];
  /** Nodes whose first freedom is the motion of `from` against `to` along the normal. */
  readonly contacts: readonly number[];
}

function writeLoads(deck: Deck, model: FrameModel, load: LoadCase, points: readonly RigidPoint[]): void {
  for (const { node, force, moment, at } of load.nodes ?? []) {
    const point = points[node];
    if (!point || at) throw new Error("loads act at nodes that exist");
    const put = (id: number, vector: Vec3): void => {
      for (const [i, value] of vector.entries()) if (value !== 0) deck.write("*CLOAD", `${id},${i + 1},${num(value)}`);
    };
    if (force) put(point.shift, force);
    if (moment) put(point.turn, moment);
  }
  for (const own of load.members ?? []) {
    const member = model.members[own.member];
    if (own.kind !== "line" || own.moment || own.arm || !own.force || !member)
      throw new Error("only even line loads over whole members are written");
    const [force, atEnd] = own.force;
    if (force.some((value, i) => value !== atEnd[i])) throw new Error("only even line loads are written");
    const size = Math.hypot(...force);
    const { width, height } = solidSection(member);
    // An acceleration that gives the solid bar this load per length.
    const acceleration = size / (solidDensity(member) * width * height);
    const direction = force.map((value) => num(value / size)).join(",");
    deck.write("*DLOAD", `${memberSet(own.member)},GRAV,${num(acceleration)},${direction}`);
  }
}

/** The frame and its loads, with these seats closed, as a CalculiX deck of solid bars, linear equations, springs and gaps. */
export function writeDeck(
  title: string,
  model: FrameModel,
  load: LoadCase,
  analysis: Analysis,
  closed: readonly boolean[],
): WrittenDeck {
  const deck = newDeck(title, elementsFor(analysis));
  const points = model.nodes.map((at): RigidPoint => ({ at, shift: deck.node(at), turn: deck.node(at) }));
  const pointOf = (node: number): RigidPoint => {
    const point = points[node];
    if (!point) throw new Error(`node ${node} does not exist`);
    return point;
  };
  for (const [m, member] of model.members.entries())
    writeMember(deck, member, m, pointOf(member.from), pointOf(member.to));
  const springs = (model.springs ?? []).map((spring) => writeSpring(deck, spring, points));
  const seats = (model.contacts ?? []).map((contact, c) => writeContact(deck, contact, points, closed[c] ?? true));
  const contacts = seats.map(({ moving }) => moving);
  for (const support of model.supports ?? []) writeSupport(deck, support, pointOf(support.node));
  if (model.masses?.length) throw new Error("masses at nodes are not written");
  const own = points.flatMap(({ shift, turn }) => [shift, turn]);
  const linked = [...springs.flatMap(({ shift, turn }) => [shift, turn]), ...contacts];
  deck.write("*NSET,NSET=FRAME", ...lines(own));
  if (linked.length > 0) deck.write("*NSET,NSET=LINKS", ...lines(linked));
  deck.write("*STEP");
  if (analysis.kind === "statics") deck.write("*STATIC");
  if (analysis.kind === "frequency") deck.write("*FREQUENCY", String(analysis.count));
  if (analysis.kind === "buckling") deck.write("*BUCKLE", `${analysis.count},${EIGEN_ACCURACY}`);
  writeLoads(deck, model, load, points);
  for (const { moving, force } of seats) if (force !== 0) deck.write("*CLOAD", `${moving},1,${num(force)}`);
  if (analysis.kind === "statics") {
    deck.write("*NODE PRINT,NSET=FRAME", "U");
    if (linked.length > 0) deck.write("*NODE PRINT,NSET=LINKS", "U");
  }
  deck.write("*END STEP");
  return { text: deck.text(), points, springs, contacts };
}

import { distance, type Vec3 } from "../geometry/vector.ts";
import { freeMotions, type Motion, type RigidLink, type TurnLine } from "../mechanics/free-motions.ts";
import { bodies } from "./bodies.ts";
import { type Connection, connections } from "./connections.ts";
import { type Contact, contacts, TOUCH } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { frameMiddle } from "./frame-middle.ts";
import { islands } from "./islands.ts";

/** Bars that can move once the friction of lone screws is left out. */
export interface TurningPart {
  /** Bars that move, in the order of the file. */
  readonly bars: readonly string[];
  readonly kind: "turn" | "slide";
  /** Axis of the turn, or direction of the slide, of the first bar. */
  readonly direction: Vec3;
  readonly point: Vec3;
  /** Joints whose lone screws let it happen. */
  readonly joints: readonly string[];
  /** How fast each bar goes beside the others: turning [rad], and the shift of the origin [m]. */
  readonly rates: ReadonlyMap<string, Motion["rate"]>;
}

export interface Turning {
  readonly parts: readonly TurningPart[];
  /** Islands too large for one analysis: of these each bar was tried against fixed neighbours only. */
  readonly triedSingly: number;
}

/** Unknowns up to which an island is analysed whole: elimination grows with the cube, and 900 take a fraction of a second. */
const WHOLE = 900;

interface Node {
  readonly bars: string[];
}

/** A connector holds a bar against turning with two screws or more, or with lugs in the slot. */
function holdsFast(connection: Connection, index: number): boolean {
  const hold = connection.holds[index];
  return connection.declaredFree || !hold || hold.lugs || hold.screws.length >= 2;
}

class Clusters {
  private readonly parent: number[] = [];
  add(): number {
    this.parent.push(this.parent.length);
    return this.parent.length - 1;
  }
  root(i: number): number {
    let at = i;
    for (let up = this.parent[at] ?? at; up !== at; up = this.parent[at] ?? at) {
      this.parent[at] = this.parent[up] ?? up;
      at = up;
    }
    return at;
  }
  join(a: number, b: number): void {
    this.parent[this.root(a)] = this.root(b);
  }
  get size(): number {
    return this.parent.length;
  }
}

type Linked = RigidLink & {
  /** Undefined where bars only bear on each other. */
  readonly joint: string | undefined;
};

/** Bars and connectors of one island as clusters of rigid bodies with the hinged links between them. */
function model(
  bars: readonly string[],
  of: (bar: string) => readonly Connection[],
  touching: readonly Contact[],
): { nodes: Node[]; links: Linked[] } {
  const clusters = new Clusters();
  const index = new Map(bars.map((bar) => [bar, clusters.add()]));
  const raw: Linked[] = [];
  const seen = new Set<Connection>();
  for (const bar of bars) {
    for (const connection of of(bar)) {
      if (seen.has(connection)) continue;
      seen.add(connection);
      const holds = connection.holds
        .map((hold, i) => ({ hold, i, node: index.get(hold.bar) }))
        .filter((entry) => entry.node !== undefined && entry.hold.screws.length > 0);
      const fast = holds.filter(({ i }) => holdsFast(connection, i));
      const lone = holds.filter(({ i }) => !holdsFast(connection, i));
      const lines = (entry: (typeof holds)[number]): TurnLine[] =>
        entry.hold.screws.map(({ point, axis }) => ({ point, axis }));
      const [first, second] = lone;
      if (fast.length === 0 && lone.length === 2 && first?.node !== undefined && second?.node !== undefined) {
        raw.push({
          a: first.node,
          b: second.node,
          about: [...lines(first), ...lines(second)],
          joint: connection.joint.id,
        });
        continue;
      }
      const hub = fast[0]?.node ?? clusters.add();
      for (const { node } of fast) if (node !== undefined) clusters.join(node, hub);
      for (const entry of lone)
        if (entry.node !== undefined)
          raw.push({ a: entry.node, b: hub, about: lines(entry), joint: connection.joint.id });
    }
  }
  for (const contact of touching) {
    const [a, b] = [index.get(contact.a.bar), index.get(contact.b.bar)];
    if (a === undefined || b === undefined || Math.abs(contact.gap) > TOUCH) continue;
    raw.push({ a, b, points: contact.overlap, normal: contact.normal, joint: undefined });
  }
  const number = new Map<number, number>();
  const nodes: Node[] = [];
  const numberOf = (i: number): number => {
    const root = clusters.root(i);
    let known = number.get(root);
    if (known === undefined) {
      known = nodes.length;
      number.set(root, known);
      nodes.push({ bars: [] });
    }
    return known;
  };
  for (const [bar, i] of index) nodes[numberOf(i)]?.bars.push(bar);
  for (let i = 0; i < clusters.size; i += 1) numberOf(i);
  const links = raw
    .map((link) => ({ ...link, a: numberOf(link.a), b: numberOf(link.b) }))
    .filter((link) => link.a !== link.b);
  return { nodes, links };
}

function partOf(
  motions: readonly Motion[],
  nodes: readonly Node[],
  links: readonly Linked[],
  order: ReadonlyMap<string, number>,
): TurningPart | undefined {
  const moving = new Set(motions.map((motion) => motion.body));
  // A bar that can move in several ways is named once.
  const bars = [...new Set(motions.flatMap((motion) => nodes[motion.body]?.bars ?? []))].sort(
    (a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0),
  );
  const [first] = bars;
  const lead = motions.find((motion) => first !== undefined && nodes[motion.body]?.bars.includes(first));
  if (!lead) return undefined; // a connector that spins by itself moves no bar
  const joints = links.flatMap((link) =>
    link.joint !== undefined && moving.has(link.a) !== moving.has(link.b) ? [link.joint] : [],
  );
  const rates = new Map(
    motions.flatMap(({ body, rate }) => (nodes[body]?.bars ?? []).map((bar) => [bar, rate] as const)),
  );
  const { kind, direction, point } = lead;
  return { bars, kind, direction, point, joints: [...new Set(joints)].sort(), rates };
}

function analyse(nodes: readonly Node[], links: readonly Linked[], size: number): readonly (readonly Motion[])[] {
  const fixed = nodes.reduce((best, node, i) => (node.bars.length > (nodes[best]?.bars.length ?? 0) ? i : best), 0);
  return freeMotions(nodes.length, fixed, links, size);
}

/** Each cluster alone against neighbours held fast. */
function analyseSingly(nodes: readonly Node[], links: readonly Linked[], size: number): readonly (readonly Motion[])[] {
  const own = new Map<number, RigidLink[]>();
  for (const link of links) {
    for (const body of [link.a, link.b]) {
      const known = own.get(body);
      const alone: RigidLink = { ...link, a: 0, b: 1 };
      if (known) known.push(alone);
      else own.set(body, [alone]);
    }
  }
  const found: Motion[][] = [];
  for (const [body] of nodes.entries()) {
    const around = own.get(body);
    if (!around) continue;
    for (const motions of freeMotions(2, 0, around, size)) found.push(motions.map((motion) => ({ ...motion, body })));
  }
  return found;
}

/** Which parts of the frame only the friction of lone screws keeps from turning. */
export const turning = defineFact<
  Turning,
  {
    contacts: typeof contacts;
    connections: typeof connections;
    islands: typeof islands;
    bodies: typeof bodies;
    middle: typeof frameMiddle;
  }
>({
  id: "turning",
  needs: { contacts, connections, islands, bodies, middle: frameMiddle },
  compute({ contacts: touching, connections: known, islands: sets, bodies: all, middle }, frame) {
    let size = 0.1;
    for (const body of all.values())
      size = Math.max(size, distance(body.bounds.min, middle), distance(body.bounds.max, middle));
    const order = new Map(frame.bars.map((bar, i) => [bar.ref.id, i]));
    const parts: TurningPart[] = [];
    let triedSingly = 0;
    for (const bars of sets) {
      if (bars.length < 2) continue;
      const { nodes, links } = model(bars, known.of, touching.all);
      if (links.length === 0) continue;
      const whole = 6 * (nodes.length - 1) <= WHOLE;
      if (!whole) triedSingly += 1;
      for (const motions of whole ? analyse(nodes, links, size) : analyseSingly(nodes, links, size)) {
        const part = partOf(motions, nodes, links, order);
        if (part) parts.push(part);
      }
    }
    return { parts, triedSingly };
  },
});

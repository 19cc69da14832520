import { cross, length, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Contact, FrameModel, Member, Six, Spring } from "../mechanics/model.ts";
import type { Stock } from "../model/stock/stock.ts";
import type { Body } from "./bodies.ts";
import { TEETH } from "./floor-friction.ts";
import type { Foothold } from "./footing.ts";
import { type Bound, basePlateStiffness, connectorStiffness, tieStiffness } from "./joint-stiffness.ts";
import { linkAxes } from "./link-axes.ts";
import { sectionOf } from "./sections.ts";
import type { SheetBrace } from "./sheet-braces.ts";
import type { Link, Structure } from "./structure.ts";

/** free: one foot held, the rest sliding, so that feet lend no thrust. held: friction holds every foot, as far as the combination says. pinned: every foot, in the air as well. */
export type Feet = "free" | "held" | "pinned";

/** Stiffness with which a foot is held sideways and an anchor both ways, N/m: stiff beside any frame, far from ill-conditioned. */
export const HELD = 1e8;
/** A bar end that bears on the bar it meets is at least so stiff square to it, N/m; not counted for soft joints. */
export const SEAT: Readonly<Record<Bound, number>> = { soft: 0, typical: 5e7, stiff: 2e8 };
/** What keeps a declared freedom from being a mechanism: a door in the hand, N·m/rad. */
const HAND = 50;

function springOf(
  link: Link,
  structure: Structure,
  bodies: ReadonlyMap<string, Body>,
  bound: Bound,
): Spring | undefined {
  const body = bodies.get(link.bar);
  if (!body) return undefined;
  const from = structure.nodeAt(link.bar, link.stations[0]);
  const to = structure.nodeAt(link.onto, link.stations[1]);
  const pitch = body.bar.profile.pitch;
  const { x, y, z } = body.axes;
  if (link.freeAbout) {
    const shift = 5e7;
    return {
      from,
      to,
      at: link.at,
      axes: linkAxes(link, body.axes),
      stiffness: [shift, shift, shift, HAND, 5e3, 5e3],
    };
  }
  let turn: [number, number, number] = [0, 0, 0];
  let shift = 0;
  for (const connector of link.connectors) {
    const k = connectorStiffness(connector, [x, y, z], pitch, bound);
    turn = [turn[0] + k.turn[0], turn[1] + k.turn[1], turn[2] + k.turn[2]];
    shift += k.shift;
  }
  if (link.tiedAlong) {
    const k = tieStiffness(link.tiedAlong, [x, y, z], pitch, bound);
    turn = [k[0], k[1], k[2]];
  }
  // A latch holds its point and no angle.
  if (link.connectors.length === 0) shift = 2e7;
  return {
    from,
    to,
    at: link.at,
    axes: { x, y, z },
    stiffness: [Math.max(shift, link.connectors.length > 0 ? SEAT[bound] : 0), shift, shift, turn[0], turn[1], turn[2]],
  };
}

function membersOf(structure: Structure, bodies: ReadonlyMap<string, Body>, stock: Stock): Member[] {
  return structure.pieces.map((piece): Member => {
    const body = bodies.get(piece.bar);
    const material = body && stock.materials.get(body.bar.profile.material);
    if (!body || !material) throw new Error(`bar ${piece.bar} has no material`);
    const section = sectionOf(body.bar.profile);
    const { elasticModulus: E, shearModulus: G, density } = material;
    return {
      from: piece.from,
      to: piece.to,
      axes: body.axes,
      EA: E * section.A,
      EIy: E * section.Iy,
      EIz: E * section.Iz,
      GJ: G * section.J,
      GAy: G * section.Avy,
      GAz: G * section.Avz,
      massPerLength: density * section.A,
    };
  });
}

/** Nodes and members, which hang on the structure alone: the same arrays each time, so that the solver knows them again. */
const barsOf = new WeakMap<Structure, Pick<FrameModel, "nodes" | "members">>();

/** Which foot is held both ways and which only against turning, where the rest slide. */
function anchors(
  feet: readonly Foothold[],
): { readonly first: number; readonly second: number; readonly across: Vec3 } | undefined {
  const [a] = feet;
  if (!a) return undefined;
  let second = 0;
  for (const [i, foot] of feet.entries()) {
    const far = length(subtract(foot.at, a.at));
    if (far > length(subtract(feet[second]?.at ?? a.at, a.at)) + 1e-9) second = i;
  }
  const line = subtract(feet[second]?.at ?? a.at, a.at);
  const size = Math.hypot(line[0], line[1]);
  return { first: 0, second, across: size < 1e-9 ? [0, 1, 0] : [-line[1] / size, line[0] / size, 0] };
}

/** Which contact of the model each foot is; those that are anchored are none. */
export function contactsOf(feet: readonly Foothold[]): readonly (number | undefined)[] {
  let contact = 0;
  return feet.map((foot) => (foot.hold === "anchored" ? undefined : contact++));
}

/** The frame as the solver takes it, for one joint stiffness, one way the feet hold and the sheets that brace it. */
export function solverModel(
  structure: Structure,
  bodies: ReadonlyMap<string, Body>,
  feet: readonly Foothold[],
  stock: Stock,
  bound: Bound,
  way: Feet,
  braces: readonly SheetBrace[],
): FrameModel {
  const springs: Spring[] = [];
  for (const link of structure.links) {
    const spring = springOf(link, structure, bodies, bound);
    if (spring) springs.push(spring);
  }
  const global = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] } as const;
  const contacts: Contact[] = [];
  const held = anchors(feet);
  for (const [i, foot] of feet.entries()) {
    const ground = (axes: Spring["axes"], stiffness: Six<number>): void => {
      springs.push({ from: foot.node, to: "ground", at: foot.at, axes, stiffness });
    };
    if (foot.hold === "anchored") {
      const pitch = bodies.get(structure.nodes[foot.node]?.bar ?? "")?.bar.profile.pitch ?? 0;
      const turn = foot.clamped ? basePlateStiffness(pitch, bound) : 0;
      ground(global, [HELD, HELD, HELD, turn, turn, turn]);
    } else {
      const rubs = way === "held" ? { friction: TEETH, hold: HELD } : {};
      contacts.push({ from: foot.node, to: "ground", normal: [0, 0, 1], gap: 0, at: foot.at, ...rubs });
      if (way === "held") continue;
      if (way === "pinned" || i === held?.first) ground(global, [HELD, HELD, 0, 0, 0, 0]);
      else if (i === held?.second)
        ground({ x: held.across, y: cross([0, 0, 1], held.across), z: [0, 0, 1] }, [HELD, 0, 0, 0, 0, 0]);
    }
  }
  let bars = barsOf.get(structure);
  if (!bars) {
    bars = { nodes: structure.nodes.map((node) => node.at), members: membersOf(structure, bodies, stock) };
    barsOf.set(structure, bars);
  }
  return { ...bars, springs, couplings: braces.flatMap(({ couplings }) => couplings), contacts };
}

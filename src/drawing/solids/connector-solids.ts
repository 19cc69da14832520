import type { PlacedConnector, PlacedScrew, ScrewedPart } from "../../facts/placed.ts";
import type { OrientedBox } from "../../geometry/box.ts";
import { drum, extrude } from "../../geometry/extrude.ts";
import { type Prism, prismFromBox } from "../../geometry/prism.ts";
import { add, along, cross, dot, normalise, scale, subtract, type Vec3 } from "../../geometry/vector.ts";
import type { Bracket } from "../../model/stock/stock.ts";
import { type Solid, type Surface, skins } from "./solid.ts";

/** Legs within this cosine of square to each other meet in a corner that one of them fills. */
const SQUARE = 1e-6;

/** The second leg without the corner that the first one fills. */
function trimmed(first: OrientedBox, second: OrientedBox): OrientedBox {
  if (Math.abs(dot(first.axes[0], second.axes[0])) > SQUARE) return second;
  const thickness = 2 * first.half[1];
  return {
    ...second,
    centre: along(second.centre, second.axes[0], thickness / 2),
    half: [second.half[0] - thickness / 2, second.half[1], second.half[2]],
  };
}

/** The side walls of a bracket, between its legs. */
function gussets(part: Bracket, a: OrientedBox, b: OrientedBox): readonly Prism[] {
  const corner = along(along(a.centre, a.axes[0], -a.half[0]), a.axes[1], -a.half[1]);
  const [runA, runB, side] = [a.axes[0], b.axes[0], a.axes[2]];
  const point = (p: number, q: number): Vec3 => along(along(corner, runA, p), runB, q);
  const { length: la, thickness: ta } = part.legs.a;
  const { length: lb, thickness: tb } = part.legs.b;
  const triangle = [point(tb, ta), point(la, ta), point(tb, lb)];
  const half = (part.width - part.gussetThickness) / 2;
  const offsets = part.gussets === 1 ? [0] : part.gussets === 2 ? [-half, half] : [];
  return offsets.map((offset) => {
    const shift = scale(side, offset - part.gussetThickness / 2);
    return extrude(
      triangle.map((p) => add(p, shift)),
      scale(side, part.gussetThickness),
    );
  });
}

/** A plate of any outline: the hull of it decides what it hides, its outline is what is seen. */
function plateSolid(placed: PlacedConnector, thickness: number): Pick<Solid, "prism" | "surfaces"> | undefined {
  const { outline } = placed;
  if (outline === undefined) return undefined;
  const { normal, ring, hull } = outline;
  const rise = scale(normal, thickness);
  const surfaces: Surface[] = [{ kind: "skin", normal, rings: [ring.map((point) => add(point, rise))] }];
  for (const [i, start] of ring.entries()) {
    const end = ring[(i + 1) % ring.length];
    if (end === undefined) continue;
    const out = normalise(cross(subtract(end, start), normal));
    surfaces.push({ kind: "skin", normal: out, rings: [[start, end, add(end, rise), add(start, rise)]] });
  }
  return { prism: extrude(hull, rise), surfaces };
}

/** A hinge or pivot: a plate without more shape than its thickness says is not drawn; its screws are. */
function bodiesOf(placed: PlacedConnector): readonly Pick<Solid, "prism" | "surfaces">[] {
  const { part, solids } = placed;
  if (part.kind === "plate") {
    const plate = plateSolid(placed, part.thickness);
    return plate ? [plate] : [];
  }
  const [a, b] = solids;
  const prisms = a && b ? [prismFromBox(a), prismFromBox(trimmed(a, b))] : solids.map(prismFromBox);
  const walls = a && b && part.kind === "bracket" ? gussets(part, a, b) : [];
  return [...prisms, ...walls].map((prism) => ({ prism, surfaces: skins(prism) }));
}

/** The head of a screw with its socket. Undefined for one without a head. */
function headSolid({ screw, seat, axis, ref, into }: PlacedScrew, known: readonly string[]): Solid | undefined {
  if (!(screw.headHeight > 0 && screw.headDiameter > 0)) return undefined;
  const out = scale(axis, -1);
  const prism = drum(seat, out, screw.headDiameter / 2, screw.headHeight);
  const socket = drum(along(seat, out, screw.headHeight), out, screw.key / 2, 1e-6, 6);
  const recess: Surface = { kind: "recess", normal: out, rings: [socket.faces[0]?.vertices ?? []] };
  return {
    kind: "screw",
    of: ref,
    with: known,
    on: into.kind === "nut" ? into.landing.bar : into.bar,
    prism,
    surfaces: screw.socketDepth > 0 ? [...skins(prism), recess] : skins(prism),
  };
}

/** A connector where it lies: legs, side walls or plate, and the heads of its screws. */
export function connectorSolids(placed: PlacedConnector): readonly Solid[] {
  const known = knownOf(placed);
  const solids = bodiesOf(placed).map((body): Solid => ({ kind: "connector", of: placed.ref, with: known, ...body }));
  return [...solids, ...headSolids(placed)];
}

/** What belongs with a part: its joint, door or panel, and the bars it holds. */
const knownOf = ({ joint, holds }: ScrewedPart): readonly string[] => [joint.id, ...holds.map((hold) => hold.bar)];

/** The heads of the screws of a part. */
export function headSolids(part: ScrewedPart): readonly Solid[] {
  return part.screws.flatMap((screw) => headSolid(screw, knownOf(part)) ?? []);
}

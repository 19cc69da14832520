import {
  along,
  cross,
  distance,
  dot,
  length,
  normalise,
  perpendicularPair,
  scale,
  type Vec3,
} from "../geometry/vector.ts";
import type { Body } from "./bodies.ts";
import type { PlacedScrew, ScrewedPart } from "./placed.ts";

/** Where a tool meets a screw, m. */
export interface Socket {
  readonly screw: PlacedScrew;
  /** On the axis, where the tip of a tool enters: the top of the head, or the mouth of the hole in front of it. */
  readonly mouth: Vec3;
  /** Out of the mouth, towards the hand. */
  readonly out: Vec3;
  /** Along a bar the connector holds, square to the way out: where angles about the screw are counted from. */
  readonly zero: Vec3;
  /** How deep below the mouth the tip lies at work. */
  readonly depth: number;
  /** How far a tool is lifted between two bites: the depth of the socket. */
  readonly bite: number;
  /** Narrowest hole in front of the socket; Infinity where the head lies open. */
  readonly hole: number;
  /** A hexagon that a wrench grips from outside. */
  readonly outside: boolean;
}

/** Top of the head; a countersunk head ends flush with what it holds. */
export function headTop({ screw, seat, axis }: PlacedScrew): Vec3 {
  return screw.head === "countersunk" ? seat : along(seat, axis, -screw.headHeight);
}

/** Sine under which a bar counts as running along the screw. */
const ALONG = 0.1;

/** The direction of the first held bar that does not run along the screw, square to it. */
function acrossScrew(connector: ScrewedPart, out: Vec3, all: ReadonlyMap<string, Body>): Vec3 {
  for (const { bar } of connector.holds) {
    const x = all.get(bar)?.axes.x;
    if (x && length(cross(x, out)) > ALONG) return normalise(along(x, out, -dot(x, out)));
  }
  return perpendicularPair(out)[0];
}

/** Where the key goes into a screw of a connector. Undefined for a screw without a head. */
export function socketOf(
  connector: ScrewedPart,
  placed: PlacedScrew,
  all: ReadonlyMap<string, Body>,
): Socket | undefined {
  const { screw, drive } = placed;
  if (screw.head === "none") return undefined;
  const out = scale(drive.axis, -1);
  const common = { screw: placed, out, zero: acrossScrew(connector, out, all), bite: screw.socketDepth };
  const { part } = connector;
  if (part?.kind === "end-fastener")
    // The key goes through the slot, or a hole in its lips, down to the axis of the fastener's screw.
    return { ...common, mouth: drive.point, depth: part.depth, hole: part.keyHole, outside: false };
  const top = headTop(placed);
  const [hole] = connector.bored;
  if (hole && ((part?.kind === "end-screw" && part.head === "in-slot") || part?.kind === "side-tie")) {
    const depth = distance(drive.point, top) + screw.socketDepth;
    return { ...common, mouth: drive.point, depth, hole: 2 * hole.radius, outside: false };
  }
  if (screw.head === "hex") {
    const { headHeight } = screw;
    return { ...common, mouth: top, depth: headHeight, bite: headHeight, hole: Infinity, outside: true };
  }
  return { ...common, mouth: top, depth: screw.socketDepth, hole: Infinity, outside: false };
}

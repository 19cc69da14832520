import { type Body, bodies, cutPoint } from "../facts/bodies.ts";
import { factOf } from "../facts/fact.ts";
import { screwedParts } from "../facts/screwed-parts.ts";
import { standings } from "../facts/standings.ts";
import { structure } from "../facts/structure.ts";
import { midpoint, scale, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import type { EndName, Ref } from "../model/ref.ts";
import type { Scene } from "./scene.ts";

function middle(points: readonly Vec3[]): Vec3 | undefined {
  if (points.length === 0) return undefined;
  const sum = points.reduce((a, b): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]], [0, 0, 0]);
  return scale(sum, 1 / points.length);
}

/** Where in the frame a part is pointed at, m: the middle of a bar, the cut of an end, the seat of a screw. Undefined for the frame as a whole. */
export function pointsOf(frame: Frame, scene: Scene): (at: Ref) => Vec3 | undefined {
  const all = factOf(bodies, frame);
  const { all: placed, unplaced } = factOf(screwedParts, frame);
  const { links } = factOf(structure, frame);
  const drawn = (id: string): Vec3 | undefined =>
    middle(scene.solids.filter((solid) => solid.of.id === id).flatMap(({ prism }) => prism.vertices));
  const middleOf = (body: Body | undefined): Vec3 | undefined =>
    body && midpoint(cutPoint(body, "from"), cutPoint(body, "to"));
  /** Of a joint that holds nothing as drawn: the end it is on, the point it is written at, or between the bars it is to hold. */
  const asWritten = (id: string): Vec3 | undefined => {
    const joint = frame.joints.find(({ ref }) => ref.id === id);
    const body = joint && all.get(joint.bar);
    if (body) return cutPoint(body, joint.end);
    const written = [...frame.fastenings, ...frame.pivots].find(({ ref }) => ref.id === id);
    if (written) return written.at;
    const held = frame.ties.find(({ ref }) => ref.id === id)?.bars ?? [];
    return middle(held.map((bar) => middleOf(all.get(bar))).filter((point) => point !== undefined));
  };
  const ofJoint = (id: string): Vec3 | undefined =>
    links.find((link) => link.joint.id === id)?.at ??
    middle(placed.filter((one) => one.joint.id === id).flatMap((one) => one.screws.map((screw) => screw.seat))) ??
    drawn(id) ??
    asWritten(id);
  return (at) => {
    switch (at.kind) {
      case "bar":
        return middleOf(all.get(at.id));
      case "end": {
        const slash = at.id.lastIndexOf("/");
        const body = all.get(at.id.slice(0, slash));
        return body && cutPoint(body, at.id.slice(slash + 1) as EndName);
      }
      case "joint":
        return ofJoint(at.id);
      case "connector":
        return (
          unplaced.find((one) => one.ref.id === at.id)?.at ??
          drawn(at.id) ??
          ofJoint(placed.find((one) => one.ref.id === at.id)?.joint.id ?? at.id.slice(0, at.id.lastIndexOf("/")))
        );
      case "screw":
      case "nut": {
        const id = at.kind === "nut" ? at.id.slice(0, at.id.lastIndexOf("/")) : at.id;
        return placed.flatMap((one) => one.screws).find((screw) => screw.ref.id === id)?.seat;
      }
      case "stand":
        return factOf(standings, frame).all.find(({ stand }) => stand.ref.id === at.id)?.top;
      case "mass":
        return frame.masses.find((mass) => mass.ref.id === at.id)?.centre;
      case "door": {
        const door = frame.doors.find((one) => one.ref.id === at.id);
        return door && middle(door.hinges.map((hinge) => hinge.at));
      }
      case "load": {
        const on = frame.loads.find((load) => load.ref.id === at.id)?.on ?? [];
        return middle(on.map(drawn).filter((point) => point !== undefined));
      }
      case "group": {
        const parts = frame.groups.find((group) => group.ref.id === at.id)?.parts ?? [];
        return middle(parts.map(drawn).filter((point) => point !== undefined));
      }
      case "zone": {
        const zone = frame.zones.find((one) => one.ref.id === at.id);
        return zone && midpoint(zone.low, zone.high);
      }
      case "panel":
        return drawn(at.id);
      case "frame":
        return undefined;
    }
  };
}

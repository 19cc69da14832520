import { bodies } from "../facts/bodies.ts";
import { contacts, TOUCH } from "../facts/contacts.ts";
import { factOf } from "../facts/fact.ts";
import { placements } from "../facts/placements.ts";
import { screwedParts } from "../facts/screwed-parts.ts";
import type { Frame } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";

/** Says in words where in the frame a part is: "rail-3, between leg-1 and leg-4". */
export function whereabouts(frame: Frame): (at: Ref) => string {
  const touching = factOf(contacts, frame);
  const all = factOf(bodies, frame);
  const { met } = factOf(placements, frame);
  const onto = new Map<string, string>();
  for (const { joint, contact } of met) onto.set(joint.ref.id, `${joint.bar} onto ${contact.b.bar}`);
  const fastening = new Map([
    ...frame.fastenings.map((f) => [f.ref.id, f.holds.join(" and ")] as const),
    ...[...frame.ties, ...frame.pivots].map(({ ref, bars }) => [ref.id, bars.join(" and ")] as const),
  ]);
  const parts = factOf(screwedParts, frame);
  const jointOf = new Map([...parts.all, ...parts.unplaced].map((part) => [part.ref.id, part.joint]));

  const ofBar = (id: string): string => {
    const names: string[] = [];
    for (const end of ["from", "to"] as const) {
      const nearest = touching.ofEnd(id, end).find((contact) => Math.abs(contact.gap) < 20 * TOUCH);
      if (nearest && !names.includes(nearest.b.bar)) names.push(nearest.b.bar);
    }
    const [first, second] = names;
    if (first && second) return `${id}, between ${first} and ${second}`;
    return first ? `${id}, at ${first}` : id;
  };
  const ofJoint = (id: string): string => {
    const between = onto.get(id) ?? fastening.get(id);
    return between ? `joint ${id}, ${between}` : `joint ${id}`;
  };
  const ofPart = (id: string): string => {
    const of = jointOf.get(id);
    return of && of.kind !== "joint" ? `${of.kind} ${of.id}` : ofJoint(of?.id ?? id);
  };
  return (at) => {
    switch (at.kind) {
      case "bar":
        return ofBar(at.id);
      case "end":
        return ofBar(at.id.slice(0, at.id.lastIndexOf("/")));
      case "joint":
        return all.has(at.id) ? ofBar(at.id) : ofJoint(at.id);
      case "connector":
        return ofPart(at.id);
      case "screw":
      case "nut":
        return ofPart(at.id.split("/").slice(0, 2).join("/"));
      case "frame":
        return "the frame";
      default:
        return at.id;
    }
  };
}

import { dot, subtract, type Vec3 } from "../geometry/vector.ts";
import type { EndName, Ref } from "../model/ref.ts";
import type { FaceName, Slot } from "../model/stock/stock.ts";
import { faceNormal } from "./axes.ts";
import { type Body, bodies, cutStation, onFace } from "./bodies.ts";
import { contacts, TOUCH } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { panelBoxes } from "./panel-boxes.ts";
import { standings } from "./standings.ts";

/** What closes the slots of a bar at its ends once the frame is whole; caps are left out, they go on last. */
export interface SlotEnds {
  /** Bars, panels and feet in front of the mouth of a slot, none where it is open. */
  closing(bar: string, face: FaceName, slot: number, end: EndName): readonly Ref[];
}

/** The middle of the mouth of a slot in the plane of a cut end. */
function mouthOf(body: Body, slot: Slot, end: EndName): Vec3 {
  const p = onFace(body, slot.face, cutStation(body, end), slot.across);
  const normal = faceNormal(body.axes, slot.face);
  return [
    p[0] - (normal[0] * slot.depth) / 2,
    p[1] - (normal[1] * slot.depth) / 2,
    p[2] - (normal[2] * slot.depth) / 2,
  ];
}

/** Whether a point lies over a flat convex outline, seen square to it. */
function lies(outline: readonly Vec3[], normal: Vec3, point: Vec3): boolean {
  let turn = 0;
  return outline.every((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    const [e, r] = [subtract(b, a), subtract(point, a)];
    const side =
      normal[0] * (e[1] * r[2] - e[2] * r[1]) +
      normal[1] * (e[2] * r[0] - e[0] * r[2]) +
      normal[2] * (e[0] * r[1] - e[1] * r[0]);
    if (Math.abs(side) < 1e-12) return true;
    if (turn === 0) turn = Math.sign(side);
    return Math.sign(side) === turn;
  });
}

/** Which slots are closed by what: a nut enters a slot only past a mouth that nothing stands in front of. */
export const slotEnds = defineFact<
  SlotEnds,
  {
    bodies: typeof bodies;
    contacts: typeof contacts;
    standings: typeof standings;
    panels: typeof panelBoxes;
  }
>({
  id: "slot-ends",
  needs: { bodies, contacts, standings, panels: panelBoxes },
  compute({ bodies: all, contacts: touching, standings: standing, panels }, frame) {
    const bars = new Map(frame.bars.map((bar) => [bar.ref.id, bar.ref]));
    const ends = new Map<string, readonly Ref[]>();
    const laid = [...panels.values()].filter((panel) => panel.seats.length === 0 && panel.box);
    for (const body of all.values()) {
      const { id } = body.bar.ref;
      for (const end of ["from", "to"] as const) {
        const met = touching.ofEnd(id, end).filter((contact) => contact.gap < NUT_PASSES);
        const stands = standing.onEnd(id, end);
        for (const slot of body.bar.profile.slots) {
          const mouth = mouthOf(body, slot, end);
          const closing: Ref[] = [];
          for (const contact of met) {
            const bar = bars.get(contact.b.bar);
            if (bar && lies(contact.overlap, contact.normal, mouth)) closing.push(bar);
          }
          for (const { stand, cover, top } of stands) {
            const off = subtract(mouth, top);
            if (Math.sqrt(dot(off, off)) < cover / 2) closing.push(stand.ref);
          }
          for (const { panel, box, normal } of laid) {
            if (!box || dot(normal, body.cuts[end].plane.normal) < 0.999) continue;
            const r = subtract(mouth, box.centre);
            const inside = Math.abs(dot(r, box.axes[0])) < box.half[0] && Math.abs(dot(r, box.axes[1])) < box.half[1];
            if (inside && Math.abs(Math.abs(dot(r, normal)) - box.half[2]) < TOUCH) closing.push(panel.ref);
          }
          ends.set(`${id} ${slot.face}${slot.number} ${end}`, closing);
        }
      }
    }
    return { closing: (bar, face, slot, end) => ends.get(`${bar} ${face}${slot} ${end}`) ?? [] };
  },
});

/** A gap in front of a mouth that still lets no nut in, m: less than the thinnest nut, about 3 mm. */
const NUT_PASSES = 0.003;

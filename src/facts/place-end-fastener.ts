import { along, scale } from "../geometry/vector.ts";
import type { ConnectorChoice } from "../model/frame.ts";
import type { EndName, Ref } from "../model/ref.ts";
import type { EndFastener, FaceName, Slot, Stock } from "../model/stock/stock.ts";
import { faceNormal } from "./axes.ts";
import { type Body, cutStation, onFace } from "./bodies.ts";
import { nutScrew } from "./nut-screw.ts";
import type { PlacedConnector } from "./placed.ts";

/** Puts an end fastener into a slot of the ending bar: its screw runs out of the cut end into the crossing bar's slot. */
export function placeEndFastener(
  part: EndFastener,
  choice: ConnectorChoice,
  joint: Ref<"joint">,
  where: {
    readonly body: Body;
    readonly end: EndName;
    readonly face: FaceName;
    readonly slot: Slot;
    readonly onto: Body;
    readonly ontoFace: FaceName;
  },
  stock: Stock,
): PlacedConnector {
  const { body, end, face, slot, onto, ontoFace } = where;
  const sign = end === "to" ? 1 : -1;
  const out = scale(body.axes.x, sign);
  const normal = faceNormal(body.axes, face);
  const station = cutStation(body, end);
  const tip = along(onFace(body, face, station, slot.across), normal, -part.depth);
  const key = onFace(body, face, station - sign * part.keyFrom, slot.across);
  const screw = nutScrew({
    joint,
    choice,
    hole: "a1",
    body: onto,
    face: ontoFace,
    seat: tip,
    axis: out,
    grip: 0,
    stock,
    drive: { point: key, axis: scale(normal, -1) },
  });
  const inner = station - sign * part.body;
  const deep = along(key, normal, -2 * part.depth);
  return {
    ref: choice.ref,
    joint,
    part,
    choice,
    holds: [
      { bar: body.bar.ref.id, screws: [{ point: tip, axis: out }], lugs: true },
      { bar: onto.bar.ref.id, screws: [{ point: tip, axis: out }], lugs: part.lugs },
    ],
    solids: [],
    pieces: [],
    screws: [screw],
    bored: [
      {
        bar: body.bar.ref.id,
        by: choice.ref,
        what: "key hole",
        line: { from: key, to: deep },
        radius: part.keyHole / 2,
      },
    ],
    inSlots: [
      {
        bar: body.bar.ref.id,
        face,
        slot: slot.number,
        by: choice.ref,
        what: "end fastener",
        from: Math.min(station, inner),
        to: Math.max(station, inner),
      },
    ],
  };
}

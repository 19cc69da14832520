import { along, scale } from "../geometry/vector.ts";
import type { ConnectorChoice } from "../model/frame.ts";
import { type EndName, type Ref, ref } from "../model/ref.ts";
import type { Bore, EndScrew, FaceName } from "../model/stock/stock.ts";
import { faceNormal } from "./axes.ts";
import { type Body, cutPoint } from "./bodies.ts";
import { type Landing, landOn } from "./landing.ts";
import type { Bored, InSlot, PlacedConnector } from "./placed.ts";
import { faceDistance } from "./tubes.ts";

/**
 * Puts a screw through the crossing bar into a tapped core bore of the ending bar. Its head lies behind the lips of the
 * crossing bar's slot, with the key through an access hole from the far side, or on that far face itself.
 */
export function placeEndScrew(
  part: EndScrew,
  choice: ConnectorChoice,
  joint: Ref<"joint">,
  where: {
    readonly body: Body;
    readonly end: EndName;
    readonly bore: Bore;
    readonly onto: Body;
    readonly ontoFace: FaceName;
  },
): PlacedConnector {
  const { body, end, bore, onto, ontoFace } = where;
  const out = scale(body.axes.x, end === "to" ? 1 : -1);
  const mouth = along(along(cutPoint(body, end), body.axes.y, bore.at[0]), body.axes.z, bore.at[1]);
  const depth = 2 * faceDistance(onto, ontoFace);
  const normal = faceNormal(onto.axes, ontoFace);
  const landing = landOn(onto, ontoFace, mouth);
  const lip = landing.slot?.lip ?? 0;
  const grip = part.head === "in-slot" ? lip : depth;
  const seat = along(mouth, normal, -grip);
  const far = along(mouth, normal, -depth);
  const engaged = choice.screw.length - grip;
  const bored: Bored[] = [
    {
      bar: onto.bar.ref.id,
      by: choice.ref,
      what: part.head === "in-slot" ? "access hole" : "hole through the bar",
      line: { from: far, to: mouth },
      radius: part.head === "in-slot" ? part.accessHole / 2 : choice.screw.diameter / 2,
    },
    {
      bar: body.bar.ref.id,
      by: choice.ref,
      what: "end screw",
      line: { from: mouth, to: along(mouth, out, -engaged) },
      radius: choice.screw.diameter / 2,
    },
  ];
  return {
    ref: choice.ref,
    joint,
    part,
    choice,
    holds: [body, onto].map((held) => ({ bar: held.bar.ref.id, screws: [{ point: mouth, axis: out }], lugs: false })),
    solids: [],
    pieces: [],
    screws: [
      {
        ref: ref("screw", `${choice.ref.id}/a1`),
        connector: choice.ref,
        joint,
        hole: "a1",
        screw: choice.screw,
        seat,
        axis: normal,
        grip,
        into: { kind: "bore", bar: body.bar.ref.id, end, bore, engaged },
        drive: { point: part.head === "in-slot" ? far : seat, axis: normal },
      },
    ],
    bored,
    inSlots: filledSlots(part, choice, onto, ontoFace, [landing, landOn(onto, OPPOSITE[ontoFace], far)]),
  };
}

const OPPOSITE: Readonly<Record<FaceName, FaceName>> = { A: "C", B: "D", C: "A", D: "B" };

/** The head fills a stretch of the slot it lies in; a shank through the whole bar, of every slot it crosses. */
function filledSlots(
  part: EndScrew,
  choice: ConnectorChoice,
  onto: Body,
  ontoFace: FaceName,
  landings: readonly Landing[],
): InSlot[] {
  const head = part.head === "in-slot";
  const half = (head ? choice.screw.headDiameter : choice.screw.diameter) / 2;
  return landings.flatMap(({ face, slot, station, off }) => {
    if (!slot || off > slot.cavity / 2 + half || (head && face !== ontoFace)) return [];
    const [bar, what] = [onto.bar.ref.id, head ? "screw head" : "end screw"];
    return [{ bar, face, slot: slot.number, by: choice.ref, what, from: station - half, to: station + half }];
  });
}

import type { Vec3 } from "../geometry/vector.ts";
import type { ConnectorChoice } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { ref } from "../model/ref.ts";
import { nutFor } from "../model/stock/nut-for.ts";
import type { FaceName, Stock } from "../model/stock/stock.ts";
import type { Body } from "./bodies.ts";
import { landOn } from "./landing.ts";
import type { PlacedScrew } from "./placed.ts";

/** A screw through a connector into a T-nut behind a bar's face. */
export function nutScrew(given: {
  readonly joint: Ref;
  readonly choice: Pick<ConnectorChoice, "ref" | "screw" | "nut">;
  readonly hole: string;
  readonly body: Body;
  readonly face: FaceName;
  /** Under the head, m. */
  readonly seat: Vec3;
  /** From head to tip. */
  readonly axis: Vec3;
  /** m */
  readonly grip: number;
  readonly stock: Stock;
  readonly drive?: PlacedScrew["drive"];
}): PlacedScrew {
  const { choice, body, face, seat, axis, grip, stock } = given;
  const id = `${choice.ref.id}/${given.hole}`;
  const point: Vec3 = [seat[0] + axis[0] * grip, seat[1] + axis[1] * grip, seat[2] + axis[2] * grip];
  return {
    ref: ref("screw", id),
    connector: choice.ref,
    joint: given.joint,
    hole: given.hole,
    screw: choice.screw,
    seat,
    axis,
    grip,
    into: {
      kind: "nut",
      ref: ref("nut", `${id}/nut`),
      landing: landOn(body, face, point),
      nut: nutFor(stock, body.bar.profile.slotSize, choice.screw.thread, choice.nut),
    },
    drive: given.drive ?? { point: seat, axis },
  };
}

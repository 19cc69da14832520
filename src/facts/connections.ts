import { dot, subtract } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { type Body, bodies } from "./bodies.ts";
import { contacts } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import type { Hold } from "./placed.ts";
import { placements } from "./placements.ts";
import { sheets } from "./sheets.ts";

/** Something that holds bars together: a connector, a tie, a pivot, hinges, or a sheet screwed to faces. */
export interface Connection {
  readonly by: Ref;
  readonly joint: Ref;
  readonly holds: readonly Hold[];
  /** Meant to turn: hinges and pivots. Its freedom is declared, not a fault. */
  readonly declaredFree: boolean;
}

export interface Connections {
  readonly all: readonly Connection[];
  of(bar: string): readonly Connection[];
}

/** Screws of a sheet along one bar's face: at the ends and at most a pitch apart. */
function sheetHold(body: Body, normal: readonly [number, number, number], pitch: number): Hold {
  const count = Math.max(2, Math.ceil(body.cutLength / pitch) + 1);
  const screws = Array.from({ length: count }, (_, i) => {
    const at = body.reach[0] + (body.cutLength * i) / (count - 1);
    const { from, axes } = { from: body.bar.from, axes: body.axes };
    return {
      point: [from[0] + axes.x[0] * at, from[1] + axes.x[1] * at, from[2] + axes.x[2] * at] as const,
      axis: [-normal[0], -normal[1], -normal[2]] as const,
    };
  });
  return { bar: body.bar.ref.id, screws, lugs: false };
}

/** Everything that holds bars together. */
export const connections = defineFact<
  Connections,
  { bodies: typeof bodies; placements: typeof placements; sheets: typeof sheets; contacts: typeof contacts }
>({
  id: "connections",
  needs: { bodies, placements, sheets, contacts },
  compute({ bodies: all, placements: placed, sheets: laid, contacts: touching }, frame) {
    const list: Connection[] = [];
    for (const connector of placed.connectors) {
      list.push({ by: connector.ref, joint: connector.joint, holds: connector.holds, declaredFree: false });
    }
    for (const tie of frame.ties) {
      const [a, b] = tie.bars;
      const body = all.get(a);
      const contact = touching.of(a).find((seen) => seen.b.bar === b);
      const axis = contact?.normal ?? ([0, 0, 1] as const);
      const screws = body
        ? tie.at.map((at) => ({
            point: [
              body.bar.from[0] + body.axes.x[0] * at,
              body.bar.from[1] + body.axes.x[1] * at,
              body.bar.from[2] + body.axes.x[2] * at,
            ] as const,
            axis,
          }))
        : [];
      const lugs = tie.part.kind === "side-tie" && tie.part.lugs;
      list.push({
        by: tie.ref,
        joint: tie.ref,
        holds: tie.bars.map((bar) => ({ bar, screws, lugs })),
        declaredFree: false,
      });
    }
    for (const pivot of frame.pivots) {
      const screws = [{ point: pivot.at, axis: pivot.axis }];
      list.push({
        by: pivot.ref,
        joint: pivot.ref,
        holds: pivot.bars.map((bar) => ({ bar, screws, lugs: false })),
        declaredFree: true,
      });
    }
    for (const door of frame.doors) {
      for (const hinge of door.hinges) {
        const screws = [{ point: hinge.at, axis: door.axis }];
        list.push({
          by: door.ref,
          joint: door.ref,
          holds: hinge.bars.map((bar) => ({ bar, screws, lugs: false })),
          declaredFree: true,
        });
      }
    }
    for (const sheet of laid) {
      if (sheet.panel.held.kind !== "on-face" || sheet.panel.held.pitch === undefined) continue;
      const pitch = sheet.panel.held.pitch;
      const holds = sheet.bars.flatMap((id) => {
        const body = all.get(id);
        // Only bars whose face lies in the plane of the sheet are screwed to it.
        const flush =
          body &&
          Math.abs(dot(subtract(sheet.corners[0], body.bar.from), sheet.normal)) <
            Math.max(body.half.y, body.half.z) + 0.001;
        return body && flush ? [sheetHold(body, sheet.normal, pitch)] : [];
      });
      list.push({ by: sheet.panel.ref, joint: sheet.panel.ref, holds, declaredFree: false });
    }
    const byBar = new Map<string, Connection[]>();
    for (const connection of list) {
      for (const { bar } of connection.holds) {
        const known = byBar.get(bar);
        if (known) known.push(connection);
        else byBar.set(bar, [connection]);
      }
    }
    return { all: list, of: (bar) => byBar.get(bar) ?? [] };
  },
});

import { signedArea } from "../geometry/polygon.ts";
import type { Vec2 } from "../geometry/vector.ts";
import { bodies } from "./bodies.ts";
import { comesBuilt } from "./comes-built.ts";
import { ends } from "./ends.ts";
import { defineFact } from "./fact.ts";
import { freeFittings } from "./free-fittings.ts";
import { panelFits } from "./panel-fits.ts";
import { panelNotches } from "./panel-notches.ts";
import { placements } from "./placements.ts";
import { screwedParts } from "./screwed-parts.ts";
import { shapedFits } from "./shaped-fits.ts";
import { sheets } from "./sheets.ts";
import { standings } from "./standings.ts";

/** So many of one part of stock. */
export interface PartCount {
  readonly kind: "connector" | "screw" | "nut" | "cap" | "stand" | "sheet" | "gasket";
  readonly name: string;
  readonly count: number;
  /** Of a sheet: its size, m; undefined where its outline is not known. */
  readonly size?: readonly [number, number];
  /** Of a sheet that is no rectangle: its corners, from a corner of the sheet of that size it is cut from, m. */
  readonly corners?: readonly Vec2[];
  /** Of a sheet: the notches in its corners, as given or as they must be cut, m. */
  readonly notches?: readonly [number, number];
  /** Of a strip between slot and panel: the length of the edge it goes along, m. */
  readonly length?: number;
  /** Of one of them, kg; of what weighs next to nothing (screws, nuts, caps, strips) it is not known. */
  readonly mass?: number;
}

type Sized = Pick<PartCount, "size" | "corners" | "notches" | "length" | "mass">;

/** Sizes are told apart to a thousandth of a millimetre. */
const micron = (size: number): number => Math.round(size * 1e6);

/** Area of a sheet with the same notch in all four corners, m². */
const areaOf = ([w, h]: readonly [number, number], [a, b]: readonly [number, number] = [0, 0]): number =>
  w * h - 4 * a * b;

/** What has to lie on the bench beside the bars, counted: all but what comes on pieces that arrive built. */
export const partCounts = defineFact<
  readonly PartCount[],
  {
    placements: typeof placements;
    ends: typeof ends;
    standings: typeof standings;
    parts: typeof screwedParts;
    sheets: typeof sheets;
    fits: typeof panelFits;
    shaped: typeof shapedFits;
    bodies: typeof bodies;
    notched: typeof panelNotches;
    came: typeof comesBuilt;
  }
>({
  id: "part-counts",
  needs: {
    placements,
    parts: screwedParts,
    ends,
    standings,
    sheets,
    fits: panelFits,
    shaped: shapedFits,
    bodies,
    notched: panelNotches,
    came: comesBuilt,
  },
  compute(
    {
      placements: placed,
      parts,
      ends: states,
      standings: standing,
      sheets: laid,
      fits,
      shaped,
      bodies: all,
      notched,
      came,
    },
    frame,
  ) {
    const counts = new Map<string, PartCount>();
    const add = (kind: PartCount["kind"], name: string, own: Sized = {}, more = 1): void => {
      const { size, corners, notches, length } = own;
      const key = JSON.stringify([
        ...[kind, name, size?.map(micron), corners?.map((at) => at.map(micron))],
        ...[notches?.map(micron), length && micron(length)],
      ]);
      const count = (counts.get(key)?.count ?? 0) + more;
      counts.set(key, { kind, name, count, ...own });
    };
    for (const connector of placed.connectors) {
      if (came.around(connector)) continue;
      add("connector", connector.part.name, { mass: connector.part.mass });
      for (const screw of connector.screws) {
        add("screw", screw.screw.name);
        if (screw.into.kind === "nut" && screw.into.nut) add("nut", screw.into.nut.name);
      }
    }
    for (const state of states) {
      // A standard cap goes on a bare end only: where a foot or a bar covers part of it, it would be in the way.
      if (!state.capped || (state.end.cap.kind === "if-open" && state.covers.length > 0)) continue;
      const { cap, bar } = state.end;
      if (came.pieceOf(bar)) continue;
      const profile = frame.bars.find((b) => b.ref.id === bar)?.profile.name ?? "";
      const fitting =
        cap.kind === "part"
          ? cap.part.name
          : [...frame.stock.caps.values()].find((c) => c.profiles.includes(profile))?.name;
      add("cap", fitting ?? `a cap for ${profile}`);
    }
    for (const { stand } of standing.all)
      if (!came.pieceOf(stand.ref.id)) add("stand", stand.part.name, { mass: stand.part.mass });
    for (const { kind, name, count, ...own } of freeFittings(frame, laid, all, parts.free, came))
      add(kind, name, own, count);
    for (const { panel, size, slotPanel } of fits) {
      if (came.pieceOf(panel.ref.id)) continue;
      const gasket = panel.held.kind === "in-slot" ? panel.held.gasket : undefined;
      const { sides } = slotPanel.rectangle ?? { sides: [] };
      // The sides towards − and + of one axis run along the other.
      for (const [i, pair] of gasket ? sides.entries() : [])
        for (const side of pair)
          if (gasket && side.kind === "slot") add("gasket", gasket.name, { length: size[i === 0 ? 1 : 0] });
    }
    for (const panel of frame.panels) {
      if (came.pieceOf(panel.ref.id)) continue;
      const sheet = laid.find((s) => s.panel === panel);
      const cut = shaped.find((fit) => fit.panel === panel);
      const size = panel.size ?? sheet?.size ?? fits.find((fit) => fit.panel === panel)?.size ?? cut?.size;
      const corners = panel.size ? undefined : cut?.corners;
      const notches = panel.notches ?? notched.find((one) => one.panel === panel)?.needed;
      const area = corners ? signedArea(corners) : size && areaOf(size, notches);
      const mass = area && panel.sheet.density * panel.sheet.thickness * area;
      add("sheet", panel.sheet.name, {
        ...(size ? { size } : {}),
        ...(corners ? { corners } : {}),
        ...(notches ? { notches } : {}),
        ...(mass === undefined ? {} : { mass }),
      });
    }
    return [...counts.values()].sort((a, b) =>
      a.kind < b.kind ? -1 : a.kind > b.kind ? 1 : a.name < b.name ? -1 : a.name > b.name ? 1 : 0,
    );
  },
});

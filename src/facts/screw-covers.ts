import { boundsOf } from "../geometry/bounds.ts";
import { boxBounds, type OrientedBox } from "../geometry/box.ts";
import { type Prism, prismFromBox } from "../geometry/prism.ts";
import { prismPenetration } from "../geometry/prism-penetration.ts";
import { overlappingPairs } from "../geometry/sweep-and-prune.ts";
import { along, perpendicularPair, type Vec3 } from "../geometry/vector.ts";
import type { Tool } from "../model/stock/stock.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { panelBoxes } from "./panel-boxes.ts";
import type { PlacedScrew } from "./placed.ts";
import { screwedParts } from "./screwed-parts.ts";

export interface ScrewCovers {
  /** Bars and panels that stand in the straight way of the key, by id; the bars the screw itself joins are not looked at. */
  of(screw: string): readonly string[];
}

/** Reach of the key where stock holds none of the size, m. */
const USUAL_REACH = 0.03;
/** Grazing contact does not stop a key, m. */
const GRAZE = 0.0005;

/** The shortest arm among straight keys of a size, m: less room than that lets no key in. */
function shortestArm(tools: ReadonlyMap<string, Tool>, size: number): number {
  let reach = Infinity;
  for (const tool of tools.values()) {
    if (tool.kind === "hex-key" && Math.abs(tool.key - size) < 1e-5) reach = Math.min(reach, tool.shortArm);
  }
  return Number.isFinite(reach) ? reach : USUAL_REACH;
}

/** The room a straight key needs to enter: as wide as the key, as long as its short arm, from the drive outwards. */
function wayOf(screw: PlacedScrew, reach: number): OrientedBox {
  const { drive, axis } = screw;
  const start = drive.point === screw.seat ? along(screw.seat, axis, -screw.screw.headHeight) : drive.point;
  const half = screw.screw.key / 2;
  const [u, v] = perpendicularPair(drive.axis);
  const middle: Vec3 = along(start, drive.axis, -reach / 2);
  return { centre: middle, axes: [drive.axis, u, v], half: [reach / 2, half, half] };
}

interface Solid {
  readonly id: string;
  readonly prism: Prism;
}

/** What covers every screw once the frame is whole: bars and panels in the straight way of its key. */
export const screwCovers = defineFact<
  ScrewCovers,
  { bodies: typeof bodies; parts: typeof screwedParts; panels: typeof panelBoxes }
>({
  id: "screw-covers",
  needs: { bodies, parts: screwedParts, panels: panelBoxes },
  compute({ bodies: all, parts, panels }, frame) {
    const solids: Solid[] = [];
    for (const body of all.values()) if (body.prism) solids.push({ id: body.bar.ref.id, prism: body.prism });
    for (const [id, { box }] of panels) if (box) solids.push({ id, prism: prismFromBox(box) });
    const ways: { screw: PlacedScrew; box: OrientedBox; held: readonly string[] }[] = [];
    for (const connector of parts.all) {
      const held = connector.holds.map((hold) => hold.bar);
      for (const screw of connector.screws) {
        if (screw.screw.head === "none") continue;
        ways.push({ screw, box: wayOf(screw, shortestArm(frame.stock.tools, screw.screw.key)), held });
      }
    }
    const bounds = [...solids.map((solid) => boundsOf(solid.prism.vertices)), ...ways.map(({ box }) => boxBounds(box))];
    const covers = new Map<string, string[]>();
    for (const [i, j] of overlappingPairs(bounds)) {
      const [solid, way] = [solids[i], ways[j - solids.length]];
      if (!solid || !way || way.held.includes(solid.id)) continue;
      if (prismPenetration(solid.prism, prismFromBox(way.box)).depth < GRAZE) continue;
      const { id } = way.screw.ref;
      const known = covers.get(id);
      if (known) known.push(solid.id);
      else covers.set(id, [solid.id]);
    }
    return { of: (screw) => covers.get(screw) ?? [] };
  },
});

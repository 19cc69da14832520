import type { Body } from "../../facts/bodies.ts";
import type { EndState } from "../../facts/ends.ts";
import { extrude } from "../../geometry/extrude.ts";
import { scale } from "../../geometry/vector.ts";
import type { Stock } from "../../model/stock/stock.ts";
import { type Solid, skins } from "./solid.ts";

/** A cap on a cut end, as thick as the part named or the one in stock for the profile. Undefined where none is on it. */
export function capSolid(body: Body, { end, capped }: EndState, stock: Stock): Solid | undefined {
  if (!capped) return undefined;
  const face = body.sides.find(({ side }) => side === end.end)?.face;
  const part =
    end.cap.kind === "part"
      ? end.cap.part
      : [...stock.caps.values()].find(({ profiles }) => profiles.includes(body.bar.profile.name));
  if (!face || !part || !(part.thickness > 0)) return undefined;
  const prism = extrude(face.vertices, scale(face.normal, part.thickness));
  return { kind: "cap", of: end.ref, with: [body.bar.ref.id], prism, surfaces: skins(prism) };
}

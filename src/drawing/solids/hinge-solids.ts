import { type Body, cutPoint } from "../../facts/bodies.ts";
import { drum } from "../../geometry/extrude.ts";
import { type Prism, prismFromBox } from "../../geometry/prism.ts";
import { along, cross, dot, midpoint, normalise, subtract, type Vec3 } from "../../geometry/vector.ts";
import type { Ref } from "../../model/ref.ts";
import type { Connector } from "../../model/stock/stock.ts";
import { type Solid, skins } from "./solid.ts";

/** A part that lets two bars turn about an axis through a point, or holds them there. */
export interface Hung {
  readonly of: Ref;
  readonly part: Connector;
  readonly at: Vec3;
  readonly axis: Vec3;
  readonly bars: readonly [Body, Body];
  /** Of a door: the bar that turns, and pin or knob with it. */
  readonly turns?: string;
}

/** A latch of any kind is drawn as a knob of this radius and height, m: a symbol. */
const KNOB = 0.012;
/** The pin is drawn at least this thick, m. */
const PIN = 0.004;

function squareTo(axis: Vec3, v: Vec3): Vec3 {
  return along(v, axis, -dot(v, axis));
}

/** Two leaves on the faces of their bars and the pin between them; a knob for what has no pin. */
export function hingeSolids({ of, part, at, axis, bars, turns }: Hung): readonly Solid[] {
  const way = normalise(axis);
  const [a, b] = bars.map((body) =>
    squareTo(way, subtract(midpoint(cutPoint(body, "from"), cutPoint(body, "to")), at)),
  );
  const known = bars.map((body) => body.bar.ref.id);
  const made = (prism: Prism, on?: string): Solid => ({
    kind: "connector",
    of,
    with: known,
    ...(on === undefined ? {} : { on }),
    prism,
    surfaces: skins(prism),
  });
  if (!a || !b) return [];
  // Both bars lie behind the faces that the leaves lie on.
  const behind: Vec3 = [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
  const deep = Math.hypot(...behind) > 1e-6 ? normalise(behind) : normalise(cross(way, subtract(b, a)));
  const out: Vec3 = [-deep[0], -deep[1], -deep[2]];
  if (part.kind !== "hinge" && part.kind !== "pivot") return [made(drum(at, out, KNOB, KNOB), turns)];
  const side = normalise(cross(way, out));
  const broad = Math.max(...part.holes.map((hole) => Math.abs(hole.at[1]) + hole.diameter));
  const long = 2 * Math.max(...part.holes.map((hole) => Math.abs(hole.at[0])));
  const leaves = [a, b].map((to, i) => {
    const sign = dot(to, side) < 0 ? -1 : 1;
    const centre = along(along(at, side, (sign * long) / 2), out, part.thickness / 2);
    const leaf = prismFromBox({ centre, axes: [side, out, way], half: [long / 2, part.thickness / 2, broad] });
    return made(leaf, known[i]);
  });
  const radius = Math.max(part.gap / 2, part.thickness, PIN);
  return [...leaves, made(drum(along(along(at, out, radius), way, -broad), way, radius, 2 * broad), turns)];
}

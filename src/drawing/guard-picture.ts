import { midpoint, type Vec2, type Vec3 } from "../geometry/vector.ts";
import { boxEdges } from "./box-edges.ts";
import type { GuardSign } from "./guard-sign.ts";
import { type Band, lineDrawing } from "./line-drawing.ts";
import { plainScene, type Scene } from "./scene.ts";
import { viewFrom } from "./view.ts";

const SIZE: Vec2 = [420, 360];
const ZONE = "#96270f";
const OPEN = "#f0b429";
const WAY = "#1f2f8f";

/** From outside the side on which people reach in, and from above. */
function eyeOn([x, y, z]: Vec3): Vec3 {
  if (z !== 0) return [0.5, -0.8, 1.2];
  return [x === 0 ? 0.55 : x, y === 0 ? -0.55 : y, 0.6];
}

/** A frame round a zone: what lies open before it, and the shortest way there with its length in words. */
export function guardPicture(scene: Scene, { zone, open, way, out }: GuardSign, long: string, title: string): string {
  const edges = boxEdges(zone.low, zone.high).map(
    (points): Band => ({ points, ink: ZONE, wide: { units: 1.4 }, dashes: "5 3", name: zone.ref.id }),
  );
  const line = way
    ? [{ points: [way.from, way.to], ink: WAY, wide: { units: 2.2 }, name: `way to ${zone.ref.id}` }]
    : [];
  return lineDrawing(plainScene(scene), {
    view: viewFrom("from outside", eyeOn(out), [0, 0, 1]),
    size: SIZE,
    finest: 2,
    title,
    look: ({ kind }) => (kind === "bar" || kind === "stand" || kind === "panel" ? "faint" : "hidden"),
    areas: [{ rings: open, fill: OPEN, name: `open before ${zone.ref.id}` }],
    bands: [...edges, ...line],
    marks: way && long !== "" ? [{ at: midpoint(way.from, way.to), word: long, weight: "light" }] : [],
  });
}

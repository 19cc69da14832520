import { up } from "../../facts/axes.ts";
import { offTheFloor, type Standing, standDirection } from "../../facts/standings.ts";
import { drum } from "../../geometry/extrude.ts";
import { along, cross, normalise, type Vec3 } from "../../geometry/vector.ts";
import { type Solid, skins } from "./solid.ts";

/** Share of its height that the pad of a foot takes, and width of a wheel over its diameter: how the symbol is drawn. */
const PAD = 0.35;
const WHEEL = 0.35;

/** A foot as stem and pad, a caster as plate and wheel: symbols of the right height and diameter, not makers' shapes. */
export function standSolids(standing: Standing, floor: number): readonly Solid[] {
  const { stand, body, top, end } = standing;
  const { kind, diameter, collar, mount } = stand.part;
  // How far a wall or a ceiling is off is not drawn: it is shown as near as it can be.
  const height = stand.raise ?? (offTheFloor(standing) ? stand.part.raise[0] : Math.max(0, top[2] - floor));
  if (!(height > 0)) return [];
  const down = standDirection(standing);
  const prisms =
    kind === "foot"
      ? [
          drum(top, down, Math.min(collar, diameter) / 4, height * (1 - PAD)),
          drum(along(top, down, height * (1 - PAD)), down, diameter / 2, height * PAD),
        ]
      : [
          drum(
            top,
            down,
            (mount.by === "plate" ? Math.min(...mount.size) : collar) / 2,
            Math.max(height - diameter, height * 0.1),
          ),
          wheel(along(top, down, height - diameter / 2), down, diameter),
        ];
  const known = [body.bar.ref.id, `${body.bar.ref.id}/${end}`];
  return prisms.map((prism) => ({ kind: "stand", of: stand.ref, with: known, prism, surfaces: skins(prism) }));
}

function wheel(middle: Vec3, down: Vec3, diameter: number) {
  const level = Math.abs(down[2]) > 0.5 ? ([0, 1, 0] as const) : up;
  const axle = normalise(cross(down, cross(level, down)));
  const width = diameter * WHEEL;
  return drum(along(middle, axle, -width / 2), axle, diameter / 2, width, 20);
}

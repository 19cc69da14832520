import { factOf } from "../facts/fact.ts";
import { type PanelSide, slotPanels } from "../facts/slot-panels.ts";
import { faceArea } from "../geometry/prism.ts";
import { add, scale, type Vec2, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { type Band, lineDrawing } from "./line-drawing.ts";
import type { Scene } from "./scene.ts";
import { viewFrom } from "./view.ts";

const SIZE: Vec2 = [360, 280];
const INK = "#20262b";
const NAMED = "#96270f";

/** The connector of a screw. */
const ownerOf = (screw: string): string => screw.slice(0, screw.lastIndexOf("/"));

/** The line to which a rectangular panel may reach in its slots, and its free edges, once round; undefined for others. */
export function reachOutline(frame: Frame, panel: string): readonly Vec3[] | undefined {
  const slotted = factOf(slotPanels, frame).all.find((one) => one.panel.ref.id === panel);
  if (!slotted?.rectangle) return undefined;
  const { axes, sides } = slotted.rectangle;
  const at = (side: PanelSide, way: 1 | -1): number => (side.kind === "slot" ? way * side.edge.floor : side.at);
  const [[u0, u1], [v0, v1]] = sides;
  const corner = (u: number, v: number): Vec3 =>
    add(add(scale(axes[0], u), scale(axes[1], v)), scale(slotted.normal, slotted.plane));
  const [a, b, c, d] = [at(u0, -1), at(u1, 1), at(v0, -1), at(v1, 1)];
  return [corner(a, c), corner(b, c), corner(b, d), corner(a, d), corner(a, c)];
}

/** A panel square on, with the bars that carry it, how far it reaches into their slots, and the parts that a finding names. Undefined where it has no shape. */
export function panelPicture(
  frame: Frame,
  scene: Scene,
  panel: string,
  named: ReadonlySet<string>,
): string | undefined {
  const own = scene.solids.find(({ kind, of }) => kind === "panel" && of.id === panel);
  const [face] = own ? [...own.prism.faces].sort((a, b) => faceArea(b) - faceArea(a)) : [];
  if (!own || !face) return undefined;
  const { normal } = face;
  const eye: Vec3 = normal[2] < -0.5 || normal[1] > 0.5 || normal[0] < -0.5 ? scale(normal, -1) : normal;
  const held = new Set(own.with);
  const outline = reachOutline(frame, panel);
  const bands: readonly Band[] = outline
    ? [{ points: outline, ink: INK, wide: { units: 1.1 }, dashes: "5 3", name: panel }]
    : [];
  const bars = new Set([...held, ...named]);
  return lineDrawing(
    {
      ...scene,
      solids: scene.solids.filter(
        (solid) =>
          solid === own ||
          named.has(solid.of.id) ||
          (solid.kind === "bar"
            ? bars.has(solid.of.id)
            : solid.kind === "connector" && solid.with.some((id) => held.has(id))),
      ),
    },
    {
      view: viewFrom("square on", eye, Math.abs(eye[2]) > 0.9 ? [0, 1, 0] : [0, 0, 1]),
      size: SIZE,
      title: `the panel ${panel} square on`,
      look: (solid) => (solid === own || named.has(solid.of.id) ? "marked" : solid.kind === "bar" ? "plain" : "faint"),
      bands,
      // Fasteners hide in their bars.
      ghosts: scene.solids
        .filter(({ kind, of }) => kind !== "bar" && kind !== "panel" && (named.has(of.id) || named.has(ownerOf(of.id))))
        .map((solid) => ({ solid, ink: NAMED, width: 1.2 })),
    },
  );
}

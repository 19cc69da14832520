import type { Vec2, Vec3 } from "../geometry/vector.ts";
import { lineDrawing } from "./line-drawing.ts";
import { coarseScene, type Scene } from "./scene.ts";
import { type ShareStep, stepOf, UNJUDGED } from "./share-steps.ts";
import type { Solid } from "./solids/solid.ts";
import { tidy } from "./svg.ts";
import { views } from "./view.ts";

const SIZE: Vec2 = [320, 230];

type Filling = Pick<ShareStep, "colour" | "line">;

const channels = (colour: string): Vec3 => {
  const value = Number.parseInt(colour, 16);
  return [value >> 16, (value >> 8) & 0xff, value & 0xff];
};

/** The bars of a frame, each in the fill of the greatest share of a limit it uses, and in heavier lines the more it is: for those who print it in grey. */
export function sharePicture(scene: Scene, shareOf: (bar: string) => number | undefined, title: string): string {
  const coarse = coarseScene(scene);
  const fillingOf = ({ kind, of }: Solid): Filling => {
    const share = kind === "bar" ? shareOf(of.id) : undefined;
    return (share === undefined ? undefined : stepOf(share)) ?? UNJUDGED;
  };
  const bars = { ...coarse, solids: coarse.solids.filter(({ kind }) => kind === "bar" || kind === "stand") };
  return lineDrawing(bars, {
    view: views.isometric,
    size: SIZE,
    finest: 2,
    line: (solid) => fillingOf(solid).line,
    title,
    tint: (solid) => channels(fillingOf(solid).colour),
  });
}

/** A field of the fill of a step, for legends. */
export const shareSwatch = ({ colour, line }: Filling): string =>
  `<svg class="step" viewBox="0 0 18 12" width="18" height="12" aria-hidden="true"><rect x="2" y="2" width="14" height="8" fill="#${colour}" stroke="#20262b" stroke-width="${tidy(line)}"/></svg>`;

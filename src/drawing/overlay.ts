import { boundsOf } from "../geometry/bounds.ts";
import { midpoint, type Vec2, type Vec3 } from "../geometry/vector.ts";
import { type Differences, differences } from "./differences.ts";
import { type Ghost, lineDrawing } from "./line-drawing.ts";
import type { Mark } from "./marks.ts";
import type { Scene } from "./scene.ts";
import type { Solid } from "./solids/solid.ts";
import type { View } from "./view.ts";

/** What became of a bar from one revision of a frame to the next. */
export type Fate = "added" | "removed" | "moved" | "changed";

/** A bar that is not as it was, and the word in its balloon. */
export interface FatedBar {
  readonly bar: string;
  readonly fate: Fate;
  readonly word: string;
}

/** How a part of an overlay is drawn: for the drawing and for its legend. */
export type Sample = Fate | "beside" | "was" | "same";

/** Balloons beyond this many would hide the frame. */
const BALLOONS = 60;
/** Each fill has a lightness of its own, so that the picture reads in grey and by every eye; the words of balloons say it once more. */
const TINT: Readonly<Record<Exclude<Fate, "removed">, Vec3>> = {
  added: [0x2f, 0x78, 0xae],
  moved: [0xe3, 0x95, 0x3c],
  changed: [0xf6, 0xe2, 0x7f],
};
/** What comes with bars, and is new or in another place. */
const BESIDE: Vec3 = [0xb9, 0xcf, 0xe0];
const INK = "#20262b";
const GONE = "#96270f";
const WAS = "#4d4a45";
const FAINT = "#a9b0b5";

const hex = (channels: Vec3): string => `#${channels.map((c) => c.toString(16).padStart(2, "0")).join("")}`;

/** A small square as the parts of a kind are drawn. */
export function overlaySample(of: Sample): string {
  const ghost = of === "removed" ? GONE : of === "was" ? WAS : undefined;
  const solid = of === "beside" ? BESIDE : of === "removed" || of === "was" || of === "same" ? undefined : TINT[of];
  const fill = ghost ?? (solid ? hex(solid) : "#ffffff");
  const line = ghost === undefined ? "" : ' fill-opacity="0.07" stroke-dasharray="5 2.5"';
  return `<svg class="sample" viewBox="0 0 30 14" aria-hidden="true"><rect x="1" y="1" width="28" height="12" fill="${fill}" stroke="${ghost ?? (of === "same" ? FAINT : INK)}" stroke-width="1.6"${line}/></svg>`;
}

function middleOf({ solids }: Scene, bar: string): Vec3 | undefined {
  const solid = solids.find(({ kind, of }) => kind === "bar" && of.id === bar);
  if (!solid) return undefined;
  const { min, max } = boundsOf(solid.prism.vertices);
  return midpoint(min, max);
}

/** Two revisions in one drawing, whatever the view. */
export interface Overlay {
  readonly beside: Differences;
  /** Bars that have a balloon. */
  readonly balloons: number;
  picture(view: View, size: Vec2, title: string): string;
}

/** The new revision solid, with what changed in its colours and the rest held back; what is no longer there in dashed outline over it. */
export function overlay(before: Scene, after: Scene, bars: readonly FatedBar[]): Overlay {
  const fates = new Map(bars.map(({ bar, fate }) => [bar, fate]));
  const beside = differences(before, after);
  const fresh = new Set(beside.fresh);
  const tint = (solid: Solid): Vec3 | undefined => {
    if (solid.kind !== "bar") return fresh.has(solid) ? BESIDE : undefined;
    const fate = fates.get(solid.of.id);
    return fate === undefined || fate === "removed" ? undefined : TINT[fate];
  };
  const pieces = beside.gone.map((solid): Ghost => ({ solid, ink: WAS, width: 0.6 }));
  const gone = before.solids.flatMap((solid): Ghost[] => {
    const fate = solid.kind === "bar" ? fates.get(solid.of.id) : undefined;
    if (fate === "removed") return [{ solid, ink: GONE, width: 1.6 }];
    return fate === "moved" || fate === "changed" ? [{ solid, ink: WAS, width: 1 }] : [];
  });
  const marks = bars.slice(0, BALLOONS).flatMap(({ bar, word, fate }): Mark[] => {
    const at = middleOf(fate === "removed" ? before : after, bar);
    return at ? [{ at, word }] : [];
  });
  return {
    beside,
    balloons: marks.length,
    picture: (view, size, title) =>
      lineDrawing(after, {
        view,
        size,
        title,
        look: (solid) => (tint(solid) ? "plain" : "faint"),
        tint,
        ghosts: [...pieces, ...gone],
        marks,
      }),
  };
}

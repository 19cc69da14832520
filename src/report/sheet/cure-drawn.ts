import { curePictures } from "../../drawing/cure-picture.ts";
import { MANY_BARS } from "../../drawing/many-bars.ts";
import { type Scene, sceneOf } from "../../drawing/scene.ts";
import { applyEdits } from "../../inspection/apply-edits.ts";
import { compareBars } from "../../inspection/compare.ts";
import type { CureOffered, Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { readFrame } from "../../model/read-frame.ts";
import { barMarks } from "../compare/page/bar-marks.ts";
import { drawn, html, type Markup } from "./html.ts";

/** A cure as a picture; undefined where it does not show. */
export type CureDrawn = (finding: Finding, cure: CureOffered) => Markup | undefined;

/** Cures drawn on one sheet, the first ones; none on a frame of more bars than this, where each is a drawing of its own to read whole. */
const DRAWN = 10;

/** Draws cures before and after: the changed file is read again with the stock of the frame. */
export function curesDrawn(file: string, bytes: Uint8Array, frame: Frame, scene: Scene): CureDrawn {
  const value = readFrame({ file, bytes, stock: frame.stock }).document?.value;
  let left = frame.bars.length > MANY_BARS ? 0 : DRAWN;
  return ({ at }, { edits, words }) => {
    if (left === 0) return undefined;
    const changed = applyEdits(value, edits);
    if (changed === undefined) return undefined;
    const text = new TextEncoder().encode(JSON.stringify(changed));
    const cured = readFrame({ file, bytes: text, stock: frame.stock }).frame;
    if (!cured) return undefined;
    // Bars that are only cut otherwise, beside one that changed, are not what the cure is about.
    const changes = compareBars(frame, cured);
    const drawnAnew = { ...changes, moved: changes.moved.filter(({ by }) => by > 0) };
    const marks = barMarks(drawnAnew, frame, cured);
    const pictures = curePictures(scene, sceneOf(cured), marks, at.id, `${at.id}: ${words}`);
    if (!pictures) return undefined;
    left -= 1;
    return html`<div class="pair"><figure>${drawn(pictures.before)}<figcaption>before</figcaption></figure><figure>${drawn(pictures.after)}<figcaption>after</figcaption></figure></div>`;
  };
}

import { type Scene, sceneOf, wholeScene } from "../../drawing/scene.ts";
import type { Frame } from "../../model/frame.ts";
import { safeJson } from "../json/safe-json.ts";
import { curesDrawn } from "./cure-drawn.ts";
import { html, type Markup } from "./html.ts";
import { pageFoot } from "./page-foot.ts";
import { type PartOfSheet, partsOf } from "./parts.ts";
import { picturesFor } from "./pictures.ts";
import { policyOf } from "./policy.ts";
import { barsOf } from "./sections/bars.ts";
import { boardOf } from "./sections/board.ts";
import { checksOf, openOf } from "./sections/checks.ts";
import { findingsOf } from "./sections/findings.ts";
import { loadPathOf } from "./sections/load-path.ts";
import { loadsOf } from "./sections/loads.ts";
import { recordOf } from "./sections/record.ts";
import { titleOf } from "./sections/title.ts";
import type { SheetInput } from "./sheet-input.ts";
import { sheetModel } from "./sheet-model.ts";
import { STYLE } from "./style.ts";
import viewer from "./viewer.generated.json" with { type: "json" };

interface Drawable {
  readonly frame: Frame;
  readonly scene: Scene;
  /** The same as it is drawn as a whole. */
  readonly whole: Scene;
}

function drawableOf(frame: Frame): Drawable {
  const scene = sceneOf(frame);
  return { frame, scene, whole: wholeScene(scene) };
}

function bodyOf(input: SheetInput, drawable: Drawable | undefined, parts: readonly PartOfSheet[]): Markup {
  const { report, frame, cards } = input;
  const main = drawable
    ? html`<div class="desk">${boardOf(drawable.frame, drawable.whole, report, parts)}${findingsOf(parts, cards, picturesFor(drawable.frame, drawable.scene), curesDrawn(report.file, input.bytes, drawable.frame, drawable.scene))}</div>`
    : "";
  const rest = frame
    ? html`${checksOf(report, cards)}${barsOf(frame, report)}${loadsOf(frame, report)}${drawable ? loadPathOf(frame, drawable.whole) : ""}`
    : "";
  return html`${titleOf(report)}<main>${openOf(report, cards)}${main}${rest}${recordOf(input)}</main>`;
}

/** The inspection sheet of one frame: one HTML document that needs nothing beside itself. The same input gives the same bytes. */
export function* sheetDocument(input: SheetInput): Generator<string> {
  const { report, frame, cards } = input;
  const parts = partsOf(report);
  const drawable = frame && drawableOf(frame);
  const script = drawable ? viewer.script : undefined;
  const style = STYLE + pageFoot(input.bytes);
  const name = report.title === "" ? report.file : report.title;
  yield "<!doctype html>\n";
  yield html`<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policyOf(style, script)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="trysquare ${input.version}">
<title>Inspection sheet: ${name}</title>
`.markup;
  yield `<style>${style}</style>\n</head>\n<body>\n`;
  yield bodyOf(input, drawable, parts).markup;
  if (drawable && script !== undefined) {
    const model = sheetModel(drawable.frame, drawable.whole, report, parts, cards);
    // A "<" in a text may not end the element.
    yield `<script type="application/json" id="model">${safeJson(model).replaceAll("<", "\\u003c")}</script>\n`;
    yield `<script>${script}</script>\n`;
  }
  yield "</body>\n</html>\n";
}

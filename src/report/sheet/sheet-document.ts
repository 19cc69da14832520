import { sceneOf } from "../../drawing/scene.ts";
import { policyHash } from "./hashes.ts";
import { html, type Markup } from "./html.ts";
import { partsOf } from "./parts.ts";
import { barsOf } from "./sections/bars.ts";
import { boardOf } from "./sections/board.ts";
import { checksOf, openOf } from "./sections/checks.ts";
import { findingsOf } from "./sections/findings.ts";
import { loadsOf } from "./sections/loads.ts";
import { recordOf } from "./sections/record.ts";
import { titleOf } from "./sections/title.ts";
import type { SheetInput } from "./sheet-input.ts";
import { STYLE } from "./style.ts";

/** Nothing is fetched, nothing is sent, no base or form can lead elsewhere; only the style and the script written here count. */
function policyOf(styles: string): string {
  return ["default-src 'none'", `style-src ${policyHash(styles)}`, "base-uri 'none'", "form-action 'none'"].join("; ");
}

function bodyOf(input: SheetInput): Markup {
  const { report, frame, cards } = input;
  const parts = partsOf(report);
  const main = frame
    ? html`<div class="desk">${boardOf(frame, sceneOf(frame), parts)}${findingsOf(parts, cards, () => undefined)}</div>`
    : "";
  const rest = frame ? html`${checksOf(report, cards)}${barsOf(frame, report)}${loadsOf(frame, report)}` : "";
  return html`${titleOf(report)}<main>${openOf(report)}${main}${rest}${recordOf(input)}</main>`;
}

/** The inspection sheet of one frame: one HTML document that needs nothing beside itself. The same input gives the same bytes. */
export function* sheetDocument(input: SheetInput): Generator<string> {
  const { report } = input;
  const name = report.title === "" ? report.file : report.title;
  yield "<!doctype html>\n";
  yield html`<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policyOf(STYLE)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="trysquare ${input.version}">
<title>Inspection sheet: ${name}</title>
`.markup;
  yield `<style>${STYLE}</style>\n</head>\n<body>\n`;
  yield bodyOf(input).markup;
  yield "</body>\n</html>\n";
}

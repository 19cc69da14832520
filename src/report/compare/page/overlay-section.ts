import { type Fate, type Overlay, overlay, overlaySample } from "../../../drawing/overlay.ts";
import type { Scene } from "../../../drawing/scene.ts";
import { views } from "../../../drawing/view.ts";
import { count } from "../../count.ts";
import { drawn, html, type Markup } from "../../sheet/html.ts";
import type { BarMark } from "./bar-marks.ts";

const VIEWS = [
  ["isometric", [860, 640], "Isometric"],
  ["front", [320, 230], "Front, seen along +y"],
  ["side", [320, 230], "Side, seen along −x"],
  ["top", [320, 230], "Top, seen down"],
] as const;

/** The isometric again as large as a phone shows it, so that its balloons can be read there. */
const NARROW = ["isometric", [380, 340], "Isometric"] as const;

function legend(marks: readonly BarMark[], { gone, fresh }: Overlay["beside"]): Markup {
  const numberOf = (fate: Fate): number => marks.filter((mark) => mark.fate === fate).length;
  return html`<ul class="legend">
<li>${drawn(overlaySample("added"))} <b>A</b> added: ${numberOf("added")}</li>
<li>${drawn(overlaySample("removed"))} <b>R</b> removed: ${numberOf("removed")}</li>
<li>${drawn(overlaySample("moved"))} <b>M</b> moved: ${numberOf("moved")}, ${drawn(overlaySample("was"))} where they were</li>
<li>${drawn(overlaySample("changed"))} <b>C</b> changed in place: ${numberOf("changed")}</li>
<li>${drawn(overlaySample("beside"))} connectors, caps, panels, feet: ${count(fresh.length, "piece")} new or moved, ${gone.length} no longer there</li>
<li>${drawn(overlaySample("same"))} as before</li>
</ul>
`;
}

/** Both revisions in one drawing from four sides, with what the colours and letters mean. */
export function overlaySection(title: string, before: Scene, after: Scene, marks: readonly BarMark[]): Markup {
  const both = overlay(before, after, marks);
  const figure = ([name, size, caption]: (typeof VIEWS)[number] | typeof NARROW, as: string = name): Markup =>
    html`<figure class="view" data-view="${as}">${drawn(both.picture(views[name], size, `${title}, both revisions, ${name} view`))}<figcaption>${caption}</figcaption></figure>
`;
  const [main, ...others] = VIEWS;
  const left = marks.length - both.balloons;
  return html`<section class="both" id="drawing" aria-label="Drawing">
${figure(main)}${figure(NARROW, "narrow")}${legend(marks, both.beside)}<div class="views">${others.map((view) => figure(view))}</div>
<p class="key">Balloons carry the letters and numbers of the table of bars${left > 0 ? html`; ${left} bars have none, for want of room or shape` : ""}. What is no longer there is drawn over what is.</p>
</section>
`;
}

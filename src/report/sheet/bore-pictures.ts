import { boresPicture, holePair } from "../../drawing/bores-picture.ts";
import type { Scene } from "../../drawing/scene.ts";
import { holeWords } from "../../facts/hole-words.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { drawn, html, type Markup } from "./html.ts";

/** The two holes that a finding says come too near to each other inside a bar. */
export function boresFindingPicture(frame: Frame, scene: Scene, { rule, at, measure }: Finding): Markup | undefined {
  const pair = rule === "bore.clash" && measure ? holePair(frame, at.id, measure.measured) : undefined;
  if (!pair) return undefined;
  const [first, second] = [pair.a, pair.b].map(({ what, by }) => `${holeWords(what)} of ${by.id}`);
  return html`<figure class="check near">${drawn(boresPicture(scene, pair, `two holes inside ${at.id} from near by`))}<figcaption>Through ${at.id}: 1 ${first}, 2 ${second}.</figcaption></figure>
`;
}

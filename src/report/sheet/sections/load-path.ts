import { MANY_BARS } from "../../../drawing/many-bars.ts";
import { movedPicture } from "../../../drawing/moved-picture.ts";
import { footWords, force, sumWords } from "../../../drawing/passing-words.ts";
import { pathPicture } from "../../../drawing/path-picture.ts";
import type { Scene } from "../../../drawing/scene.ts";
import { factOf } from "../../../facts/fact.ts";
import { loadPaths } from "../../../facts/load-paths.ts";
import { movingShapes } from "../../../facts/moving-shapes.ts";
import type { Frame } from "../../../model/frame.ts";
import { drawn, html, type Markup } from "../html.ts";

/** Joints told one by one, those that pass most; a large frame has too many to read. */
const TOLD = 40;

/** The shape the frame bends to under the loads that move it most: what the view that turns shows first of all shapes. */
function bentOf(frame: Frame, scene: Scene): Markup | undefined {
  const bent =
    frame.bars.length > MANY_BARS ? undefined : factOf(movingShapes, frame).find(({ kind }) => kind === "bent");
  const svg = bent && movedPicture(frame, scene, bent.lineOf, `the frame bent under ${bent.name}`);
  return svg === undefined
    ? undefined
    : html`<figure class="view bent">${drawn(svg)}<figcaption>Bent under ${bent?.name}, joints typical, much enlarged. The view that turns shows it under every set of loads.</figcaption></figure>
`;
}

const sentenceOf = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** How the heaviest loads of use run to the floor: drawn, joint by joint, and what the feet bear. */
export function loadPathOf(frame: Frame, scene: Scene): Markup {
  const [path] = factOf(loadPaths, frame);
  if (!path) return html``;
  const { passings, feet, name } = path;
  const print = (vector: Parameters<typeof force>[0]): string => force(vector, frame.units);
  const rest = passings.length - TOLD;
  return html`<section class="path" id="load-path-told">
<h2>How the loads run to the floor</h2>
<p>Under ${name}, joints typical. ${sentenceOf(sumWords(path, frame.units))}: ${feet.map((foot) => footWords(foot, frame.units)).join("; ")}.</p>
<div class="way"><div><figure class="view">${drawn(pathPicture(frame, scene, path, `the load path under ${name}`))}<figcaption>Bars as thick as the force across them: dark where pressed, ochre where pulled, grey-green where it runs across the bar. Arrows with a line across: it bears; without: fasteners hold; under the feet: on the floor.</figcaption></figure>
${bentOf(frame, scene)}</div><div class="wide" tabindex="0" role="region" aria-label="Forces passed at joints"><table>
<thead><tr><th scope="col">Gives</th><th scope="col">To</th><th scope="col" class="num">Bears</th><th scope="col" class="num">Fasteners hold</th></tr></thead><tbody>
${passings.slice(0, TOLD).map(
  ({ giver, taker, seat, held, by }) =>
    html`<tr><th scope="row">${giver}</th><td>${taker}</td><td class="num">${print(seat)}</td><td class="num">${print(held)}${by === "screws" ? "" : ` (${by})`}</td></tr>
`,
)}</tbody></table></div></div>
${rest > 0 ? html`<p>${rest} more joints pass less.</p>` : ""}
</section>
`;
}

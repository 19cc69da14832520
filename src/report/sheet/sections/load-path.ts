import { force } from "../../../drawing/passing-words.ts";
import { pathPicture } from "../../../drawing/path-picture.ts";
import type { Scene } from "../../../drawing/scene.ts";
import { factOf } from "../../../facts/fact.ts";
import { loadPaths } from "../../../facts/load-paths.ts";
import type { Frame } from "../../../model/frame.ts";
import { drawn, html, type Markup } from "../html.ts";

/** Joints told one by one, those that pass most; a large frame has too many to read. */
const TOLD = 40;

/** How the heaviest loads of use run to the floor: drawn, joint by joint, and what the feet bear. */
export function loadPathOf(frame: Frame, scene: Scene): Markup {
  const [path] = factOf(loadPaths, frame);
  if (!path) return html``;
  const { passings, feet, borne, applied, name } = path;
  const print = (vector: Parameters<typeof force>[0]): string => force(vector, frame.units);
  const rest = passings.length - TOLD;
  return html`<section class="path" id="load-path-told">
<h2>How the loads run to the floor</h2>
<p>Under ${name}, joints typical. The feet bear ${print(borne)} of ${print(applied)} applied: ${feet.map(({ ref, force: own }, i) => `${i > 0 ? ", " : ""}${ref.id} ${print(own)}`)}.</p>
<div class="way"><figure class="view">${drawn(pathPicture(frame, scene, path, `the load path under ${name}`))}<figcaption>Bars as thick as the force across them: dark where pressed, ochre where pulled, grey-green where it runs across the bar. Arrows with a line across: it bears; without: fasteners hold; under the feet: on the floor.</figcaption></figure>
<div class="wide" tabindex="0" role="region" aria-label="Forces passed at joints"><table>
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

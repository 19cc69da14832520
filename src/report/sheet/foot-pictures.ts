import { footPicture } from "../../drawing/foot-picture.ts";
import type { Scene } from "../../drawing/scene.ts";
import { factOf } from "../../facts/fact.ts";
import { standings } from "../../facts/standings.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { drawn, html, type Markup } from "./html.ts";

/** A foot from the front with the height it has and the height it can have. */
export function footFindingPicture(frame: Frame, scene: Scene, finding: Finding): Markup | undefined {
  const { rule, key, at, measure } = finding;
  const standing = factOf(standings, frame).all.find(({ stand }) => stand.ref.id === at.id);
  if (rule !== "foot.out-of-range" || !measure || !standing) return undefined;
  const { measured, limit } = measure.shown;
  const heights =
    key === "apart"
      ? [{ from: standing.stand.raise ?? 0, words: `${measured}, ${limit} allowed` }]
      : [
          { from: 0, words: measured },
          { from: 0, to: measure.limit, words: `${limit} ${key === "short" ? "at most" : "at least"}` },
        ];
  return html`<figure class="check near">${drawn(footPicture(scene, standing, frame.floor.z, heights))}<figcaption>${at.id} from the front, down to the floor.</figcaption></figure>
`;
}

import { cornerPicture } from "../../drawing/corner-picture.ts";
import { doorPicture } from "../../drawing/door-picture.ts";
import { type Swinging, swingsOf } from "../../drawing/door-swing.ts";
import type { Scene } from "../../drawing/scene.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { drawn, html, type Markup } from "./html.ts";

/** How far the free corner of a door comes down, or the part of it that a finding names. */
function sagged(scene: Scene, swing: Swinging, { rule, related, measure }: Finding): string | undefined {
  if (rule !== "door.sags" || !measure) return undefined;
  const named = new Set(related.map(({ at }) => at.id));
  const by = swing.parts.find(({ of }) => named.has(of.id))?.of.id;
  const { measured, limit } = measure.shown;
  return cornerPicture(scene, swing, by, measure.measured, `${measured}, ${limit} allowed`);
}

/** A door where it strikes or stands open; or, for findings on how it hangs, its free corner. */
export function doorFindingPicture(frame: Frame, scene: Scene, finding: Finding): Markup | undefined {
  const { at } = finding;
  const swing = swingsOf(frame, scene).find(({ door }) => door === at.id);
  if (!swing) return undefined;
  const corner = sagged(scene, swing, finding);
  if (corner !== undefined)
    return html`<figure class="check near">${drawn(corner)}<figcaption>The free corner of ${at.id} from its front: as drawn, and dashed where it comes down to.</figcaption></figure>
`;
  const where = swing.strikes === undefined ? "stands open" : "strikes";
  return html`<figure class="check whole">${drawn(doorPicture(scene, swing, `the door ${at.id} seen along its hinges`))}<figcaption>${at.id} along its hinges: as drawn, and in outline where it ${where}.</figcaption></figure>
`;
}

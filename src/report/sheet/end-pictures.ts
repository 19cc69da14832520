import { endFacePicture } from "../../drawing/end-face-picture.ts";
import { endPicture } from "../../drawing/end-picture.ts";
import type { Scene } from "../../drawing/scene.ts";
import { bodies } from "../../facts/bodies.ts";
import { ends } from "../../facts/ends.ts";
import { factOf } from "../../facts/fact.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import { drawn, html, type Markup } from "./html.ts";

/** Ends that are drawn; of more the rest is counted. */
const DRAWN = 6;

/** The ends that a finding on open ends is about: the first from near by, and each square on with the metal that lies open. */
export function openEndPictures(frame: Frame, scene: Scene, { at, related }: Finding): Markup | undefined {
  const named = new Set([at, ...related.map((other) => other.at)].map(({ id }) => id));
  const all = factOf(bodies, frame);
  const open = factOf(ends, frame).filter((end) => named.has(end.ref.id) && end.open > 0);
  const [first] = open;
  if (!first) return undefined;
  const { width = 0, height = 0 } = all.get(first.bar.id)?.bar.profile ?? {};
  const faces = open.slice(0, DRAWN).map((end) => {
    const body = all.get(end.bar.id);
    const metal = formatQuantity(end.open, "area", frame.units);
    const covered = end.covers.length > 0 ? `, the rest under ${end.covers.join(", ")}` : "";
    return body
      ? html`<figure class="face">${drawn(endFacePicture(body, end))}<figcaption>${end.ref.id}: ${metal} open${covered}</figcaption></figure>`
      : "";
  });
  const rest = open.length - DRAWN;
  return html`<div class="ends"><figure class="check near">${drawn(endPicture(scene, first, Math.max(width, height)))}<figcaption>${first.ref.id} from near by.</figcaption></figure>
<div class="faces">${faces}${rest > 0 ? html`<p>and ${rest} more</p>` : ""}</div></div>
`;
}

/** A cut end from near by that stays as it was sawn; undefined where it is not an end. */
export function rawEndPicture(frame: Frame, scene: Scene, { at }: Finding): Markup | undefined {
  const end = factOf(ends, frame).find(({ ref }) => ref.id === at.id);
  const profile = end && factOf(bodies, frame).get(end.bar.id)?.bar.profile;
  if (!end || !profile) return undefined;
  return html`<figure class="check near">${drawn(endPicture(scene, end, Math.max(profile.width, profile.height)))}<figcaption>${at.id} from near by.</figcaption></figure>
`;
}

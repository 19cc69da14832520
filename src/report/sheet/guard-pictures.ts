import { guardPicture } from "../../drawing/guard-picture.ts";
import { type GuardSign, guardSign } from "../../drawing/guard-sign.ts";
import type { Scene } from "../../drawing/scene.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { drawn, html, type Markup } from "./html.ts";

/** What a finding on a zone of danger is about; undefined for other findings. */
export const guardOf = (frame: Frame, { rule, key, at, shown }: Finding): GuardSign | undefined =>
  rule === "guard.within-reach" ? guardSign(frame, at.id, key, shown.side ?? "") : undefined;

/** The frame round a zone, with what lies open before it and the shortest way there. */
export function guardFindingPicture(frame: Frame, scene: Scene, finding: Finding): Markup | undefined {
  const sign = guardOf(frame, finding);
  if (!sign) return undefined;
  const { key, at, shown } = finding;
  const low = key === "over" || key === "low";
  const side = shown.side ?? "";
  const open =
    key === "bare" ? `the face of ${at.id} before which nothing stands` : low ? `its ${side}` : "the opening";
  const way = sign.way ? ` Line: the ${low ? "level way over it" : "shortest way through it"}.` : "";
  return html`<figure class="check whole">${drawn(guardPicture(scene, sign, shown.distance ?? "", `${at.id} and the ${side} of its guard`))}<figcaption>Dashed: ${at.id}. Filled: ${open}.${way}</figcaption></figure>
`;
}

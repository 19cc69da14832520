import type { Scene } from "../../drawing/scene.ts";
import { signedPicture } from "../../drawing/signed-picture.ts";
import { factOf } from "../../facts/fact.ts";
import { screwedParts } from "../../facts/screwed-parts.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { drawn, html, type Markup } from "./html.ts";

/** Two bars that are tied and the places of their ties, for findings on what the ties hold. */
export function tiePicture(frame: Frame, scene: Scene, { at, measure }: Finding): Markup | undefined {
  const tie = [...frame.ties, ...frame.pivots].find(({ ref }) => ref.id === at.id);
  if (!tie) return undefined;
  const seats = factOf(screwedParts, frame)
    .free.filter(({ joint }) => joint.id === at.id)
    .flatMap(({ screws }) => screws.map(({ seat }) => seat));
  const svg = signedPicture(scene, {
    marks: seats.map((seat, i) => ({ at: seat, word: String(i + 1), weight: "light" })),
    named: new Set(tie.bars),
    round: tie.bars,
    title: `${tie.bars.join(" and ")} with the ties of ${at.id}`,
  });
  const force = measure ? `; ${measure.shown.measured} at each, ${measure.shown.limit} allowed` : "";
  return html`<figure class="check whole">${drawn(svg)}<figcaption>${tie.bars.join(" and ")} with the ties of ${at.id}${force}.</figcaption></figure>
`;
}

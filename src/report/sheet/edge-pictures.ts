import { edgePicture } from "../../drawing/edge-picture.ts";
import { type EdgePlace, holeNearEnd, nutNearEnd, plateHoleNearEdge } from "../../drawing/edge-places.ts";
import type { Scene } from "../../drawing/scene.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { drawn, html, type Markup } from "./html.ts";

/** What a finding on the distance from an edge is about. */
function placeOf(frame: Frame, { key, at, measure }: Finding): EdgePlace | undefined {
  if (key === "nut") return nutNearEnd(frame, at.id);
  return key === "plate" ? plateHoleNearEdge(frame, at.id) : holeNearEnd(frame, at.id, measure?.measured ?? Number.NaN);
}

/** The hole or nut near its edge with its distance and the least of it, for findings on that. */
export function edgeFindingPicture(frame: Frame, scene: Scene, finding: Finding): Markup | undefined {
  const { rule, key, at, measure } = finding;
  const place = rule === "hole.near-edge" && measure ? placeOf(frame, finding) : undefined;
  if (!place || !measure) return undefined;
  const { measured, limit } = measure.shown;
  const what =
    key === "nut"
      ? `The nut of ${at.id} in ${place.of}`
      : key === "plate"
        ? `${at.id} in its plate`
        : `The hole in ${place.of}`;
  const svg = edgePicture(
    scene,
    place,
    { found: measured, wanted: `${limit} needed`, least: measure.limit },
    `${what} near the edge, square on`,
  );
  return html`<figure class="check near">${drawn(svg)}<figcaption>${what}, square on. Dashed: where its middle would have to be.</figcaption></figure>
`;
}

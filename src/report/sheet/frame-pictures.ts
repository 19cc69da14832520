import { movedPicture } from "../../drawing/moved-picture.ts";
import type { Scene } from "../../drawing/scene.ts";
import { pushPicture, tiltPicture } from "../../drawing/tipping-picture.ts";
import type { MovingShape } from "../../facts/moving-shapes.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import { shapeOfFinding } from "./finding-shape.ts";
import { drawn, html, type Markup } from "./html.ts";
import { tippingOf } from "./tipping-of.ts";

/** What is said under the picture of a frame that moves; undefined for findings that have no such picture. */
function movedWords(frame: Frame, { rule }: Finding, { kind, name, swings }: MovingShape): string | undefined {
  switch (rule) {
    case "frame.loose":
      return `How it moves: ${name}; nothing says how far.`;
    case "frame.buckles":
      return `How it buckles under ${name}; the size of the movement says nothing.`;
    case "frame.resonates": {
      const frequency = formatQuantity(swings?.frequency ?? 0, "frequency", frame.units);
      return `How it swings by itself at ${frequency}, joints typical; the size of the movement says nothing.`;
    }
    case "frame.sways":
      return `How it sways under ${name}, enlarged.`;
    case "frame.unbraced":
      return `How it gives under ${name}, enlarged.`;
    case "joint.turns":
      return kind === "turning" ? `How it turns, ${name}, once friction gives way; nothing says how far.` : undefined;
    default:
      return undefined;
  }
}

/** The frame along the line it tips over, tilted or pushed. */
function tipping(frame: Frame, scene: Scene, finding: Finding): Markup | undefined {
  const { key, amounts, shown } = finding;
  const found = tippingOf(frame, finding);
  if (!found) return undefined;
  const print = (length: number): string => formatQuantity(length, "length", frame.units);
  const figure = (svg: string, words: string): Markup =>
    html`<figure class="check whole">${drawn(svg)}<figcaption>${words}</figcaption></figure>
`;
  const { over, state } = found;
  if (key === "tilt" && state) {
    const [a, b] = state.feet;
    const side = state.inside < 0 ? "outside" : "inside";
    return figure(
      tiltPicture(scene, state, `the frame along the line from ${a.id} to ${b.id}`),
      `Along the line from ${a.id} to ${b.id}: the centre of mass lies ${print(Math.abs(state.inside))} ${side} it and ${print(state.height)} up.`,
    );
  }
  const { inside, height } = amounts;
  if (inside === undefined || height === undefined) return undefined;
  const [a, b] = over.feet;
  return figure(
    pushPicture(scene, { over, inside, height }, `the frame pushed over the line from ${a.id} to ${b.id}`),
    `Along the line from ${a.id} to ${b.id}: the weight acts ${print(inside)} inside it, the push ${print(height)} up. ${shown.push ?? ""} tips it.`,
  );
}

/** The frame as it moves or tips, for findings about how it stands as a whole. */
export function framePicture(frame: Frame, scene: Scene, finding: Finding): Markup | undefined {
  if (finding.rule === "frame.tips") return tipping(frame, scene, finding);
  const moves = finding.rule.startsWith("frame.") || finding.rule === "joint.turns";
  const shape = moves ? shapeOfFinding(frame, finding) : undefined;
  const words = shape && movedWords(frame, finding, shape);
  const svg = shape && words && movedPicture(frame, scene, shape.lineOf, `the frame as it moves: ${finding.rule}`);
  return svg === undefined
    ? undefined
    : html`<figure class="check whole">${drawn(svg)}<figcaption>${words}</figcaption></figure>
`;
}

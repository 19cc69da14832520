import { movedPicture } from "../../drawing/moved-picture.ts";
import type { Scene } from "../../drawing/scene.ts";
import { tippingPicture } from "../../drawing/tipping-picture.ts";
import { type BarLine, bentLine } from "../../facts/bent-line.ts";
import { bodies } from "../../facts/bodies.ts";
import { factOf } from "../../facts/fact.ts";
import { movingShapes } from "../../facts/moving-shapes.ts";
import type { View } from "../../facts/response.ts";
import { tipping as stands } from "../../facts/tipping.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import { drawn, html, type Markup } from "./html.ts";

interface Moved {
  readonly words: string;
  lineOf(bar: string): BarLine | undefined;
}

/** Stations along a bar in a picture of the bent frame. */
const STATIONS = 7;

/** The way of moving that a finding is about. */
function movedBy(frame: Frame, { rule, at }: Finding, view: View | undefined): Moved | undefined {
  const shape = (fits: (bar: (id: string) => BarLine | undefined, kind: string) => boolean) =>
    factOf(movingShapes, frame).find(({ kind, lineOf }) => fits(lineOf, kind));
  switch (rule) {
    case "frame.loose": {
      const way = shape((lineOf, kind) => kind === "loose" && lineOf(at.id) !== undefined);
      return way && { words: `How it moves: ${way.name}; nothing says how far.`, lineOf: way.lineOf };
    }
    case "frame.buckles": {
      const way = shape((_, kind) => kind === "buckled");
      const words = `How it buckles under ${way?.name ?? ""}; the size of the movement says nothing.`;
      return way && { words, lineOf: way.lineOf };
    }
    case "frame.sways": {
      const all = factOf(bodies, frame);
      const lineOf = (bar: string): BarLine | undefined => {
        const body = all.get(bar);
        return view && body?.prism && bentLine(view, body, STATIONS);
      };
      return view && { words: `How it sways under ${view.combination.name}, enlarged.`, lineOf };
    }
    default:
      return undefined;
  }
}

/** The frame along the line it tips over, where it is tilted too little before it does. */
function tipping(frame: Frame, scene: Scene): Markup | undefined {
  const found = factOf(stands, frame);
  if (found.kind !== "stands") return undefined;
  const state = found.tilted();
  const print = (length: number): string => formatQuantity(length, "length", frame.units);
  const [a, b] = state.feet;
  const svg = tippingPicture(scene, state, `the frame along the line from ${a.id} to ${b.id}`);
  const side = state.inside < 0 ? "outside" : "inside";
  return html`<figure class="check whole">${drawn(svg)}<figcaption>Along the line from ${a.id} to ${b.id}: the centre of mass lies ${print(Math.abs(state.inside))} ${side} it and ${print(state.height)} up.</figcaption></figure>
`;
}

/** The frame as it moves or tips, for findings about how it stands as a whole. */
export function framePicture(frame: Frame, scene: Scene, finding: Finding, view: View | undefined): Markup | undefined {
  if (finding.rule === "frame.tips" && finding.key === "tilt") return tipping(frame, scene);
  const moved = movedBy(frame, finding, view);
  const svg = moved && movedPicture(frame, scene, moved.lineOf, `the frame as it moves: ${finding.rule}`);
  return svg === undefined
    ? undefined
    : html`<figure class="check whole">${drawn(svg)}<figcaption>${moved?.words ?? ""}</figcaption></figure>
`;
}

import { panelPicture, reachOutline } from "../../drawing/panel-picture.ts";
import type { Scene } from "../../drawing/scene.ts";
import { factOf } from "../../facts/fact.ts";
import { panelFits } from "../../facts/panel-fits.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import { drawn, html, type Markup } from "./html.ts";

/** How far the panel is held along each of its axes with both sides in slots. */
function engagement(frame: Frame, panel: string): readonly string[] {
  const fit = factOf(panelFits, frame).find((one) => one.panel.ref.id === panel);
  const print = (value: number): string => formatQuantity(value, "length", frame.units);
  return (fit?.fits ?? []).map(({ edges, size, room, engaged }) => {
    const between = edges.map(({ body }) => body.bar.ref.id).join(" and ");
    return `${print(size)} between ${between}: ${print(room)} of room at its largest, ${print(engaged)} in the slot at its smallest`;
  });
}

/** A panel square on with its edges and how they are held, for findings about panels. */
export function panelFindingPicture(frame: Frame, scene: Scene, { at, related }: Finding): Markup | undefined {
  const svg = panelPicture(frame, scene, at.id, new Set(related.map((other) => other.at.id)));
  if (svg === undefined) return undefined;
  const dashed = reachOutline(frame, at.id) ? " Dashed: how far it may reach into its slots." : "";
  const fits = engagement(frame, at.id);
  return html`<figure class="check whole">${drawn(svg)}<figcaption>${at.id} square on.${dashed}${fits.length > 0 ? ` ${fits.join("; ")}.` : ""}</figcaption></figure>
`;
}

import { arcBands, openDoor, swingsOf } from "../../../drawing/door-swing.ts";
import { lineDrawing } from "../../../drawing/line-drawing.ts";
import { MANY_BARS } from "../../../drawing/many-bars.ts";
import type { Mark } from "../../../drawing/marks.ts";
import { coarseScene, type Scene } from "../../../drawing/scene.ts";
import { sharePicture, shareSwatch } from "../../../drawing/share-picture.ts";
import { SHARE_STEPS, UNJUDGED } from "../../../drawing/share-steps.ts";
import { symbolsOf } from "../../../drawing/symbols.ts";
import { views } from "../../../drawing/view.ts";
import type { Report } from "../../../inspection/report.ts";
import type { Frame } from "../../../model/frame.ts";
import { drawn, html, type Markup } from "../html.ts";
import { placesOfParts } from "../part-places.ts";
import type { PartOfSheet } from "../parts.ts";
import { greatestShares } from "./bars.ts";

const WEIGHT: Readonly<Record<PartOfSheet["level"], NonNullable<Mark["weight"]>>> = {
  reject: "strong",
  hold: "plain",
  note: "light",
  conceded: "light",
};
const SIZE: Readonly<Record<keyof typeof views, readonly [number, number]>> = {
  isometric: [860, 640],
  front: [320, 230],
  side: [320, 230],
  back: [320, 230],
  left: [320, 230],
  top: [320, 230],
};
/** Drawn small beside the isometric, the others show no screws. */
const FINEST = { isometric: 2, small: 3 } as const;
/** And in finer lines: else slots would run together into black. */
const LINE = { isometric: 1, small: 0.6 } as const;
/** These show what the ones across from them do, from behind: bars and panels do for them. */
const COARSE: ReadonlySet<string> = new Set(["back", "left"]);
const CAPTION: Readonly<Record<keyof typeof views, string>> = {
  isometric: "Isometric, with loads and supports",
  front: "Front, seen along +y",
  side: "Right side, seen along −x",
  back: "Back, seen along −y",
  left: "Left side, seen along +x",
  top: "Top, seen down",
};

/** Balloons of one drawing, those of the worst parts: more would hide the frame, the sooner the smaller its parts are drawn. */
const BALLOONS = { isometric: 80, small: 30 } as const;
const BALLOONS_OF_MANY = { isometric: 30, small: 8 } as const;

/** Balloons of the parts that have findings and a place. */
export function marksOf(frame: Frame, scene: Scene, parts: readonly PartOfSheet[]): readonly Mark[] {
  const placeOf = placesOfParts(frame, scene);
  return parts.flatMap((part) => {
    const at = placeOf(part);
    return at ? [{ at, word: String(part.number), weight: WEIGHT[part.level] }] : [];
  });
}

/** Bars filled by the greatest share of a limit they use; nothing where none was measured. */
function sharesDrawn(frame: Frame, scene: Scene, report: Report): Markup | undefined {
  const shares = greatestShares(report);
  if (shares.size === 0) return undefined;
  const title = `${frame.title}, bars by the greatest share of a limit they use`;
  return html`<figure class="view" data-shares>${drawn(sharePicture(scene, (bar) => shares.get(bar), title))}<figcaption>Bars by greatest share used</figcaption></figure>
`;
}

/** What the fills of that drawing mean. */
function sharesTold(): Markup {
  const steps = [...SHARE_STEPS, { ...UNJUDGED, words: "not measured" }];
  return html`<p class="key">Greatest share of a limit that a bar uses:${steps.map((step) => html` <span class="step">${drawn(shareSwatch(step))} ${step.words}</span>`)}</p>
`;
}

/** The frame in six views with its balloons, and by the shares of its bars: what is seen without scripts and on paper. */
export function boardOf(frame: Frame, scene: Scene, report: Report, parts: readonly PartOfSheet[]): Markup {
  const marks = marksOf(frame, scene, parts);
  const symbols = symbolsOf(frame, scene);
  const swings = swingsOf(frame, scene);
  const doors = { ghosts: swings.flatMap(openDoor), bands: swings.flatMap(arcBands) };
  const coarse = coarseScene(scene);
  const byShare = sharesDrawn(frame, scene, report);
  const many = frame.bars.length > MANY_BARS;
  const balloons = many ? BALLOONS_OF_MANY : BALLOONS;
  const figure = (name: keyof typeof views): Markup => {
    const shown = name === "isometric" || name === "top" ? doors : {};
    const kind = name === "isometric" ? "isometric" : "small";
    const picture = {
      view: views[name],
      size: SIZE[name],
      finest: FINEST[kind],
      line: () => LINE[kind],
      title: `${frame.title}, ${views[name].name} view`,
      marks: marks.slice(0, balloons[kind]),
      ...shown,
    };
    const svg = lineDrawing(
      COARSE.has(name) ? coarse : scene,
      name === "isometric" ? { ...picture, symbols } : picture,
    );
    return html`<figure class="view" data-view="${name}">${drawn(svg)}<figcaption>${CAPTION[name]}</figcaption></figure>
`;
  };
  return html`<section class="board" id="drawing" aria-label="Drawing">
<div class="easel" id="easel"></div>
${figure("isometric")}<div class="views">${figure("front")}${figure("side")}${figure("top")}${many ? "" : html`${figure("back")}${figure("left")}`}${byShare}</div>
${byShare ? sharesTold() : ""}
<p class="key"><span class="b strong">1</span> reject <span class="b">2</span> hold <span class="b light">3</span> note or conceded; the numbers are those of the findings${marks.length > balloons.small ? `; where there are more, each drawing has those of the worst ${balloons.isometric} parts, or ${balloons.small} where it is small` : ""}. Blue: declared loads and goods, not to the scale of forces.${swings.length > 0 ? " Dashed: doors where they stand open, or where they strike, and the way they go there." : ""}${many ? ` A frame of more than ${MANY_BARS} bars is drawn here without connectors and screws, and not from behind, from the left or bent: the view that turns shows those.` : ""}</p>
</section>
`;
}

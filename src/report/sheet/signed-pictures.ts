import { pointsOf } from "../../drawing/point-of.ts";
import type { Scene } from "../../drawing/scene.ts";
import { signedPicture } from "../../drawing/signed-picture.ts";
import { type Symbols, symbolsOf } from "../../drawing/symbols.ts";
import { factOf } from "../../facts/fact.ts";
import { screwedParts } from "../../facts/screwed-parts.ts";
import type { Finding } from "../../inspection/report.ts";
import type { Frame } from "../../model/frame.ts";
import { formatQuantity } from "../../model/units/format-quantity.ts";
import { drawn, html, type Markup } from "./html.ts";

const figure = (svg: string, words: string): Markup =>
  html`<figure class="check whole">${drawn(svg)}<figcaption>${words}</figcaption></figure>
`;

/** Loads and supports as signs, but only loads that `kept` keeps. */
function signs(frame: Frame, scene: Scene, kept: (load: string) => boolean = () => true): Symbols {
  const all = symbolsOf(frame, scene);
  return {
    ...all,
    arrows: all.arrows.filter(({ load }) => kept(load)),
    moments: all.moments.filter(({ load }) => kept(load)),
  };
}

/** One screw of each size of key under its size. */
function keysPicture(frame: Frame, scene: Scene): Markup {
  const first = new Map<
    string,
    { readonly at: readonly [number, number, number]; readonly key: number; readonly of: string }
  >();
  for (const { usual, screws, ref } of factOf(screwedParts, frame).all)
    for (const { screw, seat } of usual ? [] : screws) {
      const word = formatQuantity(screw.key, "length", frame.units);
      if (!first.has(word)) first.set(word, { at: seat, key: screw.key, of: ref.id });
    }
  const sorted = [...first].sort(([, a], [, b]) => a.key - b.key);
  const marks = sorted.map(([word, { at }]) => ({ at, word, weight: "plain" as const }));
  const named = new Set(sorted.map(([, { of }]) => of));
  return figure(
    signedPicture(scene, { marks, named, title: "one screw of each size of key" }),
    "One screw of each size of key, in the frame.",
  );
}

/** One bar of each slot size under its size; all but those of the size that most bars have brought out. */
function slotsPicture(frame: Frame, scene: Scene): Markup {
  const pointOf = pointsOf(frame, scene);
  const sizes = new Map<string, (typeof frame.bars)[number][]>();
  for (const bar of frame.bars) sizes.set(bar.profile.slotSize, [...(sizes.get(bar.profile.slotSize) ?? []), bar]);
  const most = Math.max(...[...sizes.values()].map((bars) => bars.length));
  const marks = [...sizes].flatMap(([word, [bar]]) => {
    const at = bar && pointOf(bar.ref);
    return at ? [{ at, word, weight: "plain" as const }] : [];
  });
  const usual = [...sizes.values()].find((bars) => bars.length === most);
  const named = new Set(frame.bars.filter((bar) => !usual?.includes(bar)).map(({ ref }) => ref.id));
  return figure(
    signedPicture(scene, { marks, named, title: "bars by the size of their slots" }),
    "Slot sizes of its bars; brought out are those that differ from most.",
  );
}

/** Findings with such a picture: rule and message. */
const SIGNED: ReadonlySet<string> = new Set([
  "caster.unbraked/rolls",
  "stock.mixed/keys",
  "stock.mixed/slots",
  "load.none/none",
  "load.none/lost",
  "load.none/twice",
  "frame.tips/declared",
  "frame.tips/slides",
]);

/** The frame as a whole with the signs of what a finding is about: its casters, its loads, what is mixed; where there is still room for such a picture. */
export function signedFindingPicture(
  frame: Frame,
  scene: Scene,
  { rule, key, at, related }: Finding,
  room: () => boolean,
): Markup | undefined {
  const told = `${rule}/${key}`;
  if (!SIGNED.has(told) || !room()) return undefined;
  switch (told) {
    case "caster.unbraked/rolls": {
      const named = new Set(frame.stands.filter(({ brake }) => !brake).map(({ ref }) => ref.id));
      const symbols = signs(frame, scene);
      return figure(
        signedPicture(scene, { symbols, named, title: "casters and what acts on the frame" }),
        "Brought out: casters without a brake set. Blue: what is declared to act on it.",
      );
    }
    case "stock.mixed/keys":
      return keysPicture(frame, scene);
    case "stock.mixed/slots":
      return slotsPicture(frame, scene);
    case "load.none/none":
      return figure(
        signedPicture(scene, { symbols: signs(frame, scene), title: "the frame as it is declared" }),
        "The frame as it is declared: no arrow of a load and no box of goods is on it.",
      );
    case "load.none/lost":
    case "load.none/twice": {
      const loads = new Set([at, ...related.map((other) => other.at)].map(({ id }) => id));
      const on = frame.loads.filter(({ ref }) => loads.has(ref.id)).flatMap((load) => load.on);
      const symbols = signs(frame, scene, (load) => loads.has(load));
      return figure(
        signedPicture(scene, { symbols, named: new Set(on), title: `the load ${at.id} and what it is on` }),
        key === "lost"
          ? `Blue: ${at.id}; brought out: what it is on.`
          : `Blue: both loads; brought out: what bears them.`,
      );
    }
    case "frame.tips/declared":
    case "frame.tips/slides":
      return figure(
        signedPicture(scene, { symbols: signs(frame, scene), title: "what acts on the frame" }),
        "Blue: what is declared to act on it; under it: what it stands on.",
      );
    default:
      return undefined;
  }
}

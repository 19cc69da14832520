import type { ModelData } from "../drawing/model3d/model-data.ts";
import { stepOf, UNJUDGED } from "../drawing/share-steps.ts";

export type Rgb = readonly [number, number, number];

/** How bars are coloured: plain, by sub-assembly, or by the share they use of one check's limit. */
export type Scheme =
  | { readonly by: "plain" }
  | { readonly by: "group" }
  | { readonly by: "check"; readonly index: number };

export const rgb = (code: string): Rgb =>
  [0, 2, 4].map((i) => Number.parseInt(code.slice(i, i + 2), 16)) as unknown as Rgb;

/** Neighbours differ in lightness as well as in hue. */
const GROUPS: readonly Rgb[] = ["1d5c68", "e2b04a", "7c4f8a", "a8c686", "a8503a", "9db9e0", "4c4a3d", "d9a0a0"].map(
  rgb,
);

const BAR: Rgb = rgb("dfe2e1");
const PIECE: Rgb = rgb("b4b9bb");
const SCREW: Rgb = rgb("6c7478");
const PANEL: Rgb = rgb("d8cfb4");
const CHOSEN: Rgb = rgb("f0b429");

export const INK: Rgb = rgb("20262b");
/** Edges of what is chosen: they tell it when faces are seen through. */
const CHOSEN_INK: Rgb = rgb("8a4b00");

export const groupColour = (group: number): Rgb => GROUPS[group % GROUPS.length] ?? BAR;

function ofBar(model: ModelData, index: number, scheme: Scheme): Rgb {
  const bar = model.bars[index];
  if (!bar || scheme.by === "plain") return BAR;
  if (scheme.by === "group") return bar.group < 0 ? BAR : groupColour(bar.group);
  const share = bar.shares[scheme.index] ?? null;
  return rgb((share === null ? undefined : stepOf(share)?.colour) ?? UNJUDGED.colour);
}

/** Colour of each part: bars, then pieces. */
export function coloursOf(model: ModelData, scheme: Scheme, chosen: ReadonlySet<string>): readonly Rgb[] {
  const bars = model.bars.map((bar, i) => (chosen.has(bar.id) ? CHOSEN : ofBar(model, i, scheme)));
  const pieces = model.pieces.map(({ kind, id, bar }) => {
    if (chosen.has(id)) return CHOSEN;
    if (kind === "panel") return PANEL;
    if (scheme.by === "group" && bar >= 0) return ofBar(model, bar, scheme);
    return kind === "screw" ? SCREW : PIECE;
  });
  return [...bars, ...pieces];
}

/** Ink of the edges of each part: bars, then pieces. */
export const inksOf = (model: ModelData, chosen: ReadonlySet<string>): readonly Rgb[] =>
  [...model.bars, ...model.pieces].map(({ id }) => (chosen.has(id) ? CHOSEN_INK : INK));

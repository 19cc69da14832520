import { FLOOR_FRICTION } from "../../model/resolve/surroundings.ts";
import { bar, brackets, ids, type Kind, longBracket, STEADY, spread, usualLoad } from "./drawing.ts";
import type { Series } from "./series.ts";

/** In widths of the profile. */
const BASE = 2.5;
/** The posts stand in by room for a bracket on their outer side. */
const INSET = 2.5;
const FIRST_CROSS = INSET + 2.5;
const FIRST_TOP_CROSS = 2.5;
const CROSS_SPACING = 15;
const HANDLE = 6;

/** Height of the handle over the floor. */
function gripHeight({ pitch, boardThickness }: Series, height: number): number {
  return height - boardThickness - pitch / 2 + HANDLE * pitch;
}

/**
 * Least length. A push at the handle lifts the casters on its side when push · height > weight · half the wheelbase, and slides the
 * cart when push > friction · weight: however it is laden it slides first when half the wheelbase is at least friction · height.
 */
function leastLength(series: Series, height: number): number {
  return 2 * INSET * series.pitch + 2 * FLOOR_FRICTION * gripHeight(series, height);
}

/** A cart: two decks on four posts, braked casters under the handle's end. The height counts to the top of the upper deck's board; the handle stands above it. */
export const cart: Kind = {
  article: "a cart",
  ranges: (series, height) => {
    const { pitch: p, caster } = series;
    // Nothing but the brackets at the tops of its posts keeps a cart from swaying: the smallest profiles are too light for one.
    if (caster === undefined) return undefined;
    const least = caster.height + 11 * p;
    return {
      length: [Math.max(18 * p, 2 * INSET * p + STEADY * height, leastLength(series, height)), 22 * p],
      depth: [Math.max(9 * p, p + STEADY * height), 13 * p],
      height: [least, least + 7 * p],
    };
  },
  draw({ series, profile, length, depth, height }) {
    const p = series.pitch;
    const { part: caster = "", height: foot = 0 } = series.caster ?? {};
    const [left, right, front, back] = [INSET * p, length - INSET * p, p / 2, depth - p / 2];
    const top = height - series.boardThickness - p / 2;
    const low = foot + BASE * p;
    const grip = gripHeight(series, height);
    const posts = [
      [left, front],
      [right, front],
      [right, back],
      [left, back],
    ].map(([x = 0, y = 0], i) => bar(`post-${i + 1}`, profile, [x, y, foot], [x, y, top]));
    const base = [
      bar("base-front", profile, [left, front, low], [right, front, low]),
      bar("base-back", profile, [left, back, low], [right, back, low]),
      bar("base-left", profile, [left, front, low], [left, back, low]),
      bar("base-right", profile, [right, front, low], [right, back, low]),
    ];
    const across = (name: string, first: number, z: number) =>
      spread(first * p, length - first * p, CROSS_SPACING * p).map((x, i) =>
        bar(`${name}-${i + 1}`, profile, [x, front, z], [x, back, z]),
      );
    const crosses = across("base-cross", FIRST_CROSS, low);
    const rails = [
      bar("top-front", profile, [0, front, top], [length, front, top]),
      bar("top-back", profile, [0, back, top], [length, back, top]),
    ];
    const topCrosses = across("top-cross", FIRST_TOP_CROSS, top);
    const stem = FIRST_TOP_CROSS * p;
    const handle = [
      bar("handle-1", profile, [stem, front, top], [stem, front, grip]),
      bar("handle-2", profile, [stem, back, top], [stem, back, grip]),
      bar("handle", profile, [stem, 0, grip], [stem, depth, grip]),
    ];
    return {
      title: "Cart",
      notes: "A first draft: set the loads to what it will carry.",
      kits: {
        level: brackets(series, ["above", "below"]),
        sides: brackets(series, ["+x", "-x"]),
        "grip-front": longBracket(series, "+y"),
        "grip-back": longBracket(series, "-y"),
      },
      bars: [...posts, ...base, ...crosses, ...rails, ...topCrosses, ...handle],
      joints: [
        { bars: ids(posts), ends: "to", by: "sides" },
        { bars: ids(base), by: "level" },
        { bars: ids([...crosses, ...topCrosses]), by: "sides" },
        { bars: ["handle-1", "handle-2"], ends: "from", by: "sides" },
        { bars: ["handle-1"], ends: "to", by: "grip-front" },
        { bars: ["handle-2"], ends: "to", by: "grip-back" },
      ],
      panels: [
        { id: "deck", sheet: series.board, held: "laid", bars: ids(crosses) },
        { id: "tray", sheet: series.board, held: "laid", bars: ids(topCrosses) },
      ],
      stands: [
        { part: `${caster}-braked`, bars: ["post-1", "post-4"], brake: true },
        { part: caster, bars: ["post-2", "post-3"] },
      ],
      loads: [
        { case: "goods", on: "deck", pressure: usualLoad(series, "goods") },
        { case: "goods", on: "tray", pressure: usualLoad(series, "light goods") },
        { case: "push", on: "handle", force: usualLoad(series, "push"), direction: "+x", at: "middle" },
      ],
      cases: [
        { id: "goods", kind: "variable", about: "what lies on the decks" },
        { id: "push", kind: "variable", about: "starting with a full load" },
      ],
    };
  },
};

import { bar, brackets, ids, type Kind, type Part, STEADY, spread, tidy, usualLoad, type Wish } from "./drawing.ts";

/** All sizes below are in widths of the profile. Brackets are one width long: a leg stands in by room for one on its outer side. */
const INSET = 2.5;
const BAY = 30;
const CROSS_SPACING = 14;
const SHELF_HEIGHT = 4;
const SHELF_INSET = 2.75;

/**
 * Boards side by side over the top, each on cross bars of its own: one over the whole top where two people can lift it. A board stands
 * past its outermost cross bars as the rails stand past the first leg, and at the back and front to the outer faces of the rails.
 */
function topOf(
  { series, profile, length, depth }: Wish,
  top: number,
): { crosses: readonly Part[]; boards: readonly Part[] } {
  const { pitch: p, board: sheet } = series;
  const [front, back] = [p / 2, depth - p / 2];
  const count = Math.ceil((length * depth) / series.boardArea);
  const wide = length / count;
  const groups = Array.from({ length: count }, (_, i) =>
    spread(i * wide + INSET * p, (i + 1) * wide - INSET * p, CROSS_SPACING * p),
  );
  const cross = (x: number, n: number): Part => bar(`cross-${n + 1}`, profile, [x, front, top], [x, back, top]);
  const crosses = groups.map((xs, i) => xs.map((x, j) => cross(x, groups.slice(0, i).flat().length + j)));
  const [only, ...others] = crosses;
  if (only !== undefined && others.length === 0)
    return { crosses: only, boards: [{ id: "top", sheet, held: "laid", bars: ["front", "back", ...ids(only)] }] };
  const past = tidy((INSET - 1 / 2) * p);
  const boards = crosses.map((own, i) => {
    const overhang = [past, past, p, p];
    return { id: `top-${i + 1}`, sheet, held: "laid", bars: ids(own), overhang };
  });
  return { crosses: crosses.flat(), boards };
}

/** From this height on, in pitches, people lean on it; a lower one they would push along the floor. */
const LEANT_ON = 20;

/** A bench: rails seated on legs, cross bars under a board, a shelf between the legs. The height counts to the top of the board. */
export const bench: Kind = {
  article: "a bench",
  ranges: ({ pitch: p, firm }, height) => ({
    length: [Math.max(15 * p, 2 * INSET * p + STEADY * height), 100 * p],
    depth: [Math.max(10 * p, p + STEADY * height), 26 * firm * p],
    height: [13 * p, 40 * firm * p],
  }),
  draw(wish) {
    const { series, profile, length, depth, height } = wish;
    const { pitch: p, raise } = series;
    const leans = height >= LEANT_ON * p;
    const [front, back] = [p / 2, depth - p / 2];
    const top = height - series.boardThickness - p / 2;
    const low = raise + SHELF_HEIGHT * p;
    const stations = spread(INSET * p, length - INSET * p, BAY * p);
    const legs = [front, back].flatMap((y, side) =>
      stations.map((x, i) => bar(`leg-${side * stations.length + i + 1}`, profile, [x, y, raise], [x, y, top])),
    );
    const rails = [
      bar("front", profile, [0, front, top], [length, front, top]),
      bar("back", profile, [0, back, top], [length, back, top]),
    ];
    const { crosses, boards: tops } = topOf(wish, top);
    const sides = stations.map((x, i) => bar(`side-${i + 1}`, profile, [x, front, low], [x, back, low]));
    // Without a rail low down between the back legs, only the brackets at their tops keep a long bench from swaying.
    const stretchers = stations
      .slice(1)
      .map((x, i) => bar(`stretcher-${i + 1}`, profile, [stations[i] ?? 0, back, low], [x, back, low]));
    const inset = Math.max(SHELF_INSET * p, tidy(depth / 4));
    const bays = stations
      .slice(1)
      .map((x, i): readonly Part[] =>
        [inset, depth - inset].map((y, side) =>
          bar(`shelf-${2 * i + side + 1}`, profile, [stations[i] ?? 0, y, low], [x, y, low]),
        ),
      );
    const boards = bays.map((shelves, i) => ({
      id: `shelf-board-${i + 1}`,
      sheet: series.board,
      held: "laid",
      bars: ids(shelves),
    }));
    return {
      title: "Bench",
      notes: "A first draft: set the loads to what it will carry.",
      kits: {
        sides: brackets(series, ["+x", "-x"]),
        across: brackets(series, ["+y", "-y"]),
        level: brackets(series, ["above", "below"]),
      },
      bars: [...legs, ...rails, ...crosses, ...sides, ...stretchers, ...bays.flat()],
      joints: [
        { bars: ids(legs), ends: "to", by: "sides" },
        { bars: ids(crosses), by: "sides" },
        { bars: ids([...sides, ...stretchers]), by: "level" },
        { bars: ids(bays.flat()), by: "across" },
      ],
      panels: [...tops, ...boards],
      stands: [{ part: series.foot, bars: ids(legs), raise }],
      loads: [
        { case: "goods", on: tops.length === 1 ? "top" : ids(tops), pressure: usualLoad(series, "goods") },
        { case: "stores", on: ids(boards), pressure: usualLoad(series, "light goods") },
        ...(leans
          ? [{ case: "lean", on: "front", force: usualLoad(series, "lean"), direction: "+y", at: "middle" }]
          : []),
      ],
      cases: [
        { id: "goods", kind: "variable", about: "what stands on the bench" },
        { id: "stores", kind: "variable", about: "what lies on the shelf" },
        ...(leans ? [{ id: "lean", kind: "variable", about: "a person leaning on the front" }] : []),
      ],
    };
  },
};

import { bar, brackets, ids, type Kind, type Part, STEADY, spread, tidy, usualLoad } from "./drawing.ts";

/** All sizes below are in widths of the profile. Brackets are one width long: a leg stands in by room for one on its outer side. */
const INSET = 2.5;
const BAY = 30;
const CROSS_SPACING = 15;
const SHELF_HEIGHT = 4;
const SHELF_INSET = 2.75;

/** A bench: rails seated on legs, cross bars under a board, a shelf between the legs. The height counts to the top of the board. */
export const bench: Kind = {
  article: "a bench",
  ranges: ({ pitch: p, firm }, height) => ({
    length: [Math.max(15 * p, 2 * INSET * p + STEADY * height), 100 * p],
    depth: [Math.max(10 * p, p + STEADY * height), 26 * firm * p],
    height: [13 * p, 40 * firm * p],
  }),
  draw({ series, profile, length, depth, height }) {
    const { pitch: p, raise } = series;
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
    const crosses = spread(INSET * p, length - INSET * p, CROSS_SPACING * p).map((x, i) =>
      bar(`cross-${i + 1}`, profile, [x, front, top], [x, back, top]),
    );
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
      panels: [{ id: "top", sheet: series.board, held: "laid", bars: ["front", "back", ...ids(crosses)] }, ...boards],
      stands: [{ part: series.foot, bars: ids(legs), raise }],
      loads: [
        { case: "goods", on: "top", pressure: usualLoad(series, "goods") },
        { case: "stores", on: ids(boards), pressure: usualLoad(series, "light goods") },
        { case: "lean", on: "front", force: usualLoad(series, "lean"), direction: "+y", at: "middle" },
      ],
      cases: [
        { id: "goods", kind: "variable", about: "what stands on the bench" },
        { id: "stores", kind: "variable", about: "what lies on the shelf" },
        { id: "lean", kind: "variable", about: "a person leaning on the front" },
      ],
    };
  },
};

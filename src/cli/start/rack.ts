import { bar, brackets, ids, type Kind, type Part, spread, tidy, usualLoad } from "./drawing.ts";

/** In widths of the profile. */
const INSET = 2.5;
const BAY = 30;
const SLAT_SPACING = 12;
const LOWEST = 4;
const LEVEL = 10;

/** Middles of equal parts of a bay, at least two. */
function slatsIn(from: number, to: number, most: number): readonly number[] {
  const count = Math.max(2, Math.ceil((to - from) / most));
  return Array.from({ length: count }, (_, i) => from + ((to - from) * (i + 0.5)) / count);
}

/** A tall rack: posts that run through, levels hung between them and copied upwards, the top level seated on the posts. */
export const rack: Kind = {
  article: "a rack",
  ranges: ({ pitch: p }) => ({ length: [17 * p, 100 * p], depth: [8 * p, 24 * p], height: [26 * p, 65 * p] }),
  draw({ series, profile, length, depth, height }) {
    const { pitch: p, raise } = series;
    const [front, back] = [p / 2, depth - p / 2];
    const top = height - series.boardThickness - p / 2;
    const low = raise + LOWEST * p;
    const levels = Math.max(2, Math.round((top - low) / (LEVEL * p)));
    const rise = tidy((top - low) / levels);
    const stations = spread(INSET * p, length - INSET * p, BAY * p);
    const bayEnds = stations.slice(1).map((x, i): readonly [number, number] => [stations[i] ?? 0, x]);
    const posts = [front, back].flatMap((y, side) =>
      stations.map((x, i) => bar(`post-${side * stations.length + i + 1}`, profile, [x, y, raise], [x, y, top])),
    );
    const beams = bayEnds.flatMap(([x0, x1], i) => [
      bar(`front-${i + 1}`, profile, [x0, front, low], [x1, front, low]),
      bar(`back-${i + 1}`, profile, [x0, back, low], [x1, back, low]),
    ]);
    const sides = stations.map((x, i) => bar(`side-${i + 1}`, profile, [x, front, low], [x, back, low]));
    const places = bayEnds.map(([x0, x1]) => slatsIn(x0, x1, SLAT_SPACING * p));
    const slatsAt = (name: string, z: number): readonly (readonly Part[])[] =>
      places.map((xs, bay) =>
        xs.map((x, i) => bar(`${name}-${bay * xs.length + i + 1}`, profile, [x, front, z], [x, back, z])),
      );
    const slats = slatsAt("slat", low);
    const topSlats = slatsAt("top-slat", top);
    const rails = [
      bar("top-front", profile, [0, front, top], [length, front, top]),
      bar("top-back", profile, [0, back, top], [length, back, top]),
    ];
    const boards = slats.map((own, i) => ({
      id: `board-${i + 1}`,
      sheet: series.board,
      held: "laid",
      bars: ids(own),
    }));
    // A board a bay: one over the whole top of a long rack is too heavy for two people.
    const topBoards = topSlats.map((own, i) => ({
      id: `top-board-${i + 1}`,
      sheet: series.board,
      held: "laid",
      bars: ids(own),
    }));
    const copied = [...beams, ...sides, ...slats.flat(), ...boards];
    const times = levels - 1;
    return {
      title: "Rack",
      notes: "A first draft: set the loads to what it will carry, and anchor it if it is tall and narrow.",
      kits: { sides: brackets(series, ["+x", "-x"]), level: brackets(series, ["above", "below"]) },
      bars: [...posts, ...beams, ...sides, ...slats.flat(), ...rails, ...topSlats.flat()],
      joints: [
        { bars: ids(posts), ends: "to", by: "sides" },
        { bars: ids([...beams, ...sides]), by: "level" },
        { bars: ids([...slats, ...topSlats].flat()), by: "sides" },
      ],
      panels: [...boards, ...topBoards],
      copies: [{ of: ids(copied), shift: [0, 0, rise], ...(times > 1 ? { times } : {}), suffix: "-up" }],
      stands: [{ part: series.foot, bars: ids(posts), raise, hold: "anchored" }],
      loads: [
        // The copies bring theirs along.
        { case: "goods", on: ids(boards), pressure: usualLoad(series, "goods") },
        { case: "goods", on: ids(topBoards), pressure: usualLoad(series, "light goods") },
      ],
      cases: [{ id: "goods", kind: "variable", about: "what stands on the levels" }],
    };
  },
};

import { bar, type Drawing, ids, type Kind, type Part, usualLoad, type Wish } from "./drawing.ts";

/** Smaller profiles on end fasteners sway too far: their sheets lie loose in the slots and brace nothing. */
const LIGHTEST = { mm: 40, in: 1.5 } as const;
/** In widths of the profile: the widest roof of a heavier series, whose sheet is thicker, that two people lift. */
const HEAVY_ROOF = 22;
/**
 * In widths of the profile: on a wider door, whose rails one end fastener a corner holds, the free stile may come down onto the sill where
 * joints are soft (door.sags); one width less for five of height.
 */
const WIDEST_DOOR = { low: 29.3, lessPerHeight: 0.2 } as const;
const TALLEST = 42;
const LOW_RAIL = 1;
/** From the end of a stile of the door to the rail that meets it, so that the rail's nut keeps clear of the end. */
const DOOR_RAIL = 0.75;
const HINGE_FROM_END = 4;
/** Corners cut from a lower panel to clear the end fastener of the rail above it, in widths: along the rail, and down from it. */
const NOTCH = [1, 0.4] as const;
/** Corners cut from an upper panel of the sides to clear the top rails across, in widths. */
const CORNER = [0.3125, 0.3125] as const;

/** Where the bars of a guard lie: coordinates of their centrelines. */
interface Lines {
  readonly left: number;
  readonly right: number;
  readonly front: number;
  readonly back: number;
  readonly low: number;
  readonly middle: number;
  readonly top: number;
}

function linesOf({ series: { pitch: p, raise }, length, depth, height }: Wish): Lines {
  const [left, right] = [p, length - p];
  const [low, top] = [raise + LOW_RAIL * p, height - p / 2];
  return {
    left,
    right,
    front: p / 2,
    back: depth - p / 2,
    low,
    middle: (low + top) / 2,
    top,
  };
}

function doorBars({ series: { pitch: p, hingeGap: gap }, profile }: Wish, at: Lines): readonly Part[] {
  const hung = at.left + p + gap;
  const free = at.right - p - gap;
  const [bottom, head] = [at.low + p / 2 + gap, at.top - p / 2 - gap];
  const rail = (id: string, z: number): Part => bar(id, profile, [hung, at.front, z], [free, at.front, z]);
  return [
    bar("door-hung", profile, [hung, at.front, bottom], [hung, at.front, head]),
    bar("door-free", profile, [free, at.front, bottom], [free, at.front, head]),
    rail("door-foot", bottom + DOOR_RAIL * p),
    rail("door-waist", at.middle),
    rail("door-head", head - DOOR_RAIL * p),
  ];
}

function panelsOf({ series: { pitch: p, clear, gasket } }: Wish): readonly Part[] {
  const panel = (id: string, edges: readonly string[], notch?: readonly [number, number]): Part => ({
    id,
    sheet: clear,
    held: "in-slot",
    gasket,
    ...(notch ? { notches: notch.map((share) => share * p) } : {}),
    edges: edges.map((edge) => ({ bar: edge })),
  });
  const pair = (
    side: string,
    from: string,
    to: string,
    [low, middle, top]: readonly [string, string, string],
    upper?: readonly [number, number],
  ) => [panel(`${side}-lower`, [from, middle, to, low], NOTCH), panel(`${side}-upper`, [from, top, to, middle], upper)];
  return [
    ...pair("left", "post-4", "post-1", ["low-left", "mid-left", "top-left"], CORNER),
    ...pair("right", "post-2", "post-3", ["low-right", "mid-right", "top-right"], CORNER),
    ...pair("back", "post-3", "post-4", ["low-back", "mid-back", "top-back"]),
    ...pair("door", "door-hung", "door-free", ["door-foot", "door-waist", "door-head"]),
    panel("roof", ["top-front", "top-left", "top-back", "top-right"]),
  ];
}

function doorOf({ series: { pitch: p, size, hingeGap } }: Wish, at: Lines, bars: readonly Part[]): Part {
  const hinge = (z: number): Part => ({
    part: `hinge-${size}`,
    bars: ["door-hung", "post-1"],
    at: [at.left + p / 2 + hingeGap / 2, 0, z],
  });
  return {
    id: "door",
    bars: ids(bars),
    panels: ["door-lower", "door-upper"],
    axis: "-z",
    swing: [0, 110],
    hinges: [hinge(at.low + HINGE_FROM_END * p), hinge(at.top - HINGE_FROM_END * p)],
    latch: {
      part: `pivot-${size}`,
      bars: ["door-free", "post-2"],
      at: [at.right - p / 2 - hingeGap / 2, 0, at.middle + 2 * p],
    },
  };
}

function drawGuard(wish: Wish): Drawing {
  const { series, profile, length } = wish;
  const at = linesOf(wish);
  const { left, right, front, back, low, middle, top } = at;
  const post = (n: number, x: number, y: number): Part => bar(`post-${n}`, profile, [x, y, series.raise], [x, y, top]);
  const ringSide = (name: string, z: number): readonly Part[] => [
    bar(`${name}-left`, profile, [left, front, z], [left, back, z]),
    bar(`${name}-right`, profile, [right, front, z], [right, back, z]),
  ];
  const along = (id: string, y: number, z: number): Part => bar(id, profile, [left, y, z], [right, y, z]);
  const posts = [post(1, left, front), post(2, right, front), post(3, right, back), post(4, left, back)];
  const tops = [
    bar("top-front", profile, [0, front, top], [length, front, top]),
    bar("top-back", profile, [0, back, top], [length, back, top]),
    ...ringSide("top", top),
  ];
  const lows = [along("low-front", front, low), along("low-back", back, low), ...ringSide("low", low)];
  const mids = [...ringSide("mid", middle), along("mid-back", back, middle)];
  const door = doorBars(wish, at);
  const kit = (on: string): readonly Part[] => [{ connector: series.endFastener, on }];
  const under = [...lows, ...mids, ...door.slice(2, 4)];
  return {
    title: "Machine guard",
    notes: "A first draft: add the places nobody may reach under zones, and set the loads.",
    kits: { under: kit("below"), over: kit("above"), left: kit("-x"), right: kit("+x") },
    bars: [...posts, ...tops, ...lows, ...mids, ...door],
    joints: [
      { bars: ["post-1", "post-4"], ends: "to", by: "left" },
      { bars: ["post-2", "post-3"], ends: "to", by: "right" },
      { bars: ["top-left"], by: "left" },
      { bars: ["top-right"], by: "right" },
      { bars: ids(under), by: "under" },
      { bars: ["door-head"], by: "over" },
    ],
    panels: panelsOf(wish),
    doors: [doorOf(wish, at, door)],
    stands: [{ part: series.foot, bars: ids(posts), raise: series.raise, hold: "anchored" }],
    loads: [
      {
        case: "lean",
        on: "mid-back",
        force: usualLoad(series, "lean"),
        direction: "-y",
        at: "middle",
      },
      { case: "push", on: "door-waist", force: usualLoad(series, "push"), direction: "-y", at: "middle" },
    ],
    cases: [
      { id: "lean", kind: "variable", about: "a person leaning on the back" },
      { id: "push", kind: "accidental", about: "the latched door pushed from inside" },
    ],
  };
}

/**
 * A closed guard with a door: end fasteners throughout, sheets in the slots. Wider than this it would want a stiffer door, or an upright with
 * sheets on both sides, which lie over the screws of its end fasteners. The depth and height are those of the bars.
 */
export const guard: Kind = {
  article: "a guard",
  ranges: ({ pitch: p, units }, height) => {
    const lightest = units === "mm-N-kg" ? LIGHTEST.mm : LIGHTEST.in;
    if (p < lightest) return undefined;
    const roof = p > lightest ? HEAVY_ROOF * p : Infinity;
    const door = WIDEST_DOOR.low * p - WIDEST_DOOR.lessPerHeight * Math.min(height, TALLEST * p);
    return { length: [17 * p, Math.min(roof, door)], depth: [10 * p, 26 * p], height: [20 * p, TALLEST * p] };
  },
  draw: drawGuard,
};

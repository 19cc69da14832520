/** What the page's own viewer is given: the frame as numbers, mm, rounded; no name is anything but text to be shown. */
export interface ModelData {
  readonly profiles: readonly ProfileData[];
  readonly bars: readonly BarData[];
  /** Shapes of pieces, each given once however many pieces have it. */
  readonly forms: readonly FormData[];
  readonly pieces: readonly PieceData[];
  /** Rules that give each bar a share of a limit. */
  readonly checks: readonly { readonly rule: string; readonly title: string }[];
  readonly groups: readonly string[];
  /** Ways in which the frame moves. */
  readonly shapes: readonly ShapeData[];
  readonly paths: readonly PathData[];
  readonly doors: readonly DoorData[];
  /** Arrows of loads: from and to, six numbers each. */
  readonly arrows: readonly (readonly number[])[];
  /** Moments, by their axis from and to in the same way. */
  readonly moments: readonly (readonly number[])[];
  readonly supports: readonly { readonly at: readonly number[]; readonly hold: "rest" | "anchored" | "rolling" }[];
  /** Dashed boxes of goods: the ends of their edges. */
  readonly boxes: readonly number[];
  readonly pins: readonly PinData[];
  readonly poses: readonly PoseData[];
  readonly tools: readonly ToolData[];
  readonly guards: readonly GuardData[];
  readonly tips: readonly TipData[];
}

/** A line that the frame tips over, with its centre of mass over the floor: mm, three numbers a point. */
export interface TipData {
  /** What stands at the line, and at the centre of mass. */
  readonly words: string;
  readonly line: readonly number[];
  /** The centre of mass, where it is plumb over the floor, and the nearest point of the line; empty where it is not known. */
  readonly centre: readonly number[];
  readonly below: readonly number[];
  readonly nearest: readonly number[];
  /** Level, into the frame, a unit vector. */
  readonly inward: readonly number[];
}

/** A zone of danger, what lies open before it and the shortest way there: mm, three numbers a point. */
export interface GuardData {
  readonly words: string;
  /** Where the words stand, and the way to the people there, a unit vector. */
  readonly at: readonly number[];
  readonly out: readonly number[];
  /** Corners of triangles. */
  readonly filled: readonly number[];
  /** Ends of lines: the outline of what is open, the zone, and the way. */
  readonly open: readonly number[];
  readonly zone: readonly number[];
  readonly way: readonly number[];
}

/** The turn of a tool about a screw: mm, unit vectors, and the free arcs from and to, rad. */
export interface ToolData {
  readonly words: string;
  readonly at: readonly number[];
  readonly zero: readonly number[];
  readonly quarter: readonly number[];
  readonly reach: number;
  readonly free: readonly number[];
}

/** What is shown with a finding that has a shape, a load path, the turn of a tool, a guard, a way to tip or doors of its own; −1 where it has none. */
export interface PoseData {
  /** "3.2" */
  readonly finding: string;
  readonly shape: number;
  readonly path: number;
  readonly tool: number;
  readonly guard: number;
  readonly tip: number;
  /** By which share of its way each door stands open; empty where it says nothing of doors. */
  readonly open: readonly number[];
}

export interface ShapeData {
  readonly kind: "bent" | "buckled" | "swinging" | "loose" | "turning";
  readonly name: string;
  /** Of the loads, at which it buckles so. */
  readonly factor?: number;
  /** At which it swings so, Hz. */
  readonly frequency?: number;
  /** Greatest displacement of an axis, mm, and greatest turn of a bar about its own, rad. */
  readonly most: number;
  readonly turns: number;
}

/** How the loads of one combination run to the floor. */
export interface PathData {
  readonly name: string;
  /** What the feet bear of it, in words. */
  readonly sum: string;
  /** For each bar: stretches from and to shares of its length, force and axial force [N], pull positive; four numbers each. */
  readonly carried: readonly (readonly number[])[];
  /** Bars by index; forces [N] of the giver on the taker: what bears, what fasteners hold. */
  readonly passings: readonly {
    readonly giver: number;
    readonly taker: number;
    readonly at: readonly number[];
    readonly seat: readonly number[];
    readonly held: readonly number[];
    readonly words: string;
  }[];
  /** Forces on the floor, N. */
  readonly feet: readonly {
    readonly at: readonly number[];
    readonly force: readonly number[];
    readonly words: string;
  }[];
}

/** A door that can be opened. */
export interface DoorData {
  readonly id: string;
  /** On its axis, and along it. */
  readonly point: readonly number[];
  readonly axis: readonly number[];
  /** Shut and fully open, rad; the drawing has it at zero. */
  readonly swing: readonly [number, number];
  /** Turn from shut at which it strikes something, rad. */
  readonly strikes?: number;
  /** What swings: bars by index, then pieces after all bars. */
  readonly parts: readonly number[];
  /** The way of its farthest point, three numbers each. */
  readonly arc: readonly number[];
}

/** Points [y, z] of the outline and then of the holes, two numbers each, and triangles over them. */
export interface ProfileData {
  readonly outer: readonly number[];
  readonly holes: readonly (readonly number[])[];
  readonly triangles: readonly number[];
  /** Half the size along y and z. */
  readonly half: readonly [number, number];
}

export interface BarData {
  readonly id: string;
  /** "40x40-8, 780 mm". */
  readonly what: string;
  readonly profile: number;
  /** Drawn from point, then section axes x y z. */
  readonly frame: readonly number[];
  /** Point and outward normal of the two cuts. */
  readonly cuts: readonly [readonly number[], readonly number[]];
  /** Share of each check's limit; null where it does not apply. */
  readonly shares: readonly (number | null)[];
  /** Place in `groups`, −1 for none. */
  readonly group: number;
  /** For each shape: displacement [mm] of the axis and turn about it [rad] at evenly spaced stations, four numbers each; empty where unknown. */
  readonly moved: readonly (readonly number[])[];
}

export interface FormData {
  /** Corners from the first one, tenths of a mm, three numbers each: most are small whole numbers. */
  readonly points: readonly number[];
  /** Flat faces: their corners by place in that list; triangles over them where they are not convex. */
  readonly faces: readonly { readonly at: readonly number[]; readonly triangles?: readonly number[] }[];
}

export interface PieceData {
  readonly kind: "connector" | "screw" | "panel" | "stand" | "cap" | "mass";
  readonly id: string;
  /** The bar it goes with, −1 for none. */
  readonly bar: number;
  /** Its first corner, mm, and its shape from there: a place in `forms`. */
  readonly origin: readonly number[];
  readonly form: number;
}

/** A numbered part with findings. */
export interface PinData {
  readonly number: number;
  readonly where: string;
  readonly level: "reject" | "hold" | "note" | "conceded";
  readonly at: readonly number[];
  /** The id of the part. */
  readonly part: string;
  /** Bars to bring out when it is chosen. */
  readonly bars: readonly string[];
}

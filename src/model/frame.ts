import type { EndName, Ref } from "./ref.ts";
import type {
  Cap,
  Connector,
  FaceName,
  Gasket,
  Profile,
  Screw,
  Sheet,
  Stand as StandPart,
  Stock,
} from "./stock/stock.ts";
import type { Si } from "./units/quantity.ts";
import type { UnitSystem } from "./units/unit-system.ts";

/** A point or direction [x, y, z] of the drawing; points in m, +z up. */
export type Triple = readonly [number, number, number];

/**
 * One frame as its author meant it: SI units, names resolved to parts and stock, copies made, defaults filled in,
 * immutable. Nothing here needed geometry; where an end is cut and what it touches are facts.
 */
export interface Frame {
  readonly title: string;
  readonly revision?: string;
  readonly units: UnitSystem;
  readonly stock: Stock;
  readonly bars: readonly Bar[];
  readonly joints: readonly Joint[];
  readonly fastenings: readonly Fastening[];
  readonly ties: readonly Tie[];
  readonly pivots: readonly Pivot[];
  readonly panels: readonly Panel[];
  readonly doors: readonly Door[];
  readonly stands: readonly Stand[];
  readonly masses: readonly Mass[];
  readonly loads: readonly Load[];
  readonly cases: readonly LoadCase[];
  readonly groups: readonly Group[];
  readonly zones: readonly Zone[];
  readonly site: Site;
  readonly floor: Floor;
  /** How strength is judged; where neither file nor house says, by partial factors. */
  readonly method?: StrengthMethod;
  /** What holds for the screws of ties, pivots, doors and panels: they have no words of their own for it. */
  readonly screwing: Screwing;
  /** Criteria set in the file, by criterion name. */
  readonly criteria: ReadonlyMap<string, CriterionSetting>;
  /** What the file left open and was assumed, in words. */
  readonly assumed: readonly string[];
}

/** Reserve on loads and strengths apart, or loads at their own size against strengths over a safety factor. */
export type StrengthMethod = "partial-factors" | "allowable-stress";

/** A limit as written: a number in the file's unit, a string with its unit, or a share of the span. */
export interface CriterionSetting {
  readonly value: number | string;
  readonly basis?: string;
}

export type Lock = "none" | "thread-lock" | "washer";
export type NutKind = "end-load" | "drop-in";

/** Nuts, locks and torque (N·m) that the file gives as its defaults. */
export interface Screwing {
  readonly nut: NutKind;
  readonly lock: Lock;
  readonly torque: "rated" | Si<"moment">;
}

/** A direction as written: a global direction, or words that need the geometry to resolve. */
export type FaceChoice =
  | { readonly by: "direction"; readonly direction: Triple; readonly written: string }
  | { readonly by: "word"; readonly word: "above" | "below" | "inner" | "outer" }
  | { readonly by: "name"; readonly name: FaceName };

/** Which of several slots or bores: furthest that way, by number, or all. */
export type Choice =
  | { readonly by: "direction"; readonly direction: Triple; readonly written: string }
  | { readonly by: "number"; readonly number: number }
  | { readonly by: "all" };

export interface Bar {
  readonly ref: Ref<"bar">;
  readonly profile: Profile;
  /** Drawn points on the centreline, m. */
  readonly from: Triple;
  readonly to: Triple;
  /** How the section stands: face A towards this direction (tall), or turned by this angle (rad) out of the usual position. */
  readonly stance:
    | { readonly by: "tall"; readonly direction: Triple }
    | { readonly by: "roll"; readonly angle: number };
  readonly ends: Readonly<Record<EndName, BarEnd>>;
  readonly holes: readonly DrilledHole[];
  readonly criteria: ReadonlyMap<string, CriterionSetting>;
}

export type Cut =
  /** At the face of the bar it meets; which one is derived unless named. */
  | { readonly kind: "butt"; readonly against?: string; readonly written: boolean }
  | { readonly kind: "as-drawn" }
  | { readonly kind: "mitre"; readonly with: string }
  | { readonly kind: "angle"; readonly angle: number; readonly about: Triple }
  | { readonly kind: "plane"; readonly normal: Triple };

export interface BarEnd {
  readonly ref: Ref<"end">;
  readonly bar: string;
  readonly end: EndName;
  readonly cut: Cut;
  /** A cap named, no cap wanted, or the frame's default: a cap if nothing else closes the end. */
  readonly cap:
    | { readonly kind: "part"; readonly part: Cap }
    | { readonly kind: "none" }
    | { readonly kind: "if-open" };
  readonly edge: "deburred" | "raw";
}

export interface DrilledHole {
  readonly at: Si<"length">;
  readonly on: FaceChoice;
  readonly diameter: Si<"length">;
  readonly through: boolean;
}

/** What is put on a bar's end: choices of the author beside the part of stock. */
export interface ConnectorChoice {
  readonly ref: Ref<"connector">;
  readonly part: Connector;
  readonly on?: FaceChoice;
  readonly slot?: Choice;
  readonly bore?: Choice;
  readonly screw: Screw;
  readonly nut: NutKind;
  /** Tightening torque, N·m, and whether it is the rated one. */
  readonly torque: Si<"moment">;
  readonly lock: Lock;
  readonly omit: readonly string[];
  readonly shift: Si<"length">;
}

/** One bar end fastened to the bar it meets. */
export interface Joint {
  readonly ref: Ref<"joint">;
  readonly bar: string;
  readonly end: EndName;
  /** Named by the author; otherwise the one bar whose face the end meets. */
  readonly onto?: string;
  readonly connectors: readonly ConnectorChoice[];
}

/** A plate or bracket placed by a point and a face. */
export interface Fastening {
  readonly ref: Ref<"joint">;
  readonly connector: ConnectorChoice;
  readonly on: FaceChoice;
  readonly against?: FaceChoice;
  readonly at: Triple;
  /** rad */
  readonly turn: number;
  readonly holds: readonly string[];
}

export interface Tie {
  readonly ref: Ref<"joint">;
  readonly bars: readonly [string, string];
  readonly part: Connector;
  /** Distances along the first bar from its from point, m. */
  readonly at: readonly Si<"length">[];
}

export interface Pivot {
  readonly ref: Ref<"joint">;
  readonly bars: readonly [string, string];
  readonly part: Connector;
  readonly at: Triple;
  readonly axis: Triple;
  readonly locked: boolean;
}

export type PanelEdge =
  | { readonly kind: "free" }
  | { readonly kind: "bar"; readonly bar: string; readonly slot?: Choice };

export interface Panel {
  readonly ref: Ref<"panel">;
  readonly sheet: Sheet;
  readonly held:
    | { readonly kind: "in-slot"; readonly edges: readonly PanelEdge[]; readonly gasket?: Gasket }
    | {
        readonly kind: "on-face";
        readonly bars: readonly string[];
        readonly on: Triple;
        readonly overhang: readonly [number, number, number, number];
        readonly screw?: Screw;
        readonly pitch?: Si<"length">;
      }
    | {
        readonly kind: "laid";
        readonly bars: readonly string[];
        readonly on: Triple;
        readonly overhang: readonly [number, number, number, number];
      };
  readonly size?: readonly [Si<"length">, Si<"length">];
  readonly notches?: readonly [Si<"length">, Si<"length">];
  readonly criteria: ReadonlyMap<string, CriterionSetting>;
}

export interface Door {
  readonly ref: Ref<"door">;
  readonly bars: readonly string[];
  readonly panels: readonly string[];
  readonly axis: Triple;
  readonly hinges: readonly {
    readonly part: Connector;
    readonly bars: readonly [string, string];
    readonly at: Triple;
  }[];
  readonly latch?: { readonly part: Connector; readonly bars: readonly [string, string]; readonly at: Triple };
  /** Shut and fully open, rad, right-handed about axis. */
  readonly swing: readonly [number, number];
}

export interface Stand {
  readonly ref: Ref<"stand">;
  readonly part: StandPart;
  readonly bar: string;
  /** The lower end when the author left it open. */
  readonly end?: EndName;
  readonly raise?: Si<"length">;
  readonly hold: "rest" | "anchored" | "rolling";
  readonly brake: boolean;
}

export interface Mass {
  readonly ref: Ref<"mass">;
  readonly mass: Si<"mass">;
  readonly centre: Triple;
  readonly box?: Triple;
  readonly on: readonly string[];
  readonly fixed: boolean;
  readonly rigid: boolean;
  readonly shakes?: Si<"frequency">;
  /** How far and which way it is pulled out in use, m; interlocked ones one at a time. */
  readonly slides?: { readonly by: Triple; readonly interlock: boolean };
}

export type LoadAmount =
  | { readonly kind: "force"; readonly value: Si<"force"> }
  | { readonly kind: "line"; readonly value: Si<"lineLoad"> }
  | { readonly kind: "pressure"; readonly value: Si<"pressure"> }
  | { readonly kind: "moment"; readonly value: Si<"moment"> };

export interface Load {
  readonly ref: Ref<"load">;
  readonly case: string;
  readonly on: readonly string[];
  readonly amount: LoadAmount;
  /** Unit vector. */
  readonly direction: Triple;
  readonly at:
    | { readonly kind: "middle" }
    | { readonly kind: "worst" }
    | { readonly kind: "distance"; readonly value: Si<"length"> };
  readonly part?: readonly [Si<"length">, Si<"length">];
  readonly face?: FaceChoice;
}

export interface LoadCase {
  readonly id: string;
  readonly kind: "permanent" | "variable" | "accidental";
  readonly excludes: readonly string[];
}

export interface Group {
  readonly ref: Ref<"group">;
  readonly parts: readonly string[];
  /** It comes put together. */
  readonly built: boolean;
}

export interface Zone {
  readonly ref: Ref<"zone">;
  readonly low: Triple;
  readonly high: Triple;
  readonly risk: "low" | "high";
}

export interface Site {
  readonly place: "indoors" | "outdoors";
  /** K, coldest and warmest. */
  readonly temperature: readonly [number, number];
  readonly vibration: "none" | "light" | "strong";
  readonly reach: "public" | "trained";
}

export interface Floor {
  readonly z: Si<"length">;
  /** rad */
  readonly slope: Si<"angle">;
  readonly uneven: Si<"length">;
  readonly friction: number;
}

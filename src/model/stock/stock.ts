import type { Si } from "../units/quantity.ts";
import type { Cell } from "./cell.ts";
import type { Connector, ConnectorHole } from "./connector.ts";
import type { Pair } from "./pair.ts";

export type {
  Bracket,
  BracketLeg,
  Connector,
  ConnectorHole,
  EndFastener,
  EndScrew,
  JoiningPlate,
  Pivot,
  SideTie,
  TestedValues,
} from "./connector.ts";
export type { Pair } from "./pair.ts";

/**
 * What can be bought or cut, resolved: SI units, references between parts checked, immutable.
 * Section coordinates are [y, z]: y points out of face A, z out of face B; the bar runs along x = y × z.
 */
export interface Stock {
  /** Cell geometry that generated profiles share. */
  readonly series: ReadonlyMap<string, Series>;
  readonly profiles: ReadonlyMap<string, Profile>;
  readonly connectors: ReadonlyMap<string, Connector>;
  readonly screws: ReadonlyMap<string, Screw>;
  readonly nuts: ReadonlyMap<string, Nut>;
  readonly caps: ReadonlyMap<string, Cap>;
  readonly stands: ReadonlyMap<string, Stand>;
  readonly sheets: ReadonlyMap<string, Sheet>;
  readonly gaskets: ReadonlyMap<string, Gasket>;
  readonly tools: ReadonlyMap<string, Tool>;
  readonly materials: ReadonlyMap<string, Material>;
}

export interface Material {
  readonly name: string;
  /** Pa */
  readonly elasticModulus: Si<"stress">;
  /** Pa */
  readonly shearModulus: Si<"stress">;
  /** kg/m³ */
  readonly density: number;
  /** 1/K */
  readonly expansion: number;
  /** 0.2 % proof strength fo, Pa */
  readonly proof: Si<"stress">;
  /** Ultimate strength fu, Pa */
  readonly ultimate: Si<"stress">;
  /** EN 1999-1-1 buckling class */
  readonly bucklingClass: "A" | "B";
  /** Standard, table, row. */
  readonly source: string;
}

/** What the profiles generated from one cell have in common. */
export interface Series {
  readonly name: string;
  readonly about: string;
  readonly cell: Cell;
  readonly slotSize: string;
  readonly weight: Profile["weight"];
  readonly material: string;
  readonly stockLength: Si<"length">;
  readonly lipRating: Si<"force">;
  readonly lipSource: string;
  readonly torques: ReadonlyMap<string, Si<"moment">>;
}

/** Faces of a bar, counted right-handed about from → to; at roll 0 face A looks up. Normals: A +y, B +z, C −y, D −z. */
export type FaceName = "A" | "B" | "C" | "D";

export interface Slot {
  readonly face: FaceName;
  /** Counted along the face from 1, in the direction of `across`. */
  readonly number: number;
  /** Offset of the slot's line from the middle of the face, m, towards the face counted next (A → B → C → D → A). */
  readonly across: number;
  /** Slot width at the face, m; 0 for a closed slot. */
  readonly opening: number;
  /** Thickness of the lips, or of the skin over a closed slot, m. */
  readonly lip: number;
  /** Depth from face to slot floor, m. */
  readonly depth: number;
  /** Widest part behind the lips, m. */
  readonly cavity: number;
  /** A closed slot has a skin over it and takes no nut. */
  readonly closed: boolean;
}

export interface Bore {
  readonly number: number;
  /** Centre [y, z], m. */
  readonly at: Pair;
  /** As extruded, m. */
  readonly diameter: number;
  /** Thread it can be tapped to, for example "M8". */
  readonly thread: string;
}

export interface Profile {
  readonly name: string;
  readonly about: string;
  /** Pitch of the slot grid, m: 0.02, 0.03, 0.04, 0.045, 0.0254, 0.0381. */
  readonly pitch: Si<"length">;
  /** Which nuts and lugs fit, for example "8": parts of another slot size do not. */
  readonly slotSize: string;
  /** Full size along y and z, m. */
  readonly height: Si<"length">;
  readonly width: Si<"length">;
  /** Cross-section, [y, z] in m about the middle of the envelope: outline from y towards z, holes the other way round. */
  readonly region: { readonly outer: readonly Pair[]; readonly holes: readonly (readonly Pair[])[] };
  readonly slots: readonly Slot[];
  readonly bores: readonly Bore[];
  readonly material: string;
  readonly weight: "light" | "standard" | "heavy";
  /** Tension a nut may put on the lips, N, and where that comes from. */
  readonly lipRating: Si<"force">;
  readonly lipSource: string;
  /** Rated torque by thread where stock states one, N·m; see `ratedTorque`. */
  readonly torques: ReadonlyMap<string, Si<"moment">>;
  /** Stock length it is sold in, m. */
  readonly stockLength: Si<"length">;
}

export interface Screw {
  readonly name: string;
  /** "M8", "1/4-20" … */
  readonly thread: string;
  /** Thread diameter and length under the head, m. */
  readonly diameter: Si<"length">;
  readonly length: Si<"length">;
  readonly pitch: Si<"length">;
  readonly head: "cap" | "button" | "countersunk" | "hex" | "none";
  readonly headDiameter: Si<"length">;
  readonly headHeight: Si<"length">;
  /** Key size across flats and depth of the socket, m. */
  readonly key: Si<"length">;
  readonly socketDepth: Si<"length">;
  readonly propertyClass: string;
  /** Tightening torque the screw itself may take, N·m; what the slot allows is `ratedTorque`. */
  readonly torque: Si<"moment">;
  readonly source: string;
}

export interface Nut {
  readonly name: string;
  readonly kind: "end-load" | "drop-in";
  readonly slotSize: string;
  readonly thread: string;
  /** Size along the slot, across it under the lips, and from the underside of the lips into it, m. */
  readonly length: Si<"length">;
  readonly width: Si<"length">;
  readonly thickness: Si<"length">;
  /** Tapped depth the screw engages, m. */
  readonly engagement: Si<"length">;
}

export interface Cap {
  readonly name: string;
  /** Profile names it closes. */
  readonly profiles: readonly string[];
  readonly thickness: Si<"length">;
  readonly mass: Si<"mass">;
}

export interface Stand {
  readonly name: string;
  readonly kind: "foot" | "caster";
  /** Thread of its stem, screwed into a tapped core bore, or a plate with holes. */
  readonly mount:
    | { readonly by: "stem"; readonly thread: string; readonly engagement: Si<"length"> }
    | {
        readonly by: "plate";
        readonly size: Pair;
        readonly thickness: Si<"length">;
        /** From the middle of the plate; undefined: drilled to suit the bar. */
        readonly holes?: readonly ConnectorHole[];
      };
  /** Diameter of the pad or wheel, m. */
  readonly diameter: Si<"length">;
  /** Diameter of what covers the bar end, m. */
  readonly collar: Si<"length">;
  /** Lowest and highest floor-to-bar distance, m. */
  readonly raise: readonly [Si<"length">, Si<"length">];
  /** N */
  readonly capacity: Si<"force">;
  readonly brake: boolean;
  readonly swivel: boolean;
  readonly mass: Si<"mass">;
}

export interface Sheet {
  readonly name: string;
  readonly thickness: Si<"length">;
  readonly elasticModulus: Si<"stress">;
  readonly poisson: number;
  /** In the plane of the sheet. */
  readonly shearModulus: Si<"stress">;
  readonly density: number;
  readonly expansion: number;
  readonly strength: Si<"stress">;
  /** Growth from dry to damp as a share of its length, in the direction that moves more. */
  readonly moisture: number;
  readonly brittle: boolean;
  readonly source: string;
}

export interface Gasket {
  readonly name: string;
  readonly slotSize: string;
  /** Sheet thickness it takes, least and most, m. */
  readonly sheet: readonly [Si<"length">, Si<"length">];
  /** Depth of slot left for the sheet's edge, m. */
  readonly depth: Si<"length">;
}

export interface Tool {
  readonly name: string;
  readonly kind: "hex-key" | "ball-end-key" | "t-handle" | "bit-ratchet" | "wrench";
  /** Size across flats, m. */
  readonly key: Si<"length">;
  /** Long and short arm, m (a T-handle or bit: shaft and handle). */
  readonly longArm: Si<"length">;
  readonly shortArm: Si<"length">;
  /** Least swing between bites, rad. */
  readonly swing: Si<"angle">;
  /** Largest tilt in the socket, rad: 0 for straight keys. */
  readonly tilt: Si<"angle">;
  /** Torque it may give, N·m. */
  readonly torque: Si<"moment">;
  readonly source: string;
}

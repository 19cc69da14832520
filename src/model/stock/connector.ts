import type { Si } from "../units/quantity.ts";
import type { Pair } from "./pair.ts";

/** A hole of a connector: where the screw goes, in the leg's own coordinates. */
export interface ConnectorHole {
  /** "a1", "b1" on brackets (a = leg on the ending bar), "h1" on plates. */
  readonly id: string;
  /** Brackets: [distance from the corner, offset across]; plates: [u, v]; m. */
  readonly at: Pair;
  readonly diameter: Si<"length">;
}

/** Stiffness and capacity from tests replace what is computed. */
export interface TestedValues {
  readonly rotationalStiffness?: Si<"rotationalStiffness">;
  readonly slip?: Si<"force">;
  readonly moment?: Si<"moment">;
  readonly reference: string;
}

interface ConnectorBase {
  readonly name: string;
  readonly about: string;
  readonly slotSize: string;
  /** Kg, without screws and nuts. */
  readonly mass: Si<"mass">;
  readonly tested?: TestedValues;
}

/** An angle whose two legs lie on two faces that meet at a right inside corner. */
export interface Bracket extends ConnectorBase {
  readonly kind: "bracket";
  /** Leg a lies on the ending bar, leg b on the bar it meets. Length from the corner, m. */
  readonly legs: { readonly a: BracketLeg; readonly b: BracketLeg };
  readonly width: Si<"length">;
  /** Side walls between the legs: none for a plain angle. */
  readonly gussets: number;
  readonly gussetThickness: Si<"length">;
  /** Lugs that fill the slot resist turning about the screw. */
  readonly lugs: boolean;
  readonly screw: string;
}
export interface BracketLeg {
  readonly length: Si<"length">;
  readonly thickness: Si<"length">;
  readonly holes: readonly ConnectorHole[];
}

/** A flat plate on coplanar faces of the bars it joins. */
export interface JoiningPlate extends ConnectorBase {
  readonly kind: "plate";
  readonly outline: readonly Pair[];
  readonly thickness: Si<"length">;
  readonly holes: readonly ConnectorHole[];
  readonly screw: string;
}

/** Sits in a slot of the ending bar and pulls its cut end against the bar it meets; the nut lies in that bar's slot. */
export interface EndFastener extends ConnectorBase {
  readonly kind: "end-fastener";
  /** Its length is what stands out of the cut end. */
  readonly screw: string;
  /** Depth of the screw's axis below the face it sits under, m. */
  readonly depth: Si<"length">;
  /** Where the tightening key enters: distance from the cut end and hole diameter, m. */
  readonly keyFrom: Si<"length">;
  readonly keyHole: Si<"length">;
  /** Length of slot it fills from the end, m. */
  readonly body: Si<"length">;
  /** A claw or lug keeps the end from turning. */
  readonly lugs: boolean;
}

/** A screw along the ending bar's axis into its tapped core bore. */
export interface EndScrew extends ConnectorBase {
  readonly kind: "end-screw";
  readonly screw: string;
  /** Head behind the lips of the crossing bar's slot (key through an access hole), or on its far face. */
  readonly head: "in-slot" | "on-far-face";
  /** Hole drilled across the crossing bar, m. */
  readonly accessHole: Si<"length">;
  /** Least thread engaged in the core, m. */
  readonly engagement: Si<"length">;
}

/** Holds two bars that lie side by side: a screw from slot to slot, its head behind the lips of the bar named first. */
export interface SideTie extends ConnectorBase {
  readonly kind: "side-tie";
  readonly screw: string;
  /** Hole drilled across the bar of the head, for the key, m; undefined: as wide as the key asks for. */
  readonly accessHole?: Si<"length">;
  readonly lugs: boolean;
}

/** Turns about one axis by design. */
export interface Pivot extends ConnectorBase {
  readonly kind: "pivot" | "hinge";
  readonly screw: string;
  /** Distance it keeps between the bars, m. */
  readonly gap: Si<"length">;
  readonly holes: readonly ConnectorHole[];
  readonly thickness: Si<"length">;
}

export type Connector = Bracket | JoiningPlate | EndFastener | EndScrew | SideTie | Pivot;

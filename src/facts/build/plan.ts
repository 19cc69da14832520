import type { Vec3 } from "../../geometry/vector.ts";
import type { Ref } from "../../model/ref.ts";
import type { Hinders } from "../hindrances.ts";
import type { SubAssembly } from "../sub-assemblies.ts";
import type { Path } from "./path.ts";

/** Something put together on its own: the whole frame, or a part of it that is lifted in as one. */
export interface Assembly {
  readonly id: string;
  /** Undefined for the whole frame. */
  readonly sub: SubAssembly | undefined;
  /** In the order they are put together; each is a bar, a panel or an assembly of its own. */
  readonly items: readonly Item[];
}

export interface Item {
  readonly part: string | Assembly;
  /** How it is moved into its place; undefined for the first, and for what nothing frees. */
  readonly path: Path | undefined;
  /** What it goes into lies on a side, so that its underside is open. */
  readonly lying: boolean;
  readonly parts: readonly string[];
}

/** One step of building. */
export interface BuildStep {
  /** From 1. */
  readonly number: number;
  readonly what: "place" | "stand" | "square" | "feet" | "equipment" | "finish";
  /** Of the assembly worked on; "" for the whole frame. */
  readonly assembly: string;
  /** Bars, panels, feet, casters, caps, equipment and sub-assemblies put in place. */
  readonly places: readonly Ref[];
  /** Equipment bolted, and feet of what hangs screwed, on a single part before it is put in place. */
  readonly bolts: readonly Ref[];
  /** Connectors that now hold everything they hold. */
  readonly connectors: readonly Ref<"connector">[];
  /** Screws tightened to their torque now. */
  readonly tightens: readonly Ref<"screw">[];
  /** How it is moved into its place. */
  readonly path: Path | undefined;
  /** The frame lies on a side while it is done. */
  readonly lying: boolean;
}

/** Why parts keep each other from being built in any order. */
export interface Deadlock {
  /** Parts none of which can be put in last. */
  readonly parts: readonly Ref[];
  /** A ring of them, each kept by the next, the last by the first. */
  readonly ring: readonly {
    readonly part: Ref;
    readonly by: Ref;
    readonly why: Hinders;
    readonly screws: readonly Ref[];
  }[];
}

export interface BuildOrder {
  readonly steps: readonly BuildStep[];
  readonly assemblies: readonly Assembly[];
  /** Undefined where an order exists; else the steps are those of everything that is not caught in it. */
  readonly deadlock: Deadlock | undefined;
  /** Groups of the author that cannot be built as one, or put in as one; a group that comes built can only be taken apart again. */
  readonly undone: readonly { readonly group: Ref; readonly built: boolean }[];
  /** Groups of the author that are no piece, and parts of each that nothing in it joins to its first. */
  readonly scattered: readonly { readonly group: Ref; readonly apart: readonly Ref[] }[];
  /** Of a frame that is begun lying: out of the side it lies on, where one serves all that is put in so. */
  readonly lyingOn: Vec3 | undefined;
  /** Number of the step a part is put in place at, by the id of a bar, panel, connector, screw, nut, stand, capped end or mass. */
  placedAt(id: string): number | undefined;
  /** Number of the step a screw is tightened at. */
  tightenedAt(screw: string): number | undefined;
  /** Ids of all bars, panels, connectors and stands that are there, in the same piece, once a step is done. */
  presentAt(step: number): ReadonlySet<string>;
}

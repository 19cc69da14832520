import type { StepPicture } from "../../drawing/step-picture.ts";
import type { PlannedPiece, SlotNuts } from "../../facts/build-plan.ts";
import type { Lifted } from "../../facts/lifted.ts";
import type { Finding } from "../../inspection/report.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";

/** A mass to lift, and the fewest people who may; undefined where it takes more than there are. */
export interface Handling extends Lifted {
  readonly people: number | undefined;
}

/** One piece of the plan with what the limits in force ask of it. */
export interface SheetPiece {
  readonly planned: PlannedPiece;
  /** Spare nuts, by slot of the plan. */
  readonly spare: (nuts: SlotNuts) => number;
  /** kg, as it is lifted; undefined for the frame. */
  readonly handling: Handling | undefined;
}

/** The order of building, for reporters. */
export interface BuildSheet {
  readonly file: string;
  readonly title: string;
  readonly units: UnitSystem;
  /** Findings for which the frame is rejected as it is. */
  readonly rejects: readonly Finding[];
  /** Findings for which it is held until someone settles them. */
  readonly holds: readonly Finding[];
  readonly pieces: readonly SheetPiece[];
  readonly handlingOf: (lifted: Lifted) => Handling;
  /** Whether a piece, by the id of its assembly, is not rigid in itself. */
  readonly isLoose: (assembly: string) => boolean;
  /** Most that one person may lift, kg. */
  readonly oneLifts: number;
  /** The fewest people who may lift so many kg; undefined where it takes more than there are. */
  readonly peopleFor: (mass: number) => number | undefined;
  /** Draws steps to this size, picture units. */
  readonly pictures: (size: readonly [number, number]) => StepPicture;
  /** Above this height over the floor a bar is held up before it is screwed, m. */
  readonly overhead: number;
  /** Why no order exists, in words. */
  readonly deadlock: string | undefined;
  /** Groups that cannot be built as one. */
  readonly undone: readonly { readonly id: string; readonly built: boolean }[];
  /** Groups that are no piece, and parts of each that nothing in it joins to its first. */
  readonly scattered: readonly { readonly id: string; readonly apart: readonly string[] }[];
}

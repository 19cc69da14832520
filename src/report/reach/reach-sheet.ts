import type { ToolRoom } from "../../facts/tool-room.ts";
import type { Trial } from "../../facts/tool-trial.ts";
import type { UnitSystem } from "../../model/units/unit-system.ts";

/** How one way to hold a tool gets on at a screw. */
export interface ReachLine {
  readonly trial: Trial;
  readonly serves: boolean;
  /** What ends the free length or takes most of the turn. */
  readonly inTheWay: string | undefined;
  /** Width across the handle that is free for the hand all along a swing, m; undefined where the tool does not turn. */
  readonly hand: number | undefined;
}

/** A screw and the ways tried on it: the one chosen, or all of them. */
export interface ReachScrew {
  readonly room: ToolRoom;
  readonly lines: readonly ReachLine[];
  /** Whether a tool still gets there when everything is in place. */
  readonly atEnd: boolean;
  /** Where no tool does, or none leaves the hand enough: the least move that frees it, or "none" where none was found; else undefined. */
  readonly move: LeastMove | "none" | undefined;
}

/** What moves along its slot, how far, m, and towards which end of the bar it slides on. */
export interface LeastMove {
  readonly moves: string;
  readonly by: number;
  readonly towards: string;
}

/** The tools on the screws of a frame, or on one of them. */
export interface ReachSheet {
  readonly file: string;
  readonly units: UnitSystem;
  readonly one: boolean;
  readonly list: readonly ReachScrew[];
}

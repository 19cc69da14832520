import type { House } from "./house.ts";
import type { KnownRule } from "./known-rule.ts";
import type { ExplainedSettings } from "./settings.ts";

/** All there is to say about a house: what it sets for a frame, who says it, and every file that is read or run. */
export interface HouseInWords {
  readonly house: House;
  readonly settings: ExplainedSettings;
  /** The frame the settings are for; absent for what holds outside all areas. */
  readonly frame?: string;
  readonly modules: readonly string[];
  readonly stock: readonly string[];
  readonly rules: readonly KnownRule[];
}

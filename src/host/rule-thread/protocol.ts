import type { HouseSettings } from "../../house/house-in-force.ts";
import type { StockBytes } from "../../inspection/inspect-file.ts";
import type { Report, RuleCard } from "../../inspection/report.ts";

/** What crosses between the command and the thread that runs rules of a team: data only. */
export type ToThread =
  | { readonly kind: "load"; readonly modules: readonly ModuleToLoad[] }
  | {
      readonly kind: "inspect";
      readonly file: string;
      readonly bytes: Uint8Array;
      readonly stock: readonly StockBytes[];
      readonly settings: HouseSettings;
      readonly margins: boolean;
      /** Rules left out because they did not come to an end before. */
      readonly without: readonly string[];
    };

export interface ModuleToLoad {
  readonly path: string;
  readonly name: string;
}

export type FromThread =
  /** A module of the team is about to be imported, by name. */
  | { readonly kind: "module"; readonly module: string }
  | { readonly kind: "loaded"; readonly cards: readonly RuleCard[] }
  | { readonly kind: "unusable"; readonly why: string }
  /** A rule of the team is about to run. */
  | { readonly kind: "rule"; readonly rule: string }
  /** `printed`: rules that wrote to standard output or error, which was thrown away. */
  | { readonly kind: "done"; readonly report: Report; readonly printed: readonly string[] }
  | { readonly kind: "failed"; readonly why: string };

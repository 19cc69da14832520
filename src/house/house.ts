import type { HouseFile } from "../model/generated/house-file.generated.ts";
import type { Place } from "../model/problem.ts";
import type { FiledConcession } from "./concession.ts";

/** One house file, read. */
export interface HouseSource {
  /** Absolute, with forward slashes: frame patterns are relative to its folder. */
  readonly path: string;
  /** As outputs name it. */
  readonly name: string;
  readonly file: HouseFile;
  /** Of the key where there is one: names are judged. */
  readonly place: (pointer: string) => Place;
  /** Absolute path of the concessions file, if there is one, and what it holds. */
  readonly conceded?: { readonly path: string; readonly concessions: readonly FiledConcession[] };
}

/** A house file with all it is based on, weakest first: later sources win. */
export interface House {
  readonly sources: readonly HouseSource[];
}
